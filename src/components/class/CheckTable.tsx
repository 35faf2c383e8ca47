import type { Gradebook } from '../../class/gradebook.ts';
import { itemTable } from '../../class/item-table.ts';
import { partTextIn } from '../../class/item-words.ts';
import { titleIn } from '../../class/remarks.ts';

/** A row for each check of each item: who met it. The items head their groups. */
export function CheckTable({ book }: { book: Gradebook }) {
  return (
    <section class="scroll-x" tabIndex={0} aria-label="The class by check">
      <table class="marks">
        <thead>
          <tr>
            <th scope="col">Check</th>
            <th scope="col">Weight</th>
            <th scope="col">Met by</th>
          </tr>
        </thead>
        {itemTable(book).map(({ id, parts }, index) => (
          <tbody key={id}>
            <tr>
              <th scope="rowgroup" colSpan={3} class="group">
                {titleIn(book, id)}
              </th>
            </tr>
            {parts.map((part) => (
              <tr key={part.id}>
                <th scope="row" class="check">
                  {partTextIn(book.words[index], part.id)}
                </th>
                <td>{part.weight}</td>
                <td>
                  {part.passed} of {part.learners}
                </td>
              </tr>
            ))}
            {parts.length === 0 && (
              <tr>
                <td colSpan={3}>Nobody gave an answer that can be read.</td>
              </tr>
            )}
          </tbody>
        ))}
      </table>
    </section>
  );
}
