import { useEffect, useRef } from 'preact/hooks';

/** What is about to be forgotten: ids of tasks, or everything. */
export interface Forgetting {
  readonly what: readonly string[] | 'everything';
  /** As it stands in a sentence: `the lesson Sends`. */
  readonly name: string;
}

interface Props {
  forgetting: Forgetting;
  onExport: () => void;
  onForget: () => void;
  onKeep: () => void;
}

/** Asks before something is forgotten. */
export function ForgetDialog({ forgetting: { name, what }, onExport, onForget, onKeep }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} class="panel" aria-labelledby="forget-title" onClose={onKeep}>
      <h2 id="forget-title">Reset {name}?</h2>
      <p>
        {what === 'everything'
          ? 'All attempts, hints, reviews, half-done tasks and rooms of the bench are forgotten.'
          : 'Attempts, hints and what is half done are forgotten, and what was learned by it is not asked again.'}{' '}
        You can undo it as long as this page is open.
      </p>
      <div class="buttons">
        <button type="button" class="button-main" onClick={onKeep}>
          Keep it
        </button>
        <button type="button" onClick={onExport}>
          Export everything first
        </button>
        <button type="button" onClick={onForget}>
          Reset
        </button>
      </div>
    </dialog>
  );
}
