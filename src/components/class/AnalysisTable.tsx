import type { Gradebook } from '../../class/gradebook.ts';
import { analyse, type CommonMiss } from '../../class/item-analysis.ts';
import { partTextIn } from '../../class/item-words.ts';
import { titleIn } from '../../class/remarks.ts';
import { counted, difficultyWord, discriminationWord, spentText } from '../../text/index.ts';

/** The item analysis; below 20 learners, why there is none. */
export function AnalysisTable({ book }: { book: Gradebook }) {
  const analysis = analyse(book);
  if (!('items' in analysis)) {
    return (
      <p>
        Hidden: {counted(analysis.learners, 'learner')} handed in, and with fewer than{' '}
        {analysis.fewest} chance says more than the tasks do.
      </p>
    );
  }
  return (
    <>
      <section class="scroll-x" tabIndex={0} aria-label="Item analysis">
        <table class="marks">
          <thead>
            <tr>
              <th scope="col">Task</th>
              <th scope="col">Difficulty</th>
              <th scope="col">Discrimination</th>
              <th scope="col">Most common miss</th>
              <th scope="col">Median time</th>
            </tr>
          </thead>
          <tbody>
            {analysis.items.map(({ id, difficulty, discrimination, commonMiss, spentMs }) => (
              <tr key={id}>
                <th scope="row">{titleIn(book, id)}</th>
                <td>
                  {difficulty.toFixed(2)} {difficultyWord(difficulty)}
                </td>
                <td>
                  {discrimination === undefined ? '' : figure(discrimination)}{' '}
                  {discriminationWord(discrimination)}
                </td>
                <td class="words">{commonMiss ? missText(book, id, commonMiss) : 'none'}</td>
                <td>{spentText(spentMs)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="prose">
        {analysis.reliability === undefined
          ? 'All have the same mark, or there is one task only: nothing can be said of how far the tasks measure one thing.'
          : `KR-20: ${figure(analysis.reliability)}. At 1 all tasks would measure one thing, at 0 each its own. Marks in part count as such, which makes it Cronbach’s alpha.`}
      </p>
      <details>
        <summary>How to read this</summary>
        <ul class="prose">
          <li>
            Difficulty is the mean mark, from 0 to 1: the higher, the easier. From 0.4 to 0.8 a task
            tells learners apart best.
          </li>
          <li>
            Discrimination is the correlation of a task with the sum of all others: whether those
            who do well elsewhere do well here. From 0.3 on it is good; below 0 there may be
            something wrong with the task.
          </li>
          <li>Times are what hand-ins say. Nobody can check them.</li>
          <li>
            The key of a question with options can be found by who reads the source of this site.
            For marks that matter, take tasks at the desk.
          </li>
        </ul>
      </details>
    </>
  );
}

/** With a minus that is one. */
const figure = (value: number): string => value.toFixed(2).replace('-', '−');

function missText(book: Gradebook, item: string, { code, id, count }: CommonMiss): string {
  const words = book.words.find((one) => one.id === item);
  const said = (code === 'option' && words?.options[id]) || partTextIn(words, id);
  return `${said} (${counted(count, 'learner')})`;
}
