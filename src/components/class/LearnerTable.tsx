import type { Gradebook } from '../../class/gradebook.ts';
import { noMarkText, resultWord } from '../../text/index.ts';
import { ShareText } from './ShareText.tsx';

/** A row for each learner: the mark, and what came of each item. */
export function LearnerTable({ book: { rows, words } }: { book: Gradebook }) {
  return (
    <section class="scroll-x scroll-long" tabIndex={0} aria-label="Marks by learner">
      <table class="marks">
        <thead>
          <tr>
            <th scope="col">Learner</th>
            <th scope="col">Result</th>
            <th scope="col">Mark</th>
            {words.map(({ id, title }) => (
              <th key={id} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ learner, name, passed, share, claimed, items }) => (
            <tr key={learner}>
              <th scope="row">
                {learner}
                {name && <span class="learner-name">{name}</span>}
              </th>
              <td class={passed ? 'result-passed' : 'result-not-yet'}>{resultWord(passed)}</td>
              <td>
                <ShareText share={share} claimed={claimed} />
              </td>
              {items.map((item) => (
                <td key={item.id}>
                  {item.noMark && <span class="no-mark">{noMarkText(item.noMark)}</span>}
                  {(!item.noMark || item.claimed !== undefined) && (
                    <ShareText share={item.share} claimed={item.claimed} />
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
