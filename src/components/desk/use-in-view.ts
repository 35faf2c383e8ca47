import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Owner } from '../../../simulator/index.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { GUTTER } from '../../drawing/lay-out.ts';

/** Half the width of a column with its name. */
const HALF = 39;

/** Scrolls a drawing that is wider than its box sideways to the column of what is open, when that is out of sight. */
export function useInView(
  box: RefObject<HTMLElement>,
  drawing: Drawing,
  selected: Owner | undefined,
): void {
  useEffect(() => {
    const column = drawing.columns.find(({ owner }) => owner === selected);
    if (!box.current || !column) return;
    const { scrollLeft, clientWidth } = box.current;
    const isSeen =
      column.x - HALF >= scrollLeft + GUTTER && column.x + HALF <= scrollLeft + clientWidth;
    if (!isSeen) box.current.scrollTo({ left: column.x - (GUTTER + clientWidth) / 2 });
  }, [box, drawing, selected]);
}
