import { useState } from 'preact/hooks';
import type { Assignment } from '../../../class/assignment.ts';
import { handInText } from '../../../class/hand-in.ts';
import { handInOfWork } from '../../../class/hand-in-of-work.ts';
import { MOST_BYTES } from '../../../class/open-files.ts';
import type { Work } from '../../../class/work.ts';
import type { WorkEvent } from '../../../class/work-machine.ts';
import { closesSentence, handInSentences, momentText } from '../../../text/index.ts';
import { handOverFile } from '../../hand-over-file.ts';

interface Props {
  assignment: Assignment;
  /** Version of the course. */
  course: string;
  work: Work;
  send: (event: WorkEvent) => void;
  state: 'working' | 'handed in' | 'closed';
}

/** Saves what was done as a file, at any time, and says what is in it. */
export function HandInPanel({ assignment, course, work, send, state }: Props) {
  const [isSure, setSure] = useState(false);
  const [isTooLong, setTooLong] = useState(false);
  const save = () => {
    const at = Date.now();
    const handIn = handInOfWork(
      work,
      assignment,
      course,
      work.handedInAt && state !== 'working' ? work.handedInAt : at,
    );
    const text = handInText(handIn);
    setTooLong(new TextEncoder().encode(text).length > MOST_BYTES);
    handOverFile(`${assignment.id}.${work.learner}.hand-in.json`, text);
    if (state === 'working') send({ type: 'hand-in', at });
  };
  const preview = handInOfWork(work, assignment, course, work.startedAt);
  return (
    <section class="hand-in" aria-labelledby="hand-in-title">
      <h2 id="hand-in-title">Hand in</h2>
      <p>
        Save the file, and give it to your instructor the way you agreed on. You can do that at any
        time and go on: the newest file counts. Nothing leaves this machine by itself.
      </p>
      <details>
        <summary>What is in the file</summary>
        <ul>
          {handInSentences(preview).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
        <p>Nothing else is in it, and every answer is marked again by your instructor.</p>
      </details>
      <div class="buttons">
        <button type="button" class="button-main" onClick={save}>
          Save the hand-in file
        </button>
        {assignment.solutions === 'after-hand-in' && state === 'handed in' && !isSure && (
          <button type="button" onClick={() => setSure(true)}>
            Close and see the solutions…
          </button>
        )}
      </div>
      <p role="status">{stateWords(work, state)}</p>
      {isTooLong && (
        <p class="problem">
          The file is longer than the {MOST_BYTES / 1024} kB that a gradebook takes. Tell your
          instructor.
        </p>
      )}
      {isSure && state === 'handed in' && (
        <div class="sure">
          <p>{closesSentence}</p>
          <div class="buttons">
            <button type="button" onClick={() => send({ type: 'close', at: Date.now() })}>
              Close and see the solutions
            </button>
            <button type="button" onClick={() => setSure(false)}>
              Go on working
            </button>
          </div>
        </div>
      )}
    </section>
  );
}

function stateWords({ handedInAt }: Work, state: Props['state']): string {
  if (handedInAt === undefined) return 'No file was saved yet.';
  const when = `The file was saved on ${momentText(handedInAt)}`;
  if (state === 'working') return `${when}. Since then something was changed: save it again.`;
  return state === 'closed'
    ? `${when}, and your work is closed.`
    : `${when}, and holds all that stands here.`;
}
