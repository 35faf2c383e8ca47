/** What a cell of a table can hold. A number is written as it is; nothing is an empty cell. */
export type Cell = string | number | undefined;

/**
 * A table as CSV: RFC 4180, lines end with CR LF, the first row is the header.
 *
 * A text that a spreadsheet could take for a formula gets an apostrophe before it (OWASP ASVS 5, 1.2.10).
 * Numbers are not touched, though they may begin with a minus.
 *
 * @throws RangeError for a number that is not finite.
 */
export const toCsv = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

function cellText(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') {
    if (Number.isFinite(cell)) return String(cell);
    throw new RangeError(`Expected a finite number for a cell, found ${cell}.`);
  }
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return QUOTED.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Begins like a formula, or with a character that a spreadsheet may pass over before one. */
const FORMULA = /^[\s\0]*[=+\-@\t\0\r]/;
const QUOTED = /[",\r\n\t\0]|^ | $/;
