// Control characters and the marks that turn the direction of writing: in a name from a file they could
// move the cursor, or make a line look like another one.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
const UNSEEN = /[\u0000-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069\ufeff]/g;

const escaped = (text: string): string =>
  text.replace(UNSEEN, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** One line for a terminal, with everything that would not be seen written out as `\u001b`. */
export const visible = (line: string): string => escaped(line);

/** Data as JSON: silence is `"-inf"`, endless headroom `"inf"`, what is unknown is null. Nothing in it acts on a terminal. */
export function toJson(data: unknown): string {
  const text = JSON.stringify(
    data,
    (_key, value: unknown) => {
      if (value === undefined) return null;
      if (value === Infinity) return 'inf';
      return value === -Infinity ? '-inf' : value;
    },
    2,
  );
  // JSON.stringify has escaped what is below a space. Newlines that are left are its own.
  return text
    .split('\n')
    .map((line) => escaped(line))
    .join('\n');
}

/** Rows as lines with aligned columns: the first ones to the left, from `rightFrom` on to the right. */
export function tableLines(
  rows: readonly (readonly string[])[],
  rightFrom = Number.POSITIVE_INFINITY,
): string[] {
  const cells = rows.map((row) => row.map(escaped));
  const widths = (cells[0] ?? []).map((_, column) =>
    Math.max(...cells.map((row) => row[column]?.length ?? 0)),
  );
  return cells.map((row) =>
    row
      .map((cell, column) =>
        column < rightFrom ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('  ')
      .trimEnd(),
  );
}
