import { canonicalText } from './canonical-text.ts';
import type { Gradebook } from './gradebook.ts';
import type { Pointer } from './notes.ts';

/** All controls at their defaults, which many who are at a loss come to by themselves. */
const UNTOUCHED = canonicalText({ kind: 'board', board: {} });

/** What is alike that chance would hardly make so. */
export function pointersIn({ assignment, rows, superseded }: Gradebook): Pointer[] {
  const answers = assignment.items.flatMap(({ id }, index): Pointer[] => {
    const given = rows.flatMap(({ learner, items }) => {
      const { answer, seed, passed } = items[index] ?? {};
      if (answer === undefined || seed === undefined || answer === UNTOUCHED) return [];
      return [{ learner, answer, seed, passed }];
    });
    return grouped(given, ({ answer }) => answer)
      .filter((alike) => new Set(alike.map(({ seed }) => seed)).size > 1)
      .filter((alike) => alike.some(({ passed }) => !passed))
      .map((alike) => ({
        code: 'same-answer',
        item: id,
        learners: alike.map(({ learner }) => learner),
      }));
  });
  const logs = grouped(
    rows.filter(({ logDigest }) => logDigest !== undefined),
    ({ logDigest }) => logDigest,
  ).map((alike): Pointer => ({ code: 'same-log', learners: alike.map(({ learner }) => learner) }));
  const names = grouped([...rows, ...superseded], ({ learner }) => learner).flatMap(
    (ofOne): Pointer[] => {
      const different = new Set(ofOne.flatMap(({ name }) => name ?? []));
      const [{ learner } = { learner: '' }] = ofOne;
      return different.size > 1 ? [{ code: 'names', learner, names: [...different] }] : [];
    },
  );
  return [...answers, ...logs, ...names];
}

/** Those that have a key in common with another one, in groups. */
function grouped<T>(list: readonly T[], keyOf: (one: T) => string | undefined): T[][] {
  const groups = new Map<string | undefined, T[]>();
  for (const one of list) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one]);
  return [...groups.values()].filter(({ length }) => length > 1);
}
