import { useMemo, useState } from 'preact/hooks';
import { type Question, simulate } from '../../../simulator/index.ts';
import { layOut } from '../../drawing/lay-out.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { scaleIn, sourceName } from '../../text/index.ts';
import type { OptionText } from '../../text/question-options.ts';
import { DeskDrawing } from './DeskDrawing.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { ownersOnWay } from './owners-to-show.ts';
import { type Scene, stillScene } from './scene.ts';
import { useJudging } from './use-judging.ts';

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
}

/** A quiz: its questions one under the other, each with its drawing, each answered by the simulator. */
export function QuizCard({ id, title, questions }: Props) {
  return (
    <section class="quiz" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      <ol class="questions">
        {questions.map((asked, index) => (
          <li key={asked.name.id}>
            <QuestionCard {...asked} number={index + 1} />
          </li>
        ))}
      </ol>
    </section>
  );
}

interface QuestionProps extends Asked {
  /** From 1. */
  readonly number: number;
}

function QuestionCard({ name, question, options, number }: QuestionProps) {
  const { rig, ask, follow, board } = question;
  const { id } = name;
  const [chosen, setChosen] = useState<string>();
  const [checked, setChecked] = useState<{ chosen: string; attempt: number }>();
  const judging = useJudging();
  const scene = useMemo((): Scene => {
    const setup = { rig, board };
    const solution = simulate(setup);
    // Questions and their options are asked in dBu.
    const scale = scaleIn(rig, 'dBu');
    return stillScene({ id, setup, solution, follow, scale });
  }, [rig, board, follow, id]);
  const drawing = useMemo(
    () => layOut(rig, ownersOnWay(scene.setup, scene.solution, follow)),
    [rig, scene, follow],
  );
  const check = () => {
    if (chosen === undefined) return;
    setChecked({ chosen, attempt: (checked?.attempt ?? 0) + 1 });
    if (judging.hasFailed) void judging.fetch();
  };
  return (
    <form
      id={id}
      class="question"
      onSubmit={(event) => {
        event.preventDefault();
        check();
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
            name={`The desk of this question, with the way of ${sourceName(rig, follow)} lit.`}
          />
        </section>
        <div class="options">
          {options.map((option) => (
            <label key={option.id} class="option">
              <input
                type="radio"
                name={id}
                value={option.id}
                checked={chosen === option.id}
                onChange={() => setChosen(option.id)}
              />
              {option.text}
            </label>
          ))}
          <button type="submit" disabled={chosen === undefined}>
            Check
          </button>
          {/* It is there before the first answer: a region that comes with its text may not be read out. */}
          <div role="status">
            {checked && judging.there && (
              <judging.there.AnswerView
                question={question}
                chosen={checked.chosen}
                attempt={checked.attempt}
              />
            )}
          </div>
          {judging.there && (
            <judging.there.KeptQuestion
              name={name}
              question={question}
              chosen={chosen}
              onChoose={setChosen}
              checked={checked}
            />
          )}
          {checked && !judging.there && <NotThereYet later={judging} what="The results" />}
        </div>
      </fieldset>
    </form>
  );
}
