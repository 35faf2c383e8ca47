import type { Point } from '../../drawing/drawing.ts';

interface Props {
  word: string;
  at: Point;
  /** Hollow when off, full when on; `cut` is broken off from what lies above it. */
  state: 'on' | 'off' | 'cut';
  width?: number;
}

const HEIGHT = 18;

/** A word in a box on a wire: a switch, or what is chosen. */
export const WordBox = ({ word, at: { x, y }, state, width = 38 }: Props) => (
  <>
    <rect
      class={`word-box word-box-${state}`}
      x={x - width / 2}
      y={y - HEIGHT / 2}
      width={width}
      height={HEIGHT}
      rx={3}
    />
    <text class={`box-word box-word-${state}`} x={x} y={y + 4}>
      {word}
    </text>
  </>
);
