import { useMemo, useState } from 'preact/hooks';
import {
  answer,
  type OptionResult,
  type Question,
  type Quiz,
  simulate,
} from '../../../simulator/index.ts';
import { layOut } from '../../drawing/lay-out.ts';
import { gainText, heardSentence, levelText, sourceName } from '../../text/index.ts';
import { DeskDrawing } from './DeskDrawing.tsx';
import { ownersOnWay } from './owners-to-show.ts';
import type { Scene } from './scene.ts';

/** A quiz: its questions one under the other, each with its drawing, each answered by the simulator. */
export function QuizCard({ quiz }: { quiz: Quiz }) {
  // A scenario or a walk-through on the same page may have the same id.
  const id = `quiz-${quiz.id}`;
  return (
    <section class="quiz" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{quiz.title}</h3>
      <ol class="questions">
        {quiz.questions.map((question, index) => (
          <li key={question.id}>
            <QuestionCard quizId={id} question={question} number={index + 1} />
          </li>
        ))}
      </ol>
    </section>
  );
}

interface QuestionProps {
  quizId: string;
  question: Question;
  /** From 1. */
  number: number;
}

function QuestionCard({ quizId, question, number }: QuestionProps) {
  const { id, rig, ask, explain, follow, board } = question;
  const name = `${quizId}-${id}`;
  const [chosen, setChosen] = useState<string>();
  const [checked, setChecked] = useState<{ option: OptionResult; attempt: number }>();
  const options = useMemo(() => inOrder(question, answer(question)), [question]);
  const scene = useMemo((): Scene => {
    const setup = { rig, board };
    const solution = simulate(setup);
    return { id: name, setup, solution, follow, selected: undefined, locked: new Set() };
  }, [rig, board, follow, name]);
  const drawing = useMemo(
    () => layOut(rig, ownersOnWay(scene.setup, scene.solution, follow)),
    [rig, scene, follow],
  );
  const check = () => {
    const option = options.find((one) => one.id === chosen);
    if (option) setChecked({ option, attempt: (checked?.attempt ?? 0) + 1 });
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
              {optionText(question, option)}
            </label>
          ))}
          <button type="submit" disabled={chosen === undefined}>
            Check
          </button>
          {/* It is there before the first answer: a region that comes with its text may not be read out. */}
          <div role="status">
            {checked && (
              <div class={checked.option.holds ? 'check check-passed' : 'check check-not-yet'}>
                <p>
                  Attempt {checked.attempt}.{' '}
                  <strong class="check-word">{checked.option.holds ? 'Passed' : 'Not yet'}</strong>{' '}
                  {checked.option.reason}
                </p>
                {checked.option.judgement && (
                  <p class="check-heard">{heardSentence(rig, checked.option.judgement)}</p>
                )}
                {checked.option.holds && <p>{explain}</p>}
              </div>
            )}
          </div>
        </div>
      </fieldset>
    </form>
  );
}

/** Numbers stand from low to high, so that their order says nothing; statements stand as written. */
const inOrder = ({ kind }: Question, options: OptionResult[]): OptionResult[] =>
  kind === 'number' ? [...options].sort((a, b) => Number(a.value) - Number(b.value)) : options;

function optionText(question: Question, { id, value }: OptionResult): string {
  if (question.kind === 'statements') {
    return question.options.find((option) => option.id === id)?.text ?? id;
  }
  return question.quantity.kind === 'level' ? levelText(value) : gainText(Number(value));
}
