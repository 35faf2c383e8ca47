import type { Gradebook } from '../../class/gradebook.ts';
import { CSV_DEPTHS, type CsvDepth, gradebookCsv } from '../../class/gradebook-csv.ts';
import { gradebookData } from '../../class/gradebook-json.ts';
import { handOverFile } from '../hand-over-file.ts';

const WORDS: Readonly<Record<CsvDepth, string>> = {
  learner: 'by learner',
  item: 'by learner and task',
  check: 'by learner, task and check',
};

/** Hands the gradebook over as files. */
export function Downloads({ book }: { book: Gradebook }) {
  const { id } = book.assignment;
  return (
    <section aria-labelledby="take-along" class="screen-only">
      <h3 id="take-along">Take it along</h3>
      <div class="buttons">
        {CSV_DEPTHS.map((depth) => (
          <button
            key={depth}
            type="button"
            onClick={() =>
              handOverFile(`${id}.by-${depth}.csv`, gradebookCsv(book, depth), 'text/csv')
            }
          >
            CSV {WORDS[depth]}
          </button>
        ))}
        <button
          type="button"
          onClick={() =>
            handOverFile(
              `${id}.gradebook.json`,
              `${JSON.stringify(gradebookData(book), null, 1)}\n`,
            )
          }
        >
          Everything as JSON
        </button>
      </div>
    </section>
  );
}
