import {
  type Hunt,
  type HuntStep,
  type JudgedStep,
  judgeSteps,
  scoreHunt,
} from '../../../simulator/index.ts';
import {
  capitalised,
  faultText,
  type LevelScale,
  placeName,
  readingText,
  scoreSentence,
  sentence,
  strategySentence,
  suspectText,
  WORTH_WORDS,
  worthSentence,
} from '../../text/index.ts';

interface Props {
  hunt: Hunt;
  steps: readonly HuntStep[];
  scale: LevelScale;
}

/** After a hunt: what it was, how many suspects each step cut, and where the meter would best have been held. */
export function HuntDebrief({ hunt, steps, scale }: Props) {
  const { setup, suspects, fault, hidden } = hunt;
  const score = scoreHunt(hunt, steps);
  const alike = suspects[hidden]?.faults.filter((one) => one !== fault) ?? [];
  return (
    <section class="hunt-debrief" aria-labelledby="hunt-debrief">
      <h3 id="hunt-debrief">Looking back</h3>
      <p class="verdict-head">{scoreSentence(score)}</p>
      <p>
        It was this: {faultText(setup, fault)}.
        {alike.length > 0 &&
          ` No reading tells it from this: ${suspectText(setup, alike)}. Only looking, or an exchange, does.`}
      </p>
      <p>{strategySentence(hunt)}</p>
      {steps.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Step</th>
              <th scope="col">Suspects before</th>
              <th scope="col">Suspects after</th>
              <th scope="col">What it was worth</th>
            </tr>
          </thead>
          <tbody>
            {judgeSteps(hunt, steps).map((step, index) => (
              <tr key={`${index} ${step.kind}`}>
                <th scope="row">{stepText(hunt, step, scale)}</th>
                <td>{step.before.length}</td>
                <td>{step.after.length}</td>
                <td>
                  <StepWorth hunt={hunt} step={step} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <details>
        <summary>All suspects that fitted the complaint ({suspects.length})</summary>
        <ul>
          {suspects.map(({ faults }) => {
            const text = sentence(suspectText(setup, faults));
            return <li key={text}>{text}</li>;
          })}
        </ul>
      </details>
    </section>
  );
}

function stepText({ setup }: Hunt, step: JudgedStep, scale: LevelScale): string {
  if (step.kind === 'accusation') return `Said: ${faultText(setup, step.fault)}`;
  const { place, found } = step.reading;
  return `${capitalised(placeName(setup.rig, place))}: ${readingText(found, scale)}`;
}

function StepWorth({ hunt, step }: { hunt: Hunt; step: JudgedStep }) {
  if (step.kind === 'accusation') return <>{step.isRight ? 'Right' : 'Wrong'}</>;
  const { worth, better } = step;
  return (
    <>
      <strong>{WORTH_WORDS[worth]}.</strong> {worthSentence(hunt.setup.rig, worth, better)}
    </>
  );
}
