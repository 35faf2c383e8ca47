import type { CourseItem } from '../../progress/course-item.ts';
import { type Kept, standingOfTask, type UnitStanding } from '../../progress/knowledge.ts';
import { total } from '../../progress/task-record.ts';
import { passedText, shareText } from '../../text/index.ts';
import type { Forgetting } from './ForgetDialog.tsx';
import { StandingWord } from './StandingWord.tsx';

interface Props {
  unit: UnitStanding;
  kept: Kept;
  onForget: (what: Forgetting) => void;
}

/** What was done of a unit, task by task. */
export function UnitTasks({ unit: { title, href, passed, items }, kept, onForget }: Props) {
  const known = items.filter(({ id }) => kept.tasks.has(id)).map(({ id }) => id);
  return (
    <details class="unit">
      <summary>
        {title} <span class="unit-count">{passedText(passed, items.length)}</span>
      </summary>
      <p>
        <a href={href}>Go to the lesson</a>
      </p>
      <section class="scroll-x" tabIndex={0} aria-label={`Tasks of ${title}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Task</th>
              <th scope="col">How it stands</th>
              <th scope="col">Best</th>
              <th scope="col">Last</th>
              <th scope="col">Attempts</th>
              <th scope="col">Hints</th>
              <th scope="col">
                <span class="visually-hidden">Reset</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {items.map((item) => (
              <TaskRow key={item.id} item={item} kept={kept} onForget={onForget} />
            ))}
          </tbody>
        </table>
      </section>
      {known.length > 0 && (
        <button
          type="button"
          onClick={() => onForget({ what: known, name: `the lesson ${title}` })}
        >
          Reset this lesson…
        </button>
      )}
    </details>
  );
}

function TaskRow({ item, kept, onForget }: { item: CourseItem } & Omit<Props, 'unit'>) {
  const record = kept.tasks.get(item.id);
  const { best, last } = record ?? {};
  return (
    <tr>
      <th scope="row">
        <a href={item.href}>{item.title}</a>
      </th>
      <td>
        <StandingWord standing={standingOfTask(record)} />
      </td>
      <td>{best === undefined ? '' : shareText(best)}</td>
      <td>{last && `${shareText(last.score)}${last.isAided ? ', solution shown' : ''}`}</td>
      <td>{record ? total(record.attempts) : ''}</td>
      <td>{record ? total(record.hints) : ''}</td>
      <td>
        {record && (
          <button
            type="button"
            onClick={() => onForget({ what: [item.id], name: item.title })}
            aria-label={`Reset… ${item.title}`}
          >
            Reset…
          </button>
        )}
      </td>
    </tr>
  );
}
