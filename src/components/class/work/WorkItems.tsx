import type { Assignment } from '../../../class/assignment.ts';
import { itemsInOrder } from '../../../class/item-stream.ts';
import { type Work, workOn } from '../../../class/work.ts';
import type { WorkEvent } from '../../../class/work-machine.ts';
import { attemptsText, counted, itemStanding } from '../../../text/index.ts';
import type { TaskFinder } from './assigned-task.ts';
import { ItemPlace } from './ItemPlace.tsx';

interface Props {
  assignment: Assignment;
  work: Work;
  send: (event: WorkEvent) => void;
  find: TaskFinder;
  /** What an item is called. */
  titleOf: (item: Assignment['items'][number]) => string;
  isClosed: boolean;
  open: string | undefined;
  onOpen: (item: string | undefined) => void;
}

/** What is to be done and what is done: every item with how it stands, the open one in its place. */
export function WorkItems({
  assignment,
  work,
  send,
  find,
  titleOf,
  isClosed,
  open,
  onOpen,
}: Props) {
  return (
    <ol class="work-items">
      {itemsInOrder(assignment, work.learner).map((item, index) => {
        const done = workOn(work, item.id);
        const isOpen = open === item.id;
        const isPassed = done.best?.score === 1;
        return (
          <li key={item.id} class={isPassed ? 'work-item work-item-passed' : 'work-item'}>
            <div class="work-item-head">
              <h3 id={`head-${item.id}`}>
                {index + 1}. {titleOf(item)}
              </h3>
              <p class="work-item-standing">
                <strong class={isPassed ? 'result-passed' : ''}>{itemStanding(done)}</strong>
                {' · '}
                {counted(item.weight, 'point')}
                {' · '}
                {attemptsText(done.attempts, assignment.attempts)}
              </p>
              <button
                type="button"
                aria-expanded={isOpen}
                aria-label={`${isOpen ? 'Put away' : 'Open'} ${titleOf(item)}`}
                onClick={() => onOpen(isOpen ? undefined : item.id)}
              >
                {isOpen ? 'Put away' : 'Open'}
              </button>
            </div>
            {isOpen && (
              <ItemPlace hand={{ assignment, item, work, send }} find={find} isClosed={isClosed} />
            )}
          </li>
        );
      })}
    </ol>
  );
}
