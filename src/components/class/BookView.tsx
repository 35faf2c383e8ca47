import type { Gradebook } from '../../class/gradebook.ts';
import { pointerRemarks, remarksOn } from '../../class/remarks.ts';
import { counted } from '../../text/index.ts';
import { AnalysisTable } from './AnalysisTable.tsx';
import { CheckTable } from './CheckTable.tsx';
import { Downloads } from './Downloads.tsx';
import { ItemTable } from './ItemTable.tsx';
import { LearnerTable } from './LearnerTable.tsx';
import { ReMarkTable } from './ReMarkTable.tsx';
import { RemarkList } from './RemarkList.tsx';
import { Reports } from './Reports.tsx';

interface Props {
  book: Gradebook;
  /** The book before the assignment was replaced. */
  before: Gradebook | undefined;
}

/** All that is in a gradebook: of learners, of items, of what is to be known. */
export function BookView({ book, before }: Props) {
  const { assignment, rows, superseded, aside } = book;
  const passed = rows.filter((row) => row.passed).length;
  return (
    <>
      <div class="book">
        <h2>{assignment.title}</h2>
        <p>
          Passed by {passed} of {counted(rows.length, 'learner')}, from {assignment.passPercent} %
          of all points on. Every answer was simulated again; what a hand-in says of itself counts
          for nothing.
        </p>
        {aside.length > 0 && (
          <section class="panel" aria-labelledby="aside">
            <h3 id="aside">Set aside: {counted(aside.length, 'file')}</h3>
            <ul>
              {aside.map(({ reason }, index) => (
                // Two files can bear the same name, and have the same fault.
                <li key={index}>{reason}</li>
              ))}
            </ul>
          </section>
        )}
        {before && <ReMarkTable before={before} after={book} />}
        {rows.length > 0 && (
          <>
            <h3>By learner</h3>
            <LearnerTable book={book} />
            <h3>By task</h3>
            <ItemTable book={book} />
            <h3>By check</h3>
            <CheckTable book={book} />
            <h3>What the answers say of the tasks</h3>
            <AnalysisTable book={book} />
          </>
        )}
        <RemarkList title="To know" remarks={remarksOn(book)} />
        <RemarkList
          title="Alike"
          about="What chance would hardly make so. It is no proof of anything: people also work side by side."
          remarks={pointerRemarks(book)}
        />
        <RemarkList
          title="Replaced"
          about="Of these learners a newer hand-in counts."
          remarks={superseded.map(({ learner, file, share }) => ({
            words: `${file}, of ${learner}: it would have come to ${Math.floor(share * 100)} %.`,
            learners: [],
          }))}
        />
        {rows.length > 0 && <Downloads book={book} />}
        <p class="book-versions">
          Marked by version <code>{book.course}</code> of the course and version {book.simulator} of
          the simulator.
        </p>
      </div>
      {rows.length > 0 && <Reports book={book} />}
    </>
  );
}
