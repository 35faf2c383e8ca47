import type { ComponentType } from 'preact';
import { useMemo } from 'preact/hooks';
import { type Answer, type Owner, type Question, simulate } from '../../../simulator/index.ts';
import { layOut } from '../../drawing/lay-out.ts';
import { unlit } from '../../drawing/light.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { scaleIn, sourceName } from '../../text/index.ts';
import type { OptionText } from '../../text/question-options.ts';
import { AnswerForm } from './AnswerForm.tsx';
import { firstAnswer } from './answer-form.ts';
import { DeskDrawing } from './DeskDrawing.tsx';
import type { KeptTaskProps } from './KeptTask.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { ownersOnWay } from './owners-to-show.ts';
import { type Scene, stillScene } from './scene.ts';
import { useJudging } from './use-judging.ts';
import { useTask } from './use-task.ts';

/** A question as it stands on the page. */
export interface Asked {
  readonly question: Question;
  readonly options: readonly OptionText[];
  /** What its progress is kept under. */
  readonly name: TaskName;
}

interface Props {
  id: string;
  title: string;
  questions: readonly Asked[];
  /** Owners that are drawn where the way is asked for; all of the desk when left out. */
  show?: readonly Owner[] | undefined;
  /** Keeps what is done instead of the memory of the browser. */
  Kept?: ComponentType<KeptTaskProps> | undefined;
}

/** A quiz: its questions one under the other, each with its drawing, each answered by the simulator. */
export function QuizCard({ id, title, questions, show, Kept }: Props) {
  return (
    <section class="quiz" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      <ol class="questions">
        {questions.map((asked, index) => (
          <li key={asked.name.id}>
            <QuestionCard {...asked} show={show} number={index + 1} Kept={Kept} />
          </li>
        ))}
      </ol>
    </section>
  );
}

interface QuestionProps extends Asked {
  /** From 1. */
  readonly number: number;
  readonly show: Props['show'];
  readonly Kept: Props['Kept'];
}

/** Whether the way of the source is what is asked: then it is lit only after it was told. */
const isAboutWay = ({ kind }: Question): boolean => kind === 'outputs' || kind === 'order';

function QuestionCard({ name, question, options, number, show, Kept }: QuestionProps) {
  const { rig, ask, follow, board } = question;
  const { id } = name;
  const judging = useJudging();
  const { there } = judging;
  const Keeper = Kept ?? there?.KeptTask;
  const judge = useMemo(
    () => there && ((answer: Answer) => there.judgeAnswer(question, answer)),
    [there, question],
  );
  const first = useMemo(() => firstAnswer(question, options), [question, options]);
  const task = useTask({ hints: 0, answer: first }, judge);
  const { snapshot, send, judged } = task;
  const { answer, checked, hasPassed } = snapshot.context;
  const isDark = isAboutWay(question) && !hasPassed;
  const hidesLevels = isDark || (question.kind === 'predict' && !hasPassed);
  const scene = useMemo((): Scene => {
    const setup = { rig, board };
    const solution = simulate(setup);
    // Questions and their options are asked in dBu.
    const lit = stillScene({ id, setup, solution, follow, scale: scaleIn(rig, 'dBu') });
    return { ...lit, light: isDark ? unlit : lit.light, hidesLevels };
  }, [rig, board, follow, id, isDark, hidesLevels]);
  const drawing = useMemo(
    () =>
      layOut(rig, isAboutWay(question) ? show : ownersOnWay(scene.setup, scene.solution, follow)),
    [rig, question, show, scene, follow],
  );
  return (
    <form
      id={id}
      class="question"
      onSubmit={(event) => {
        event.preventDefault();
        send({ type: 'check' });
        if (judging.hasFailed) void judging.fetch();
      }}
    >
      <fieldset>
        <legend>
          {number}. {ask}
        </legend>
        <section class="desk-scroll" tabIndex={0} aria-label={`Drawing of question ${number}`}>
          <DeskDrawing
            drawing={drawing}
            scene={scene}
            name={`The desk of this question, with ${isDark ? 'nothing' : `the way of ${sourceName(rig, follow)}`} lit.`}
          />
        </section>
        <div class="options">
          <AnswerForm
            id={id}
            question={question}
            options={options}
            answer={answer}
            onAnswer={(given) => send({ type: 'answer.change', answer: given })}
          />
          <button type="submit" disabled={answer === undefined}>
            Check
          </button>
          {/* It is there before the first answer: a region that comes with its text may not be read out. */}
          <div role="status">
            {checked && there && <there.AnswerView question={question} checked={checked} />}
          </div>
          {there && Keeper && (
            <Keeper name={name} task={question} running={task} pristine={first} />
          )}
          {checked && !judged && <NotThereYet later={judging} what="The results" />}
        </div>
      </fieldset>
    </form>
  );
}
