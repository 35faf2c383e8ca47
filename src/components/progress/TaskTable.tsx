import type { CourseItem } from '../../progress/course-item.ts';
import { type Kept, standingOfTask } from '../../progress/knowledge.ts';
import { total } from '../../progress/task-record.ts';
import { shareText } from '../../text/index.ts';
import type { Forgetting } from './ForgetDialog.tsx';
import { StandingWord } from './StandingWord.tsx';

interface Props {
  label: string;
  items: readonly CourseItem[];
  kept: Kept;
  onForget: (what: Forgetting) => void;
}

/** What was done of some tasks, a row each. */
export const TaskTable = ({ label, items, kept, onForget }: Props) => (
  <section class="scroll-x" tabIndex={0} aria-label={label}>
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
);

function TaskRow({
  item,
  kept,
  onForget,
}: { item: CourseItem } & Pick<Props, 'kept' | 'onForget'>) {
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
