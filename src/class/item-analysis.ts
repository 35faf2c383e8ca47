import type { GradedItem } from './grade-item.ts';
import type { Gradebook } from './gradebook.ts';
import { difficulty, discrimination, FEWEST_LEARNERS, reliability } from './item-statistics.ts';

/** What most of those who failed an item have in common. */
export type CommonMiss =
  | { readonly code: 'option'; readonly id: string; readonly count: number }
  | { readonly code: 'part'; readonly id: string; readonly count: number };

/** What the answers of a class say of an item. */
export interface AnalysedItem {
  readonly id: string;
  /** Mean share, from 0 to 1: the higher, the easier. */
  readonly difficulty: number;
  /** See {@link discrimination}; nothing when everybody scored the same. */
  readonly discrimination: number | undefined;
  readonly commonMiss: CommonMiss | undefined;
  /** Median time that the item was open, in milliseconds, as hand-ins say. */
  readonly spentMs: number;
}

export interface Analysis {
  readonly items: readonly AnalysedItem[];
  /** See {@link reliability}. */
  readonly reliability: number | undefined;
}

/** The item analysis of a class; or how few learners there are, which is too few to say anything. */
export function analyse({
  assignment,
  rows,
}: Gradebook): Analysis | { readonly learners: number; readonly fewest: number } {
  if (rows.length < FEWEST_LEARNERS) return { learners: rows.length, fewest: FEWEST_LEARNERS };
  const scores = rows.map(({ items }) => items.map(({ share }) => share));
  return {
    reliability: reliability(scores),
    items: assignment.items.map(({ id }, index) => {
      const items = rows.flatMap((row) => row.items[index] ?? []);
      return {
        id,
        difficulty: difficulty(scores, index),
        discrimination: discrimination(scores, index),
        commonMiss: commonMiss(items),
        spentMs: median(items.map(({ spentMs }) => spentMs)),
      };
    }),
  };
}

/** The wrong option, or else the failed part, that most learners share; of those alike the first by id. */
function commonMiss(items: readonly GradedItem[]): CommonMiss | undefined {
  const failed = items.filter(({ passed }) => !passed);
  const options = failed.flatMap(({ option }) => option ?? []);
  if (options.length > 0) return { code: 'option', ...mostCommon(options) };
  const parts = failed.flatMap((item) =>
    item.parts.filter(({ passed }) => !passed).map(({ id }) => id),
  );
  return parts.length > 0 ? { code: 'part', ...mostCommon(parts) } : undefined;
}

/** @param ids at least one. */
function mostCommon(ids: readonly string[]): { readonly id: string; readonly count: number } {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  const [[id, count] = ['', 0]] = [...counts].sort(
    ([one, first], [other, second]) => second - first || (one < other ? -1 : 1),
  );
  return { id, count };
}

/** The middle value, or the mean of the two in the middle; 0 of none. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  const half = sorted.length / 2;
  const [low = 0, high = low] = [sorted[Math.ceil(half) - 1], sorted[Math.floor(half)]];
  return (low + high) / 2;
}
