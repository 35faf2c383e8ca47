import type { Concept } from '../../progress/course-item.ts';
import type { QueuedItem } from '../../progress/review-queue.ts';

interface Props {
  queue: readonly QueuedItem[];
  concepts: readonly Concept[];
}

/** What to do now, in order: tasks that ask for what is due, mixed with what it is mistaken for. */
export function ReviewList({ queue, concepts }: Props) {
  const termOf = (id: string) => concepts.find((one) => one.id === id)?.term ?? id;
  if (queue.length === 0) {
    return (
      <p class="prose">
        Nothing is due. What you pass comes back after 1 day, and then after 3, 7 and 21 more.
      </p>
    );
  }
  return (
    <>
      <p class="prose">
        Things that are easily mistaken for one another stand side by side. The desk of a task that
        you have passed begins anew.
      </p>
      <ol class="review">
        {queue.map(({ item, why, isOnAnotherRig }) => (
          <li key={item.id}>
            <a href={item.href}>{item.title}</a>
            <p>
              {why.code === 'due'
                ? `Asks for: ${termOf(item.concept)}.`
                : `Asks for: ${termOf(item.concept)}, to tell it from ${termOf(why.concept)}.`}
              {isOnAnotherRig && ' On another rig than the last time.'}
            </p>
          </li>
        ))}
      </ol>
    </>
  );
}
