import { isOn, ownerOf } from '../../../simulator/index.ts';
import type { AssignCrossing } from '../../drawing/drawing.ts';
import type { Hands, Scene } from './scene.ts';

interface Props {
  assign: AssignCrossing;
  scene: Scene;
  hands: Hands | undefined;
}

/** The crossing of a strip and a bus: a full dot where it is assigned, a hollow one where it is not. */
export function AssignSymbol({ assign: { address, bus, at }, scene, hands }: Props) {
  const isAssigned = isOn(scene.setup, address);
  const state = isAssigned ? `assign assign-${bus}` : 'assign assign-off';
  return (
    <g>
      <circle class={state} cx={at.x} cy={at.y} r={isAssigned ? 7.5 : 4.5} />
      {hands && !scene.locked.has(address) && (
        <rect
          class="hit"
          x={at.x - 16}
          y={at.y - 16}
          width={32}
          height={32}
          onClick={() => {
            hands.open(ownerOf(address));
            hands.send({ type: 'control.set', address, value: !isAssigned });
          }}
        />
      )}
    </g>
  );
}
