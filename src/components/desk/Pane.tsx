import type { ComponentChildren } from 'preact';
import type { Drawing } from '../../drawing/drawing.ts';
import { GUTTER } from '../../drawing/lay-out.ts';

interface Props {
  drawing: Drawing;
  children: ComponentChildren;
}

/**
 * One of the panes that a drawing is made of. They lie on one another, all of the same size, and each is painted by
 * itself: what changes on one leaves all others as they are.
 */
export const Pane = ({ drawing: { width, top, height }, children }: Props) => (
  <svg
    viewBox={`${GUTTER} ${top} ${width - GUTTER} ${height - top}`}
    width={width - GUTTER}
    height={height - top}
    aria-hidden="true"
  >
    {children}
  </svg>
);
