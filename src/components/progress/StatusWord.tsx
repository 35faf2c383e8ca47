import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Word } from './exchange.ts';

interface Props {
  word: Word | undefined;
  children?: ComponentChildren;
}

/** What came of the last step, read out and brought into sight: the button may stand far below. */
export function StatusWord({ word, children }: Props) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (word) place.current?.scrollIntoView({ block: 'nearest' });
  }, [word]);
  return (
    <div ref={place} class="kept-status">
      <div role="status">
        {word && <p class={word.problems ? 'problem' : 'progress-word'}>{word.said}</p>}
        {word?.problems && (
          <ul class="problem">
            {word.problems.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </div>
      {children}
    </div>
  );
}
