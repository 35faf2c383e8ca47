import { useLayoutEffect, useRef } from 'preact/hooks';

interface Props {
  done: number;
  of: number;
  onStop: () => void;
  /** Takes the focus when this goes while it has it. */
  focusNext: () => void;
}

/** How far marking is, and a way to end it. */
export function GradingBar({ done, of, onStop, focusNext }: Props) {
  const stop = useRef<HTMLButtonElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what takes it stays the same.
  useLayoutEffect(() => {
    const button = stop.current;
    return () => {
      if (document.activeElement === button) focusNext();
    };
  }, []);
  return (
    <p class="grading-bar">
      <label>
        Marking{' '}
        <progress max={Math.max(1, of)} value={done}>
          {done} of {of}
        </progress>
      </label>
      <span>
        {done} of {of}
      </span>
      <button ref={stop} type="button" onClick={onStop}>
        Stop
      </button>
    </p>
  );
}
