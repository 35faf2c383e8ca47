import type { Draft } from '../../progress/task-record.ts';
import { momentText, NOTHING_KEPT } from '../../text/index.ts';
import type { Keeping } from './use-keeping.ts';

interface Props {
  keeping: Keeping<{ readonly drafts: readonly Draft[] }>;
  /** How one leads back to the beginning, as a sentence. */
  back: string;
  /** What was done so far, as a sentence. */
  effort?: string | undefined;
}

/** What is kept of something on the page: since when it stands so, another try that was left, or that nothing is. */
export function KeptWord({ keeping: { state, keepsNothing, takeUp }, back, effort }: Props) {
  if (keepsNothing) return <p class="kept-word problem">{NOTHING_KEPT}</p>;
  const { takenUpAt, other } = state ?? {};
  return (
    <>
      {(takenUpAt !== undefined || effort) && (
        <p class="kept-word">
          {effort && `So far: ${effort} `}
          {takenUpAt !== undefined &&
            `It stands as you left it on ${momentText(takenUpAt)}. ${back}`}
        </p>
      )}
      {other && (
        <p class="kept-word">
          {other.isFinished
            ? `What you passed it with on ${momentText(other.at)} is kept. `
            : `Another try, of ${momentText(other.at)}, is kept as well. `}
          <button type="button" onClick={() => takeUp(other)}>
            Go on with that
          </button>
        </p>
      )}
    </>
  );
}
