import { useEffect, useState } from 'preact/hooks';
import { InputError } from '../../../../simulator/index.ts';
import type { Assignment } from '../../../class/assignment.ts';
import { assignmentFragment } from '../../../class/assignment-fragment.ts';
import { assignmentOfLink } from '../../../class/assignment-link.ts';
import type { Course } from '../../../course/course.ts';
import { counted, momentText } from '../../../text/index.ts';
import { useFragment } from '../../desk/use-fragment.ts';
import { AssignmentLinkField } from '../AssignmentLinkField.tsx';
import { DropZone } from '../DropZone.tsx';
import { fetchCourse } from '../fetch-course.ts';
import { readAssignmentFile } from '../read-assignment-file.ts';
import { type TaskFinder, taskFinder } from './assigned-task.ts';
import { CodeForm } from './CodeForm.tsx';
import { type KeptAssignment, keepAssignment, keptAssignments } from './kept-work.ts';
import { WorkRoom } from './WorkRoom.tsx';

/** An assignment that can be done: the course has all of its tasks. */
interface Opened {
  readonly assignment: Assignment;
  readonly course: Course;
  readonly find: TaskFinder;
}

/** Where an assignment is opened, from a link, a file or what the browser keeps, and done. */
export function AssignmentPage() {
  const [opened, setOpened] = useState<Opened>();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [learner, setLearner] = useState<string>();
  const [kept, setKept] = useState<readonly KeptAssignment[]>();
  const look = () => void keptAssignments().then(setKept);
  useEffect(look, []);

  const open = async (file: string, read: () => Promise<Assignment>) => {
    try {
      const assignment = await read();
      const course = await fetchCourse();
      const find = taskFinder(file, assignment, course);
      await keepAssignment(assignment);
      const all = await keptAssignments();
      setKept(all);
      setProblems([]);
      // Who worked last goes on, unless somebody else says so.
      const [last] = all.find((one) => one.assignment.id === assignment.id)?.work ?? [];
      setLearner(last?.learner);
      setOpened({ assignment, course, find });
    } catch (error) {
      setProblems(
        error instanceof InputError
          ? error.message.split('\n')
          : ['The tasks of the course could not be fetched. Try again when you are online.'],
      );
    }
  };
  useFragment((fragment) => {
    const link = assignmentFragment(fragment);
    if (link) void open('The link', () => assignmentOfLink(link));
  });

  const refusal = problems.length > 0 && (
    <div role="alert">
      <p class="problem">
        This cannot be opened as an assignment. {opened ? 'What was open stays as it is.' : ''}{' '}
        Nothing that is kept was changed.
      </p>
      <ul class="problem">
        {problems.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
  if (!opened) {
    return (
      <>
        {refusal}
        <Opening kept={kept ?? []} onOpen={open} />
      </>
    );
  }
  const { assignment, course, find } = opened;
  const before = kept?.find((one) => one.assignment.id === assignment.id)?.work ?? [];
  return (
    <>
      {refusal}
      <h2 class="work-title">{assignment.title}</h2>
      {learner === undefined ? (
        <CodeForm before={before} onCode={setLearner} />
      ) : (
        <>
          <p class="work-who">
            You work as <strong>{learner}</strong>.{' '}
            <button
              type="button"
              onClick={() => {
                look();
                setLearner(undefined);
              }}
            >
              Somebody else
            </button>
          </p>
          <WorkRoom
            key={`${assignment.id}/${learner}/${JSON.stringify(assignment)}`}
            assignment={assignment}
            course={course}
            find={find}
            learner={learner}
          />
        </>
      )}
    </>
  );
}

interface OpeningProps {
  kept: readonly KeptAssignment[];
  onOpen: (file: string, read: () => Promise<Assignment>) => void;
}

/** Where one chooses an assignment when no link led here. */
function Opening({ kept, onOpen }: OpeningProps) {
  return (
    <>
      {kept.length > 0 && (
        <section aria-labelledby="kept-title">
          <h2 id="kept-title">Opened in this browser before</h2>
          <ul class="kept-assignments">
            {kept.map(({ assignment, at }) => (
              <li key={assignment.id}>
                <button
                  type="button"
                  onClick={() => onOpen(assignment.title, async () => assignment)}
                >
                  Go on with “{assignment.title}”
                </button>{' '}
                {counted(assignment.items.length, 'task')}, left on {momentText(at)}
              </li>
            ))}
          </ul>
        </section>
      )}
      <DropZone
        label="Assignment"
        choose="Open an assignment…"
        accept=".json,.yaml,.yml"
        onFiles={([file]) => file && onOpen(file.name, () => readAssignmentFile(file))}
      >
        <AssignmentLinkField onLink={(link) => onOpen('The link', () => assignmentOfLink(link))} />
        <p>The file or the link comes from your instructor.</p>
      </DropZone>
    </>
  );
}
