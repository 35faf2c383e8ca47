import { useState } from 'preact/hooks';
import type { AssignmentEvent } from '../../../class/assignment-machine.ts';
import { type OwnGap, proveOwn } from '../../../class/prove-own.ts';
import { GAP_SENTENCES, STEPS, type StepId, type StepProps } from './own-step.ts';

interface Props extends StepProps {
  gaps: readonly OwnGap[];
  onStep: (step: StepId) => void;
  send: (event: AssignmentEvent) => void;
}

const stepOf = (gap: OwnGap): StepId =>
  STEPS.find(({ gaps }) => gaps.some((one) => one === gap))?.id ?? 'room';

/** Proves the scenario, and puts it into the assignment. */
export function OwnProving({ own, rig, gaps, onStep, send }: Props) {
  const [found, setFound] = useState<{ own: typeof own; problems: readonly string[] }>();
  // What was found of an earlier state says nothing of this one.
  const problems = found?.own === own ? found.problems : [];
  const finish = () => {
    const proof = proveOwn(own, rig);
    if ('task' in proof) send({ type: 'own.finish', task: proof.task });
    else setFound({ own, problems: proof.problems });
  };
  return (
    <section class="own-proving" aria-labelledby="own-proving-title">
      <h3 id="own-proving-title">Prove it</h3>
      {gaps.length > 0 ? (
        <ul>
          {gaps.map((gap) => (
            <li key={gap}>
              {GAP_SENTENCES[gap]}{' '}
              <button type="button" onClick={() => onStep(stepOf(gap))}>
                Go there<span class="visually-hidden">: {GAP_SENTENCES[gap]}</span>
              </button>
            </li>
          ))}
        </ul>
      ) : (
        <>
          <p class="prose">
            Before it goes in, the simulator plays it: the start has to fail, the solution has to
            pass without moving what is locked, and every mistake has to fail something.
          </p>
          <button type="button" class="button-main" onClick={finish}>
            Prove it and put it into the assignment
          </button>
        </>
      )}
      <div role="status">
        {problems.length > 0 && (
          <>
            <p class="problem">It does not work yet:</p>
            <ul class="problem">
              {problems.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </section>
  );
}
