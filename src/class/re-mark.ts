import type { Gradebook } from './gradebook.ts';

/** How a learner's mark changed. */
export interface ReMark {
  readonly learner: string;
  readonly before: ReMarkedShare;
  readonly after: ReMarkedShare;
  /** The items whose marks changed. Nothing before or after: the item was not, or is no longer, asked. */
  readonly items: readonly {
    readonly id: string;
    readonly before: number | undefined;
    readonly after: number | undefined;
  }[];
}

interface ReMarkedShare {
  readonly share: number;
  readonly passed: boolean;
}

/** Shares nearer than this are the same one, rounded. */
const ROUNDING = 1e-9;

/**
 * What a correction of the assignment, or of the course, did to the marks: those learners whose mark, or the
 * mark of some item, is not what it was. Who is in one of the books only is not compared.
 */
export function reMarks(before: Gradebook, after: Gradebook): ReMark[] {
  const old = new Map(before.rows.map((row) => [row.learner, row]));
  return after.rows.flatMap((row): ReMark[] => {
    const was = old.get(row.learner);
    if (!was) return [];
    const shares = new Map(was.items.map(({ id, share }) => [id, share]));
    const ids = new Set([...row.items, ...was.items].map(({ id }) => id));
    const items = [...ids]
      .map((id) => ({
        id,
        before: shares.get(id),
        after: row.items.find((item) => item.id === id)?.share,
      }))
      .filter(({ before: one, after: other }) => differ(one, other));
    const isSame = items.length === 0 && !differ(was.share, row.share) && was.passed === row.passed;
    if (isSame) return [];
    return [{ learner: row.learner, before: shareOf(was), after: shareOf(row), items }];
  });
}

const shareOf = ({ share, passed }: ReMarkedShare): ReMarkedShare => ({ share, passed });

const differ = (one: number | undefined, other: number | undefined): boolean =>
  one === undefined || other === undefined ? one !== other : Math.abs(one - other) > ROUNDING;
