import type { Drawing } from '../../drawing/drawing.ts';
import { GUTTER } from '../../drawing/lay-out.ts';
import { madeWhenChanged } from './drawn-when-changed.ts';
import type { Hands } from './scene.ts';

interface Props {
  drawing: Drawing;
  hands: Hands | undefined;
}

/** Names of rows and rails, at the left edge: they stay there while a wide desk is scrolled past them. */
export const NamesView = madeWhenChanged(
  ({ drawing: { top, height, rows, rails }, hands }: Props) => (
    <svg
      class="desk-names"
      viewBox={`0 ${top} ${GUTTER} ${height - top}`}
      width={GUTTER}
      height={height - top}
      aria-hidden="true"
    >
      {rows.map(({ text, y }) => (
        <text key={`${text} ${y}`} class="row-name" x={58} y={y + 4}>
          {text}
        </text>
      ))}
      {rails.map(({ owner, role, label, y, master }) => (
        <g key={`${owner} ${y}`}>
          <text class={role === 'line' ? 'row-name' : 'rail-name'} x={58} y={y + 4}>
            {label}
          </text>
          {hands && master && (
            <rect
              class="hit"
              x={2}
              y={y - 14}
              width={58}
              height={28}
              onClick={() => hands.open(owner)}
            />
          )}
        </g>
      ))}
    </svg>
  ),
);
