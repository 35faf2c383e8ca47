import { useState } from 'preact/hooks';
import type { Gradebook } from '../../class/gradebook.ts';
import { LearnerReport } from './LearnerReport.tsx';

const EVERYBODY = '*';

/** Reports of learners, one at a time or all of them, to be looked at or printed. */
export function Reports({ book }: { book: Gradebook }) {
  const [chosen, setChosen] = useState('');
  const id = 'report-of';
  const shown = book.rows.filter(({ learner }) => chosen === EVERYBODY || learner === chosen);
  return (
    <section class="reports" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`} class="screen-only">
        Reports
      </h3>
      <div class="buttons screen-only">
        <label for={id}>Report of</label>
        <select
          id={id}
          value={chosen}
          onChange={({ currentTarget }) => setChosen(currentTarget.value)}
        >
          <option value="">nobody</option>
          <option value={EVERYBODY}>everybody, a page each</option>
          {book.rows.map(({ learner, name }) => (
            <option key={learner} value={learner}>
              {name ? `${learner}, ${name}` : learner}
            </option>
          ))}
        </select>
        {shown.length > 0 && (
          <button type="button" onClick={() => window.print()}>
            Print
          </button>
        )}
      </div>
      {shown.map((row) => (
        <LearnerReport key={row.learner} book={book} row={row} />
      ))}
    </section>
  );
}
