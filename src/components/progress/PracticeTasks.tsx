import type { CourseOutline } from '../../progress/course-item.ts';
import { type Kept, practised } from '../../progress/knowledge.ts';
import { leftUndone } from '../../progress/practice.ts';
import { momentText } from '../../text/index.ts';
import type { Forgetting } from './ForgetDialog.tsx';
import { TaskTable } from './TaskTable.tsx';

interface Props {
  outline: CourseOutline;
  kept: Kept;
  onForget: (what: Forgetting) => void;
}

const KINDS = [
  { kind: 'drill', title: 'Drills', page: '/drills/' },
  { kind: 'fault-hunt', title: 'Fault hunts', page: '/fault-hunt/' },
] as const;

/** What was done of drills and fault hunts, by concept and level, and what was left half done. */
export const PracticeTasks = ({ outline, kept, onForget }: Props) => {
  const tried = practised(outline, kept);
  return KINDS.map(({ kind, title, page }) => {
    const items = tried.filter((item) => item.kind === kind);
    return (
      <section key={kind} aria-labelledby={`practice-${kind}`}>
        <h3 id={`practice-${kind}`}>{title}</h3>
        {items.length === 0 ? (
          <p>
            Nothing was tried yet. <a href={page}>Go to the {title.toLowerCase()}</a>
          </p>
        ) : (
          <TaskTable label={title} items={items} kept={kept} onForget={onForget} />
        )}
        <ul>
          {leftUndone(items, kept).map(({ item, href, at }) => (
            <li key={href}>
              <a href={href}>
                Go on with {item.title}, left on {momentText(at)}
              </a>
            </li>
          ))}
        </ul>
      </section>
    );
  });
};
