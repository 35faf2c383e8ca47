import { addTransfers, cascade, isSilent, type Transfer } from './transfer.ts';

/**
 * What stands at a stage: what became of each independent signal from where it was born to here. Sparse,
 * by column; a column is a recorded signal or the output of a decorrelator.
 */
export interface Row {
  /** Columns, each once. */
  readonly columns: readonly number[];
  /** Transfers, in the order of the columns. */
  readonly transfers: readonly Transfer[];
}

export const SILENT: Row = { columns: [], transfers: [] };

export const soleColumn = (column: number): Row => ({ columns: [column], transfers: [1] });

/** A row through a transfer. Most go through 1, and then it is the row itself. */
export const scale = (row: Row, by: Transfer): Row =>
  by === 1
    ? row
    : { columns: row.columns, transfers: row.transfers.map((one) => cascade(one, by)) };

/** A row and what it comes through. */
export interface Term {
  readonly row: Row;
  readonly ratio: Transfer;
}

/** The sum of some rows, each through its transfer: the same signal by several ways adds in voltage. */
export function combine(terms: readonly Term[]): Row {
  const open = terms.filter(({ row, ratio }) => !isSilent(ratio) && row.columns.length > 0);
  const [first] = open;
  if (!first) return SILENT;
  if (open.length === 1) return scale(first.row, first.ratio);
  const sums = new Map<number, Transfer>();
  for (const { row, ratio } of open) {
    row.columns.forEach((column, index) => {
      const added = cascade(ratio, row.transfers[index] ?? 0);
      sums.set(column, addTransfers(sums.get(column) ?? 0, added));
    });
  }
  return { columns: [...sums.keys()], transfers: [...sums.values()] };
}
