interface Props {
  done: number;
  of: number;
  onStop: () => void;
}

/** How far marking is, and a way to end it. */
export function GradingBar({ done, of, onStop }: Props) {
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
      <button type="button" onClick={onStop}>
        Stop
      </button>
    </p>
  );
}
