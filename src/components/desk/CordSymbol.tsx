import { ownerOf } from '../../../simulator/index.ts';
import type { CordMark } from '../../drawing/room-drawing.ts';
import { CORDS } from '../../drawing/room-rows.ts';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import { LitWires } from './LitWires.tsx';
import { RailDots } from './RailDots.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props {
  cord: CordMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** What a strip hangs by: a dot on each rail that feeds it, and the cord, which passes behind the strip's name. */
export const CordSymbol = drawnWhenChanged<Props>(Cord, ({ cord }) => cord);

function Cord({ cord: { input, dots, wire, x }, scene, hands }: Props) {
  return (
    <g>
      <LitWires wires={[wire]} scene={scene} />
      <RailDots dots={dots} kind="cord" />
      <rect class="plate" x={x - 38} y={2} width={76} height={48} rx={5} />
      {hands && (
        <>
          {dots.map(({ at, side }) => (
            <rect
              key={`${side}`}
              class="hit"
              x={at.x - 10}
              y={at.y - 7}
              width={20}
              height={14}
              onClick={() => hands.open(ownerOf(input), input)}
            />
          ))}
          <rect
            class="hit"
            x={x - 12}
            y={-CORDS + 4}
            width={24}
            height={CORDS - 4}
            onClick={() => hands.open(ownerOf(input), input)}
          />
        </>
      )}
    </g>
  );
}
