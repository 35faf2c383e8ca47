const MOST_NAMES = 3;
/** A longer name is cut before it is compared: comparing takes time with its length. */
const MOST_LETTERS = 160;

/** The known names that are nearest to one that is not known, the nearest first. */
export function nearestNames(name: string, known: Iterable<string>): string[] {
  const sought = name.slice(0, MOST_LETTERS);
  return [...known]
    .map((one) => ({ one, distance: editDistance(sought, one) }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, MOST_NAMES)
    .map(({ one }) => one);
}

/** How many letters one has to insert, remove or change to get from one name to another (Levenshtein). */
function editDistance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let line = 1; line <= from.length; line += 1) {
    const next = [line];
    for (let column = 1; column <= to.length; column += 1) {
      const change = from[line - 1] === to[column - 1] ? 0 : 1;
      next.push(
        Math.min(
          (row[column] ?? 0) + 1,
          (next[column - 1] ?? 0) + 1,
          (row[column - 1] ?? 0) + change,
        ),
      );
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
