import type { GradedHandIn } from '../../class/grade-hand-in.ts';
import type { GradedItem } from '../../class/grade-item.ts';
import type { Gradebook } from '../../class/gradebook.ts';
import { type ItemWords, partTextIn } from '../../class/item-words.ts';
import {
  handInNoteSentence,
  itemNoteSentence,
  momentText,
  noMarkSentence,
  resultWord,
  shareText,
} from '../../text/index.ts';

interface Props {
  book: Gradebook;
  row: GradedHandIn;
}

/** What came of one hand-in, for the learner: every task, and every check of it. */
export function LearnerReport({ book, row }: Props) {
  const { assignment, course, simulator, words } = book;
  const { learner, name, share, passed, handedInAt, items, notes } = row;
  return (
    <article class="report" aria-label={`Report of ${learner}`}>
      <h4>
        {assignment.title}: {name ? `${name} (${learner})` : learner}
      </h4>
      <p>
        <strong>
          {resultWord(passed)}: {shareText(share)}
        </strong>{' '}
        of all points; {assignment.passPercent} % are needed. Handed in on {momentText(handedInAt)},
        by the clock of the learner’s machine.
      </p>
      {notes.map((note) => (
        <p key={note.code}>{handInNoteSentence(note)}</p>
      ))}
      {items.map((item, index) => (
        <ItemReport key={item.id} item={item} words={words[index]} />
      ))}
      <p class="book-versions">
        Marked by version {course} of the course and version {simulator} of the simulator.
      </p>
    </article>
  );
}

function ItemReport({ item, words }: { item: GradedItem; words: ItemWords | undefined }) {
  return (
    <section>
      <h5>
        {words?.title ?? item.id}: {shareText(item.share)}, weight {item.weight}
      </h5>
      {item.noMark && <p>{noMarkSentence(item.noMark)}</p>}
      <ul>
        {item.parts.map(({ id, passed }) => (
          <li key={id}>
            <strong>{resultWord(passed)}:</strong> {item.asked?.[id] ?? partTextIn(words, id)}
          </li>
        ))}
      </ul>
      {item.notes.map((note) => (
        <p key={note.code}>{itemNoteSentence(note)}</p>
      ))}
    </section>
  );
}
