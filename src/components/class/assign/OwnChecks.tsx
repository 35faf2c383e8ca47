import { useMemo } from 'preact/hooks';
import { type Claim, candidateClaims, type Rig } from '../../../../simulator/index.ts';
import { claimKey } from '../../../class/own-draft.ts';
import { capitalised, claimSentence, counted, goalName } from '../../../text/index.ts';
import type { StepProps } from './own-step.ts';

const MOST_CHECKS = 20;

/** What is to be heard: of all that the simulator hears in the solution and not at the start, what the task asks for. */
export function OwnChecks({ own, rig, boards, edit }: StepProps) {
  const claims = useMemo(
    () => candidateClaims(rig, boards.start, boards.solution),
    [rig, boards.start, boards.solution],
  );
  const keys = new Set(claims.map(claimKey));
  const stale = own.checks.filter(({ claim }) => !keys.has(claimKey(claim)));
  const chosen = new Map(own.checks.map((check) => [claimKey(check.claim), check]));
  const groups = Map.groupBy(claims, (claim) => ('output' in claim ? claim.output : ''));
  const isFull = own.checks.length >= MOST_CHECKS;
  const row = (claim: Claim) => {
    const check = chosen.get(claimKey(claim));
    const words = claimSentence(rig, claim);
    return (
      <li key={claimKey(claim)}>
        <label>
          <input
            type="checkbox"
            checked={check !== undefined}
            disabled={!check && isFull}
            onChange={({ currentTarget }) =>
              edit({ type: 'check.set', claim, isAsked: currentTarget.checked })
            }
          />{' '}
          {words}
        </label>
        {check && (
          <label class="weight">
            Points
            <input
              type="number"
              min={1}
              max={100}
              value={check.weight}
              aria-label={`Points of: ${words}`}
              onInput={({ currentTarget }) => {
                const weight = Number(currentTarget.value);
                if (Number.isInteger(weight) && weight >= 1 && weight <= 100) {
                  edit({ type: 'check.weigh', check: check.id, weight });
                }
              }}
            />
          </label>
        )}
      </li>
    );
  };
  return (
    <>
      <p class="prose">
        All of this is heard in the solution, and not at the start. Choose what the task is about:
        whatever a learner does is right if it sounds so. {counted(own.checks.length, 'check')}{' '}
        chosen, of at most {MOST_CHECKS}.
      </p>
      {claims.length === 0 && (
        <p class="problem">Start and solution sound alike. Move something in the solution.</p>
      )}
      {stale.length > 0 && (
        <>
          <p class="problem">These do not tell the solution from the start any more:</p>
          <ul class="own-checks">{stale.map(({ claim }) => row(claim))}</ul>
        </>
      )}
      {[...groups].map(([output, list], index) => (
        <details key={output} open={index === 0}>
          <summary>
            {groupName(rig, output)}{' '}
            <span class="soft">
              {list.filter((claim) => chosen.has(claimKey(claim))).length} of {list.length} chosen
            </span>
          </summary>
          <ul class="own-checks">{list.map(row)}</ul>
        </details>
      ))}
    </>
  );
}

const groupName = (rig: Rig, output: string): string =>
  output === '' ? 'The whole room' : capitalised(goalName(rig, output));
