import { ownerOf } from '../../../simulator/index.ts';
import type { GoalMark } from '../../drawing/room-drawing.ts';
import { RailDots } from './RailDots.tsx';
import type { Hands } from './scene.ts';

/** Where a channel of the box is assigned: dots on the rails, or an open end where it goes nowhere. */
export function GoalSymbol({
  goal: { address, dots, end },
  hands,
}: {
  goal: GoalMark;
  hands: Hands | undefined;
}) {
  const places = dots.length > 0 ? dots.map(({ at }) => at) : [end];
  return (
    <g>
      {dots.length > 0 ? (
        <RailDots dots={dots} kind="goal" />
      ) : (
        <path class="stage stage-off" d={`M${end.x - 6} ${end.y - 8}h12l-6 8z`} />
      )}
      {hands &&
        places.map(({ x, y }) => (
          <rect
            key={y}
            class="hit"
            x={x - 14}
            y={y - 8}
            width={28}
            height={16}
            onClick={() => hands.open(ownerOf(address), address)}
          />
        ))}
    </g>
  );
}
