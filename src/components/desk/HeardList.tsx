import { type Claim, judge, type Setup, type Solution } from '../../../simulator/index.ts';
import { claimSentence, heardSentence, shownSentence } from '../../text/index.ts';

interface Props {
  claims: readonly Claim[];
  setup: Setup;
  solution: Solution;
}

/** What is heard on a desk: each claim of a step as it was computed. */
export function HeardList({ claims, setup, solution }: Props) {
  return (
    <ul class="heard">
      {claims.map((claim) => (
        <li key={JSON.stringify(claim)}>{whatIsHeard(claim, setup, solution)}</li>
      ))}
    </ul>
  );
}

function whatIsHeard(claim: Claim, setup: Setup, solution: Solution): string {
  const { rig } = setup;
  const judgement = judge(claim, { setup, solution });
  if (judgement.holds) return shownSentence(rig, judgement);
  // Somebody moved the desk since the step: what the step says no longer holds.
  return `${claimSentence(rig, claim)} Not as the desk stands now. ${heardSentence(rig, judgement)}`;
}
