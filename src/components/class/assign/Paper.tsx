import { useEffect, useState } from 'preact/hooks';
import type { Assignment } from '../../../class/assignment.ts';
import { itemTitle } from '../../../class/item-title.ts';
import type { Course } from '../../../course/course.ts';
import { counted, dayText } from '../../../text/index.ts';
import type { MetTask, TaskFinder } from '../work/assigned-task.ts';
import { BLANK } from './blank.ts';
import { PaperQuestion } from './PaperQuestion.tsx';
import { PaperTask } from './PaperTask.tsx';

interface Props {
  assignment: Assignment;
  course: Course;
  find: TaskFinder;
  /** By whose code the drills are made that differ from learner to learner. */
  learner: string;
  isKey: boolean;
}

type Found = Readonly<Record<string, MetTask | 'failed'>>;

/** An assignment on paper: drawings and blanks for answers, or the answers with their reasons. */
export function Paper({ assignment, course, find, learner, isKey }: Props) {
  const [found, setFound] = useState<Found>({});
  useEffect(() => {
    for (const item of assignment.items) {
      find(item, learner).then(
        (met) => setFound((before) => ({ ...before, [item.id]: met })),
        () => setFound((before) => ({ ...before, [item.id]: 'failed' })),
      );
    }
  }, [assignment, find, learner]);
  const { note, due, items } = assignment;
  return (
    <div class="paper">
      {!isKey && (
        <>
          {note && <p class="work-note">{note}</p>}
          {due && <p>Wanted by {dayText(Date.parse(`${due}T12:00:00Z`))}.</p>}
          <p class="paper-who">Code or name: {BLANK}</p>
        </>
      )}
      {items.map((item, index) => {
        const met = found[item.id];
        const isEach = item.task.kind === 'drill' && item.task.seeds.policy === 'each';
        return (
          <section key={item.id} class="paper-item">
            <h3>
              {index + 1}. {itemTitle(item.task, course)}{' '}
              <span class="soft">{counted(item.weight, 'point')}</span>
            </h3>
            {isEach ? (
              <p>Each learner gets a drill of their own, on the page alone.</p>
            ) : met === undefined ? (
              <p role="status">The task is coming.</p>
            ) : met === 'failed' ? (
              <p class="problem">The task could not be fetched.</p>
            ) : met.kind === 'board' ? (
              <PaperTask scenario={met.scenario} isKey={isKey} />
            ) : (
              <PaperQuestion question={met.question} show={met.show} isKey={isKey} />
            )}
          </section>
        );
      })}
    </div>
  );
}
