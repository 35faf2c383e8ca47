import { useMemo, useState } from 'preact/hooks';
import { type Question, type Quiz, simulate } from '../../../simulator/index.ts';
import { layOut } from '../../drawing/lay-out.ts';
import { scaleIn, sourceName } from '../../text/index.ts';
import { DeskDrawing } from './DeskDrawing.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { ownersOnWay } from './owners-to-show.ts';
import type { OptionText } from './quiz-options.ts';
import { type Scene, stillScene } from './scene.ts';
import { useJudging } from './use-judging.ts';

interface Props {
  quiz: Quiz;
  /** The options of each question. */
  options: readonly (readonly OptionText[])[];
}

/** A quiz: its questions one under the other, each with its drawing, each answered by the simulator. */
export function QuizCard({ quiz, options }: Props) {
  // A scenario or a walk-through on the same page may have the same id.
  const id = `quiz-${quiz.id}`;
  return (
    <section class="quiz" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{quiz.title}</h3>
      <ol class="questions">
        {quiz.questions.map((question, index) => (
          <li key={question.id}>
            <QuestionCard
              quizId={id}
              question={question}
              options={options[index] ?? []}
              number={index + 1}
            />
          </li>
        ))}
      </ol>
    </section>
  );
}

interface QuestionProps {
  quizId: string;
  question: Question;
  options: readonly OptionText[];
  /** From 1. */
  number: number;
}

function QuestionCard({ quizId, question, options, number }: QuestionProps) {
  const { id, rig, ask, follow, board } = question;
  const name = `${quizId}-${id}`;
  const [chosen, setChosen] = useState<string>();
  const [checked, setChecked] = useState<{ chosen: string; attempt: number }>();
  const judging = useJudging();
  const scene = useMemo((): Scene => {
    const setup = { rig, board };
    const solution = simulate(setup);
    // Questions and their options are asked in dBu.
    const scale = scaleIn(rig, 'dBu');
    return stillScene({ id: name, setup, solution, follow, scale });
  }, [rig, board, follow, name]);
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
                name={name}
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
          {checked && !judging.there && <NotThereYet later={judging} what="The results" />}
        </div>
      </fieldset>
    </form>
  );
}
