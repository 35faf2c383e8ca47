import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { AnswerFormProps } from './answer-form.ts';

/** Stops to be put in order, by two buttons each: every move is told, and the focus goes along. */
export function OrderForm({ options, answer, onAnswer }: AnswerFormProps) {
  const pressed = useRef<HTMLButtonElement>();
  const [moved, setMoved] = useState<string>();
  const order = answer?.kind === 'order' ? answer.order : [];
  const textOf = (id: string) => options.find((option) => option.id === id)?.text;
  // An element that is put elsewhere may lose the focus.
  useLayoutEffect(() => {
    pressed.current?.focus();
    pressed.current = undefined;
  });
  const button = (id: string, to: number, way: 'up' | 'down') => (
    <button
      type="button"
      aria-label={`Move ${textOf(id)} ${way}`}
      aria-disabled={!(to in order)}
      onClick={({ currentTarget }) => {
        if (!(to in order)) return;
        pressed.current = currentTarget;
        setMoved(id);
        onAnswer({
          kind: 'order',
          order: order.filter((one) => one !== id).toSpliced(to, 0, id),
        });
      }}
    >
      {way === 'up' ? '↑' : '↓'}
    </button>
  );
  return (
    <>
      <ol class="stops">
        {order.map((id, at) => (
          <li key={id}>
            <span>
              <span class="stop-name">{textOf(id)}</span>
              {button(id, at - 1, 'up')}
              {button(id, at + 1, 'down')}
            </span>
          </li>
        ))}
      </ol>
      <p class="visually-hidden" role="status">
        {moved && `${textOf(moved)} is now ${order.indexOf(moved) + 1} of ${order.length}.`}
      </p>
    </>
  );
}
