import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { AssignmentItem } from '../../../class/assignment.ts';
import type { AssignmentEvent } from '../../../class/assignment-machine.ts';
import { counted } from '../../../text/index.ts';
import { type Catalogue, courseTask, KIND_WORDS, titleIn } from './catalogue.ts';
import { SeedPolicy } from './SeedPolicy.tsx';

interface Props {
  items: readonly AssignmentItem[];
  catalogue: Catalogue;
  send: (event: AssignmentEvent) => void;
  /** Opens a scenario of the instructor again. */
  onChangeOwn: (item: AssignmentItem) => void;
}

/** The items of an assignment in their order. */
export function ItemList({ items, catalogue, send, onChangeOwn }: Props) {
  const pressed = useRef<HTMLButtonElement>();
  const [said, say] = useState('');
  // An element that is put elsewhere may lose the focus.
  useLayoutEffect(() => {
    pressed.current?.focus();
    pressed.current = undefined;
  });
  const points = items.reduce((sum, { weight }) => sum + weight, 0);
  return (
    <>
      {items.length === 0 && <p>Nothing is chosen yet. Choose tasks below.</p>}
      <ol class="assign-items">
        {items.map((item, index) => {
          const title = titleIn(catalogue, item.task);
          const move = (by: number, words: 'up' | 'down') => (
            <button
              type="button"
              aria-label={`Move ${title} ${words}`}
              aria-disabled={words === 'up' ? index === 0 : index === items.length - 1}
              onClick={({ currentTarget }) => {
                pressed.current = currentTarget;
                send({ type: 'item.move', id: item.id, by });
                const place = Math.min(Math.max(index + by, 0), items.length - 1) + 1;
                say(`${title} is now ${place} of ${items.length}.`);
              }}
            >
              {words === 'up' ? '↑' : '↓'}
            </button>
          );
          return (
            <li key={item.id}>
              <div class="assign-item-name">
                <strong>{title}</strong>
                <span class="soft">{kindOf(item, catalogue)}</span>
              </div>
              {item.task.kind === 'drill' && (
                <SeedPolicy
                  seeds={item.task.seeds}
                  title={title}
                  onChange={(seeds) => {
                    if (item.task.kind === 'drill')
                      send({ type: 'item.task', id: item.id, task: { ...item.task, seeds } });
                  }}
                />
              )}
              <label class="weight">
                Points
                <input
                  type="number"
                  min={1}
                  max={100}
                  value={item.weight}
                  aria-label={`Points of ${title}`}
                  onInput={({ currentTarget }) => {
                    const weight = Number(currentTarget.value);
                    if (Number.isInteger(weight) && weight >= 1 && weight <= 100) {
                      send({ type: 'item.weigh', id: item.id, weight });
                    }
                  }}
                />
              </label>
              <span class="buttons">
                {move(-1, 'up')}
                {move(1, 'down')}
                {item.task.kind === 'own' && (
                  <button
                    type="button"
                    aria-label={`Change ${title}`}
                    onClick={() => onChangeOwn(item)}
                  >
                    Change…
                  </button>
                )}
                <button
                  type="button"
                  aria-label={`Remove ${title}`}
                  onClick={() => {
                    send({ type: 'item.remove', id: item.id });
                    say(`${title} was removed. Undo brings it back.`);
                  }}
                >
                  Remove
                </button>
              </span>
            </li>
          );
        })}
      </ol>
      <p class="soft">
        {counted(items.length, 'task')}, {counted(points, 'point')} in all.
      </p>
      <p class="visually-hidden" role="status">
        {said}
      </p>
    </>
  );
}

function kindOf({ task }: AssignmentItem, catalogue: Catalogue): string {
  if (task.kind === 'drill') return 'generated';
  if (task.kind === 'own') return 'routing task of your own';
  const found = courseTask(catalogue, task);
  if (!found) return 'this course has no such task';
  const isOlder = 'revision' in found.task && found.task.revision !== task.revision;
  const kind = KIND_WORDS[found.kind] ?? found.kind;
  return isOlder ? `${kind}; changed since you chose it` : kind;
}
