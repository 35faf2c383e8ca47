import type { Gradebook } from '../../class/gradebook.ts';
import { reMarks } from '../../class/re-mark.ts';
import { titleIn } from '../../class/remarks.ts';
import { listed, resultWord, shareText } from '../../text/index.ts';

interface Props {
  before: Gradebook;
  after: Gradebook;
}

/** Who has another mark since the assignment was corrected: old beside new. */
export function ReMarkTable({ before, after }: Props) {
  const marks = reMarks(before, after);
  const textOf = (share: number | undefined) =>
    share === undefined ? 'not asked' : shareText(share);
  const titleOf = (id: string) =>
    after.words.some((one) => one.id === id) ? titleIn(after, id) : titleIn(before, id);
  return (
    <section aria-labelledby="re-marked">
      <h3 id="re-marked">Marked again</h3>
      {marks.length === 0 ? (
        <p>The correction changes nobody’s mark.</p>
      ) : (
        <section class="scroll-x scroll-long" tabIndex={0} aria-label="Marks before and after">
          <table class="marks">
            <thead>
              <tr>
                <th scope="col">Learner</th>
                <th scope="col">Before</th>
                <th scope="col">Now</th>
                <th scope="col">Tasks that changed</th>
              </tr>
            </thead>
            <tbody>
              {marks.map(({ learner, before: old, after: now, items }) => (
                <tr key={learner}>
                  <th scope="row">{learner}</th>
                  <td>
                    {shareText(old.share)}, {resultWord(old.passed)}
                  </td>
                  <td>
                    {shareText(now.share)}, {resultWord(now.passed)}
                  </td>
                  <td>
                    {items.length === 0
                      ? 'none: only what they weigh'
                      : listed(
                          items.map(
                            (item) =>
                              `${titleOf(item.id)} (${textOf(item.before)}, now ${textOf(item.after)})`,
                          ),
                        )}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </section>
  );
}
