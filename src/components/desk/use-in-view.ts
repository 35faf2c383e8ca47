import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Owner } from '../../../simulator/index.ts';
import { GUTTER } from '../../drawing/lay-out.ts';

/** Half the width of a column with its name. */
const HALF = 39;

/** Scrolls a drawing that is wider than its box sideways to the column of what is open, when that is out of sight. */
export function useInView(
  box: RefObject<HTMLElement>,
  columns: readonly { readonly owner: Owner; readonly x: number }[],
  selected: Owner | undefined,
): void {
  const { owner, x } = columns.find((column) => column.owner === selected) ?? {};
  // What is opened is brought into sight, and what moves while it is open; an edit moves nothing.
  useEffect(() => {
    if (!box.current || owner === undefined || x === undefined) return;
    const { scrollLeft, clientWidth } = box.current;
    const isSeen = x - HALF >= scrollLeft + GUTTER && x + HALF <= scrollLeft + clientWidth;
    if (!isSeen) box.current.scrollTo({ left: x - (GUTTER + clientWidth) / 2 });
  }, [box, owner, x]);
}
