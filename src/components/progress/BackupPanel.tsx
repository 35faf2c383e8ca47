import { useEffect, useRef, useState } from 'preact/hooks';
import { askToStay, willStay } from '../../progress/browser-memory.ts';
import { momentText } from '../../text/index.ts';

interface Props {
  savedAt: number | undefined;
  onExport: () => void;
  onImport: (file: File) => void;
}

/** Saves everything as a file, and takes such a file in; and what the browser says of how long it keeps things. */
export function BackupPanel({ savedAt, onExport, onImport }: Props) {
  const picker = useRef<HTMLInputElement>(null);
  const [stays, setStays] = useState<boolean>();
  const [isOver, setOver] = useState(false);
  useEffect(() => void willStay().then(setStays), []);
  const takeFirst = (files: FileList | null | undefined) => {
    const [file] = files ?? [];
    if (file) onImport(file);
  };
  return (
    <>
      <p class="prose">
        {savedAt === undefined
          ? 'Nothing was exported yet.'
          : `The last export was on ${momentText(savedAt)}.`}{' '}
        {stays === true
          ? 'This browser has promised to keep your progress until you remove it yourself.'
          : 'Some browsers drop what a page keeps after a week without a visit: export after each lesson.'}
      </p>
      <section
        class={isOver ? 'drop drop-over' : 'drop'}
        aria-label="Export and import"
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          takeFirst(event.dataTransfer?.files);
        }}
      >
        <div class="buttons">
          <button type="button" class="button-main" onClick={onExport}>
            Export everything
          </button>
          <button type="button" onClick={() => picker.current?.click()}>
            Import a backup…
          </button>
          {stays === false && (
            <button type="button" onClick={() => void askToStay().then(setStays)}>
              Ask the browser to keep it
            </button>
          )}
        </div>
        <input
          ref={picker}
          type="file"
          accept=".json"
          hidden
          aria-label="Backup file"
          onChange={({ currentTarget }) => {
            takeFirst(currentTarget.files);
            currentTarget.value = '';
          }}
        />
        <p>
          A backup can be dropped here as well. It is merged with what is kept: of each task the
          best of both stays.
        </p>
      </section>
    </>
  );
}
