import { useEffect, useRef, useState } from 'preact/hooks';
import { InputError } from '../../../../simulator/index.ts';
import type { Assignment } from '../../../class/assignment.ts';
import type { Course } from '../../../course/course.ts';
import { fetchCourse } from '../fetch-course.ts';
import { type TaskFinder, taskFinder } from '../work/assigned-task.ts';
import { WorkRoom } from '../work/WorkRoom.tsx';
import type { Look } from './GiveOut.tsx';
import { Paper } from './Paper.tsx';

interface Props {
  look: Look;
  assignment: Assignment;
  onBack: () => void;
}

/** The code that an instructor looks at an assignment under. */
const LOOKER = 'preview';

/** An assignment as a learner meets it, or as it is printed. It stands in place of what makes it. */
export function Looking({ look, assignment, onBack }: Props) {
  const [found, setFound] = useState<{ course: Course; find: TaskFinder }>();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus();
    const open = async () => {
      const course = await fetchCourse();
      setFound({ course, find: taskFinder('The assignment', assignment, course) });
    };
    open().catch((error: unknown) =>
      setProblems(
        error instanceof InputError
          ? error.message.split('\n')
          : ['The tasks of the course could not be fetched. Try again when you are online.'],
      ),
    );
  }, [assignment]);
  return (
    <>
      <div class="buttons looking-bar">
        <button type="button" onClick={onBack}>
          ← Back to making it
        </button>
        {look !== 'preview' && found && (
          <button type="button" class="button-main" onClick={() => window.print()}>
            Print
          </button>
        )}
      </div>
      <h2 ref={head} tabIndex={-1} class="work-title">
        {assignment.title}
        {look === 'key' && ': answer key'}
      </h2>
      {problems.length > 0 && (
        <ul class="problem" role="alert">
          {problems.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {!found && problems.length === 0 && <p role="status">The tasks are coming.</p>}
      {found && look === 'preview' && (
        <div class="assignment">
          <p class="soft">This is how a learner sees it. Nothing that you do here is kept.</p>
          <WorkRoom assignment={assignment} {...found} learner={LOOKER} isPreview />
        </div>
      )}
      {found && look !== 'preview' && (
        <Paper assignment={assignment} {...found} learner={LOOKER} isKey={look === 'key'} />
      )}
    </>
  );
}
