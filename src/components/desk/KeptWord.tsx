import { type Draft, type TaskRecord, total } from '../../progress/task-record.ts';
import { effortSentence, momentText, NOTHING_KEPT } from '../../text/index.ts';
import type { Keeping } from './use-keeping.ts';

interface Props {
  keeping: Keeping<{ readonly drafts: readonly Draft[] }>;
  /** How one leads back to the beginning, as a sentence. */
  back: string;
  /** What is kept of a task, to say what was done of it so far. */
  record?: TaskRecord | undefined;
}

/** What is kept of something on the page: since when it stands so, another try that was left, or that nothing is. */
export function KeptWord({ keeping: { state, keepsNothing, takeUp }, back, record }: Props) {
  if (keepsNothing) return <p class="kept-word problem">{NOTHING_KEPT}</p>;
  const { takenUpAt, other } = state ?? {};
  const effort = record && effortOf(record);
  return (
    <>
      {(takenUpAt !== undefined || effort) && (
        <p class="kept-word">
          {effort && `So far: ${effort}`}
          {effort && takenUpAt !== undefined && ' '}
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

/** What was done of a task, as a sentence; nothing before the first attempt. */
function effortOf({ attempts, hints, best, passedAt }: TaskRecord): string | undefined {
  if (total(attempts) === 0) return undefined;
  return effortSentence({ attempts: total(attempts), hints: total(hints), best, passedAt });
}
