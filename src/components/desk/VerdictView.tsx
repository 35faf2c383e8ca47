import type { Rig, Verdict } from '../../../simulator/index.ts';
import {
  claimSentence,
  heardSentence,
  movedLocksSentence,
  reasonSentence,
  resultWord,
} from '../../text/index.ts';

/** The most reasons that are given for one check. */
const MOST_REASONS = 2;

interface Props {
  rig: Rig;
  verdict: Verdict;
  /** Whether the desk was moved since. */
  isStale: boolean;
}

/** A verdict: for every check what was asked, what was heard, and why. */
export function VerdictView({ rig, verdict, isStale }: Props) {
  const moved = movedLocksSentence(rig, verdict.movedLocks);
  return (
    <section class={isStale ? 'verdict verdict-stale' : 'verdict'}>
      {isStale && (
        <p class="verdict-note">The desk was moved since. Check again to hear it anew.</p>
      )}
      {moved && <p class="verdict-note">{moved}</p>}
      <ul class="checks">
        {verdict.results.map((result) => (
          <li
            key={result.check.id}
            class={result.holds ? 'check check-passed' : 'check check-not-yet'}
          >
            <p class="check-head">
              <strong class="check-word">{resultWord(result.holds)}</strong>{' '}
              {claimSentence(rig, result.claim)}
            </p>
            <p class="check-heard">{heardSentence(rig, result)}</p>
            {!result.holds &&
              result.reasons.slice(0, MOST_REASONS).map((reason, index) => (
                <p key={index} class="check-reason">
                  {reasonSentence(rig, reason)}
                </p>
              ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
