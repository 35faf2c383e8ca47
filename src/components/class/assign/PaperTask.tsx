import {
  type Control,
  controls,
  isOpen,
  movesBetween,
  type Scenario,
} from '../../../../simulator/index.ts';
import {
  capitalised,
  claimSentence,
  controlText,
  moveText,
  placeName,
} from '../../../text/index.ts';
import { BLANK } from './blank.ts';
import { PaperDrawing } from './PaperDrawing.tsx';

interface Props {
  scenario: Scenario;
  isKey: boolean;
}

/** The most controls that are listed with a blank each; a task that opens more gets empty lines. */
const MOST_LISTED = 30;
const EMPTY_LINES = 8;

/** A routing task on paper: what is asked, the desk as it stands, and blanks for what is to be moved; or the answer. */
export function PaperTask({ scenario, isKey }: Props) {
  const { id, rig, brief, start, solution, follow, show, checks, debrief, open, proofs } = scenario;
  const openControls = [...controls(rig).values()].filter(({ address }) => isOpen(open, address));
  const mistakes = proofs.filter(({ fails }) => fails.length > 0);
  return (
    <>
      {brief.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <PaperDrawing
        id={`paper-${id}`}
        rig={rig}
        board={isKey ? solution : start}
        follow={follow}
        show={show}
        isLit={isKey}
        name={isKey ? 'The desk of one solution.' : 'The desk as it stands.'}
      />
      {isKey ? (
        <>
          <h4>One solution</h4>
          <ul>
            {movesBetween(rig, start, solution).map((move) => (
              <li key={move.control.address}>{moveText(rig, move)}</li>
            ))}
          </ul>
          <h4>What has to be heard</h4>
          <ul>
            {checks.map(({ id: check, claim }) => (
              <li key={check}>{claimSentence(rig, claim)}</li>
            ))}
          </ul>
          {mistakes.length > 0 && (
            <>
              <h4>Likely mistakes</h4>
              <ul>
                {mistakes.map(({ name, fails }) => (
                  <li key={name}>
                    {capitalised(name)}. It fails: {failedWords(scenario, fails)}
                  </li>
                ))}
              </ul>
            </>
          )}
          <p class="debrief">{debrief}</p>
        </>
      ) : openControls.length > MOST_LISTED ? (
        <>
          <p>What do you move, and to where? Plug, turn and switch no more than you need.</p>
          <ol class="paper-lines">
            {Array.from({ length: EMPTY_LINES }, (_, line) => (
              <li key={line}>
                {BLANK}
                {BLANK} to {BLANK}
              </li>
            ))}
          </ol>
        </>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col">May be moved</th>
              <th scope="col">Stands at</th>
              <th scope="col">Put it to</th>
            </tr>
          </thead>
          <tbody>
            {openControls.map((control) => (
              <tr key={control.address}>
                <th scope="row">{capitalised(placeName(rig, control.address))}</th>
                <td>{standing(scenario, control)}</td>
                <td>{BLANK}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

const standing = ({ start }: Scenario, control: Control): string =>
  controlText(control, start[control.address] ?? control.default);

const failedWords = ({ rig, checks }: Scenario, fails: readonly string[]): string =>
  checks
    .filter(({ id }) => fails.includes(id))
    .map(({ claim }) => claimSentence(rig, claim))
    .join(' ');
