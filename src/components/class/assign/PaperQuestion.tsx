import {
  type Owner,
  optionResults,
  type Question,
  rightAnswer,
  simulate,
} from '../../../../simulator/index.ts';
import { answerText, optionsOf } from '../../../text/index.ts';
import { ownersOnWay } from '../../desk/owners-to-show.ts';
import { BLANK } from './blank.ts';
import { PaperDrawing } from './PaperDrawing.tsx';

interface Props {
  question: Question;
  isKey: boolean;
  /** Owners that are drawn where the way is asked for; the whole room when left out. */
  show?: readonly Owner[] | undefined;
}

/** A question on paper: its drawing, and what one ticks or fills in; or the answer and the reason of every option. */
export function PaperQuestion({ question, isKey, show }: Props) {
  const { id, rig, board, follow, ask, explain, kind } = question;
  const setup = { rig, board };
  const isAboutWay = kind === 'outputs' || kind === 'order';
  const options = optionsOf(question);
  const right = rightAnswer(question);
  const results = optionResults(question);
  return (
    <>
      <p>{ask}</p>
      <PaperDrawing
        id={`paper-${id}`}
        rig={rig}
        board={board}
        follow={follow}
        show={isAboutWay ? show : ownersOnWay(setup, simulate(setup), follow)}
        isLit={isKey || !isAboutWay}
        name="The desk of this question."
      />
      {isKey ? (
        <>
          <p>
            <strong>Answer:</strong> {right ? answerText(options, right) : 'none'}
          </p>
          <ul>
            {results.map((result) => {
              const text = options.find((option) => option.id === result.id)?.text;
              return (
                <li key={result.id}>
                  <strong>{result.holds ? 'Right' : 'Wrong'}</strong>
                  {text === undefined ? '' : `: ${text}`}. {result.reason}
                </li>
              );
            })}
          </ul>
          <p class="debrief">{explain}</p>
        </>
      ) : kind === 'predict' ? (
        <p>Your number: {BLANK}</p>
      ) : (
        <ul class="paper-options">
          {options.map((option) => (
            <li key={option.id}>
              <span class={kind === 'order' ? 'paper-number' : 'paper-box'} aria-hidden="true" />{' '}
              {option.text}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
