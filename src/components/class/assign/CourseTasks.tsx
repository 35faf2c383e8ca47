import type { AssignmentItem } from '../../../class/assignment.ts';
import type { AssignmentEvent } from '../../../class/assignment-machine.ts';
import { counted } from '../../../text/index.ts';
import {
  type Catalogue,
  type CatalogueTask,
  isSameTask,
  KIND_WORDS,
  wantedId,
} from './catalogue.ts';

interface Props {
  catalogue: Catalogue;
  items: readonly AssignmentItem[];
  send: (event: AssignmentEvent) => void;
}

/** The tasks of the course by lesson, each to be put into the assignment or taken out of it. */
export function CourseTasks({ catalogue, items, send }: Props) {
  const itemOf = ({ task }: CatalogueTask) => items.find((item) => isSameTask(item.task, task));
  return (
    <div class="course-tasks">
      {catalogue.lessons.map((lesson) => {
        const chosen = lesson.tasks.filter((task) => itemOf(task) !== undefined).length;
        return (
          <details key={lesson.id}>
            <summary>
              {lesson.title}{' '}
              <span class="soft">
                {counted(lesson.tasks.length, 'task')}
                {chosen > 0 && `, ${chosen} chosen`}
              </span>
            </summary>
            <ul>
              {lesson.tasks.map((one) => {
                const item = itemOf(one);
                return (
                  <li key={`${one.task.kind} ${wantedId(one.task)}`}>
                    <label>
                      <input
                        type="checkbox"
                        checked={item !== undefined}
                        onChange={() =>
                          send(
                            item
                              ? { type: 'item.remove', id: item.id }
                              : { type: 'item.add', wanted: wantedId(one.task), task: one.task },
                          )
                        }
                      />
                      <span>
                        <strong>{one.title}</strong>{' '}
                        <span class="soft">{KIND_WORDS[one.kind] ?? one.kind}</span>
                        <span class="asks">{one.asks}</span>
                      </span>
                    </label>
                  </li>
                );
              })}
            </ul>
          </details>
        );
      })}
    </div>
  );
}
