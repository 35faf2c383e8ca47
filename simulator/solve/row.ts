/**
 * What stands at a stage: the voltage ratio of each independent signal here to that signal where it
 * was born. Sparse, by column; a column is a recorded signal or the output of a decorrelator.
 */
export interface Row {
  /** Columns, each once. */
  readonly columns: readonly number[];
  /** Ratios, in the order of the columns. */
  readonly ratios: readonly number[];
}

export const SILENT: Row = { columns: [], ratios: [] };

export const soleColumn = (column: number): Row => ({ columns: [column], ratios: [1] });

export const scale = ({ columns, ratios }: Row, ratio: number): Row => ({
  columns,
  ratios: ratios.map((one) => one * ratio),
});

/** A row and the ratio that it comes through. */
export interface Term {
  readonly row: Row;
  readonly ratio: number;
}

/** The sum of some rows, each through its ratio: the same signal by several ways adds in voltage. */
export function combine(terms: readonly Term[]): Row {
  const [first, ...others] = terms.filter(
    ({ row, ratio }) => ratio !== 0 && row.columns.length > 0,
  );
  if (!first) return SILENT;
  if (others.length === 0) return scale(first.row, first.ratio);
  const sums = new Map<number, number>();
  for (const { row, ratio } of [first, ...others]) {
    row.columns.forEach((column, index) => {
      sums.set(column, (sums.get(column) ?? 0) + ratio * (row.ratios[index] ?? 0));
    });
  }
  return { columns: [...sums.keys()], ratios: [...sums.values()] };
}
