import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';

interface Props {
  /** What it is for, as a name. */
  label: string;
  /** What stands on its button. */
  choose: string;
  accept: string;
  isMultiple?: boolean;
  onFiles: (files: readonly File[]) => void;
  children: ComponentChildren;
}

/** Where files are dropped, or chosen with a button. */
export function DropZone({ label, choose, accept, isMultiple = false, onFiles, children }: Props) {
  const picker = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  const take = (files: FileList | null | undefined) => {
    if (files && files.length > 0) onFiles([...files].slice(0, isMultiple ? files.length : 1));
  };
  return (
    <section
      class={isOver ? 'drop drop-over' : 'drop'}
      aria-label={label}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer?.files);
      }}
    >
      <button type="button" onClick={() => picker.current?.click()}>
        {choose}
      </button>
      <input
        ref={picker}
        type="file"
        accept={accept}
        multiple={isMultiple}
        hidden
        aria-label={label}
        onChange={({ currentTarget }) => {
          take(currentTarget.files);
          currentTarget.value = '';
        }}
      />
      {children}
    </section>
  );
}
