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

/**
 * Two arrivals that leave less than this share of one of them cancel: what is left is rounding. It lies
 * at −240 dB, far below what any circuit leaves.
 */
const CANCELLED = 1e-12;

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
      const before = sums.get(column) ?? 0;
      const added = ratio * (row.ratios[index] ?? 0);
      const sum = before + added;
      const isDust = Math.abs(sum) < CANCELLED * Math.abs(added);
      sums.set(column, isDust ? 0 : sum);
    });
  }
  return { columns: [...sums.keys()], ratios: [...sums.values()] };
}
