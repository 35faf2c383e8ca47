import type { Gradebook } from './gradebook.ts';

/** How a class did in one item. */
export interface ItemRow {
  readonly id: string;
  readonly weight: number;
  readonly learners: number;
  readonly passed: number;
  /** How many gave no answer, or none that can be read. */
  readonly unmarked: number;
  /** Mean of the shares, from 0 to 1; 0 without learners. */
  readonly share: number;
  readonly parts: readonly PartRow[];
}

/** How a class did in one part of an item. */
export interface PartRow {
  readonly id: string;
  readonly weight: number;
  /** How many met it. Those without a mark did not. */
  readonly passed: number;
  readonly learners: number;
}

/** The items of an assignment, and the parts of each, over all learners. */
export const itemTable = ({ assignment, rows }: Gradebook): ItemRow[] =>
  assignment.items.map(({ id, weight }, index): ItemRow => {
    const items = rows.flatMap((row) => row.items[index] ?? []);
    const parts = new Map<string, PartRow>();
    for (const part of items.flatMap((item) => item.parts)) {
      const passed = (parts.get(part.id)?.passed ?? 0) + (part.passed ? 1 : 0);
      parts.set(part.id, { id: part.id, weight: part.weight, passed, learners: rows.length });
    }
    return {
      id,
      weight,
      learners: rows.length,
      passed: items.filter(({ passed }) => passed).length,
      unmarked: items.filter(({ noMark }) => noMark).length,
      share: items.reduce((sum, { share }) => sum + share, 0) / Math.max(1, items.length),
      parts: [...parts.values()],
    };
  });
