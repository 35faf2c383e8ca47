import type { Kept, UnitStanding } from '../../progress/knowledge.ts';
import { unitText } from '../../text/index.ts';
import type { Forgetting } from './ForgetDialog.tsx';
import { TaskTable } from './TaskTable.tsx';

interface Props {
  unit: UnitStanding;
  kept: Kept;
  onForget: (what: Forgetting) => void;
}

/** What was done of a unit, task by task. */
export function UnitTasks({
  unit: { title, href, passed, isKnown, items },
  kept,
  onForget,
}: Props) {
  const known = items.filter(({ id }) => kept.tasks.has(id)).map(({ id }) => id);
  return (
    <details class="unit">
      <summary>
        {title} <span class="unit-count">{unitText(passed, items.length, isKnown)}</span>
      </summary>
      <p>
        <a href={href}>Go to the lesson</a> <a href={`${href}test-out/`}>Test out</a>
      </p>
      <TaskTable label={`Tasks of ${title}`} items={items} kept={kept} onForget={onForget} />
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
