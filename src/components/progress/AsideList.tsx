import type { NumberedAside } from '../../progress/take-in.ts';
import { momentText } from '../../text/index.ts';

interface Props {
  aside: readonly NumberedAside[];
  onExport: (record: NumberedAside) => void;
  onRemove: (record: NumberedAside) => void;
}

/** What could not be read, with the reason. It stays until a person removes it. */
export function AsideList({ aside, onExport, onRemove }: Props) {
  return (
    <>
      <p class="prose">
        These could not be read, and were put aside as they are. Everything else works without them.
        A newer version of this page may read them again by itself.
      </p>
      <ul class="aside">
        {aside.map((record) => (
          <li key={record.number} class="problem">
            <p>
              <strong>{record.name}</strong>, put aside on {momentText(record.at)}.
            </p>
            <ul>
              {record.problems.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <div class="buttons">
              <button
                type="button"
                aria-label={`Export it: ${record.name}`}
                onClick={() => onExport(record)}
              >
                Export it
              </button>
              <button
                type="button"
                aria-label={`Remove it for good: ${record.name}`}
                onClick={() => onRemove(record)}
              >
                Remove it for good
              </button>
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}
