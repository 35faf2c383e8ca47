import type { Gradebook } from '../../class/gradebook.ts';
import { itemTable } from '../../class/item-table.ts';
import { titleIn } from '../../class/remarks.ts';
import { shareText } from '../../text/index.ts';

/** A row for each item: how the class did. */
export function ItemTable({ book }: { book: Gradebook }) {
  return (
    <section class="scroll-x" tabIndex={0} aria-label="The class by task">
      <table class="marks">
        <thead>
          <tr>
            <th scope="col">Task</th>
            <th scope="col">Weight</th>
            <th scope="col">Passed by</th>
            <th scope="col">Mean mark</th>
            <th scope="col">Without a mark</th>
          </tr>
        </thead>
        <tbody>
          {itemTable(book).map(({ id, weight, passed, learners, share, unmarked }) => (
            <tr key={id}>
              <th scope="row">{titleIn(book, id)}</th>
              <td>{weight}</td>
              <td>
                {passed} of {learners}
              </td>
              <td>{shareText(share)}</td>
              <td>{unmarked}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
