import type { ConceptStanding, Standing } from '../../progress/knowledge.ts';
import { dueText, STANDING_MEANINGS, STANDING_WORDS } from '../../text/index.ts';
import { StandingWord } from './StandingWord.tsx';

/** What to look at first comes first. */
const ORDER: readonly Standing[] = ['due', 'shaky', 'begun', 'known', 'new'];

interface Props {
  concepts: readonly ConceptStanding[];
  now: number;
}

/** How it stands with each concept, and when it comes back. */
export function ConceptTable({ concepts, now }: Props) {
  const sorted = concepts.toSorted((a, b) => ORDER.indexOf(a.standing) - ORDER.indexOf(b.standing));
  return (
    <>
      <section class="scroll-x" tabIndex={0} aria-label="Concepts">
        <table>
          <thead>
            <tr>
              <th scope="col">Concept</th>
              <th scope="col">How it stands</th>
              <th scope="col">Tasks passed</th>
              <th scope="col">Comes back</th>
            </tr>
          </thead>
          <tbody>
            {sorted.map(({ concept, term, standing, dueAt, passed, of }) => (
              <tr key={concept}>
                <th scope="row">
                  <a href={`/glossary/#${concept}`}>{term}</a>
                </th>
                <td>
                  <StandingWord standing={standing} />
                </td>
                <td>
                  {passed} of {of}
                </td>
                <td>{standing === 'new' || standing === 'begun' ? '' : dueText(dueAt, now)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <details>
        <summary>What these words mean</summary>
        <dl class="standings">
          {ORDER.map((standing) => (
            <div key={standing}>
              <dt>{STANDING_WORDS[standing]}</dt>
              <dd>{STANDING_MEANINGS[standing]}</dd>
            </div>
          ))}
        </dl>
      </details>
    </>
  );
}
