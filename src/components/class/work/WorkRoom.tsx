import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Assignment } from '../../../class/assignment.ts';
import { itemTitle } from '../../../class/item-title.ts';
import { newWork, workOn } from '../../../class/work.ts';
import { workMachine } from '../../../class/work-machine.ts';
import type { Course } from '../../../course/course.ts';
import { counted, rulesSentences } from '../../../text/index.ts';
import { useMachine } from '../../desk/use-machine.ts';
import type { TaskFinder } from './assigned-task.ts';
import { fetchAhead } from './fetch-ahead.ts';
import { HandInPanel } from './HandInPanel.tsx';
import { KeptAll } from './KeptAll.tsx';
import { WorkItems } from './WorkItems.tsx';

interface Props {
  assignment: Assignment;
  course: Course;
  find: TaskFinder;
  learner: string;
  /** Nothing is kept, and nothing handed in, where an instructor only looks at it. */
  isPreview?: boolean;
}

/** Where a learner does an assignment. */
export function WorkRoom({ assignment, course, find, learner, isPreview = false }: Props) {
  const [fresh] = useState(() => newWork(assignment.id, learner, Date.now()));
  const { actor, snapshot } = useMachine(workMachine, { work: fresh });
  const { send } = actor;
  const { work } = snapshot.context;
  const [isReady, setReady] = useState(isPreview);
  const [open, setOpen] = useState<string>();
  const [isAllHere, setAllHere] = useState(false);
  useEffect(
    () => void fetchAhead(assignment, learner, find).then(setAllHere),
    [assignment, learner, find],
  );
  const isClosed = snapshot.matches('closed');
  const state = isClosed
    ? 'closed'
    : snapshot.matches({ open: 'handedIn' })
      ? 'handed in'
      : 'working';
  const titles = useMemo(
    () => new Map(assignment.items.map(({ id, task }) => [id, itemTitle(task, course)])),
    [assignment, course],
  );
  const passed = assignment.items.filter(({ id }) => workOn(work, id).best?.score === 1).length;
  return (
    <>
      {assignment.note && <p class="work-note">{assignment.note}</p>}
      <ul class="work-rules">
        {rulesSentences(assignment).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      {!isPreview && (
        <>
          <p class="work-name">
            <label>
              Your name, if you want it in the file{' '}
              <input
                type="text"
                autocomplete="name"
                maxLength={120}
                value={work.name}
                disabled={isClosed}
                onInput={({ currentTarget }) =>
                  send({ type: 'name.set', name: currentTarget.value })
                }
              />
            </label>
          </p>
          <KeptAll
            work={work}
            fresh={fresh}
            onTakeUp={(kept) => send({ type: 'work.take-up', work: kept })}
            onReady={() => setReady(true)}
          />
        </>
      )}
      <h2 id="work-items-title">
        What is to be done{' '}
        <span class="work-count">
          {passed} of {counted(assignment.items.length, 'task')} passed
        </span>
      </h2>
      {!isPreview && (
        <p class="work-ahead" role="status">
          {isAllHere
            ? 'All tasks are on this machine: you need no network for them any more.'
            : 'The tasks are on their way. Until they are all here you need the network.'}
        </p>
      )}
      {isReady ? (
        <WorkItems
          assignment={assignment}
          work={work}
          send={send}
          find={find}
          titleOf={({ id }) => titles.get(id) ?? id}
          isClosed={isClosed}
          open={open}
          onOpen={setOpen}
        />
      ) : (
        <p role="status">What you did before is being looked for.</p>
      )}
      {!isPreview && (
        <HandInPanel
          assignment={assignment}
          course={course.version}
          work={work}
          send={send}
          state={state}
        />
      )}
    </>
  );
}
