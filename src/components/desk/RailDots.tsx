import type { RailDot } from '../../drawing/room-drawing.ts';

/** Dots on rails that a wire comes to or hangs from; with a letter where it is one side of two. */
export const RailDots = ({ dots, kind }: { dots: readonly RailDot[]; kind: 'goal' | 'cord' }) => (
  <>
    {dots.map(({ at: { x, y }, side }) => (
      <g key={`${side} ${y}`}>
        <circle class={`rail-dot rail-dot-${kind}`} cx={x} cy={y} r={kind === 'goal' ? 5 : 3.5} />
        {side && (
          <text class="figure side-letter" x={kind === 'goal' ? x - 14 : x + 7} y={y - 1}>
            {side.toUpperCase()}
          </text>
        )}
      </g>
    ))}
  </>
);
