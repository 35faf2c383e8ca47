import { controls, isOn, ownerOf, pickAt } from '../../../simulator/index.ts';
import type { AssignCrossing } from '../../drawing/drawing.ts';
import type { Hands, Scene } from './scene.ts';

interface Props {
  assign: AssignCrossing;
  scene: Scene;
  hands: Hands | undefined;
}

const FULL = 7.5;
const HOLLOW = 4.5;
/** The sides of the main bus that a mono subgroup can be assigned to, as they stand beside its crossing. */
const SIDES: Readonly<Record<string, string>> = { left: 'L', right: 'R', both: 'L R' };

/** The crossing of a strip and a bus: a full dot where it is assigned, a hollow one where it is not. */
export function AssignSymbol({ assign, scene, hands }: Props) {
  const { address, at } = assign;
  const { setup, locked } = scene;
  const isChoice = controls(setup.rig).get(address)?.kind === 'choice';
  const isAssigned = isChoice ? pickAt(setup, address) !== undefined : isOn(setup, address);
  const act = () => {
    hands?.open(ownerOf(address), isChoice ? address : undefined);
    if (!isChoice) hands?.send({ type: 'control.set', address, value: !isAssigned });
  };
  return (
    <g>
      {isChoice ? (
        <SidedDot assign={assign} side={pickAt(setup, address)} />
      ) : (
        <circle
          class={isAssigned ? `assign assign-${assign.bus}` : 'assign assign-off'}
          cx={at.x}
          cy={at.y}
          r={isAssigned ? FULL : HOLLOW}
        />
      )}
      {hands && !locked.has(address) && (
        <rect class="hit" x={at.x - 16} y={at.y - 14} width={32} height={28} onClick={act} />
      )}
    </g>
  );
}

/** A mono subgroup at the main bus: the half of the dot that is full is the side that it goes to. */
function SidedDot({ assign: { at }, side }: { assign: AssignCrossing; side: string | undefined }) {
  const { x, y } = at;
  if (side === undefined) return <circle class="assign assign-off" cx={x} cy={y} r={HOLLOW} />;
  const half = (sweep: 0 | 1) => `M${x} ${y - FULL}A${FULL} ${FULL} 0 0 ${sweep} ${x} ${y + FULL}Z`;
  return (
    <>
      <circle class="assign assign-side" cx={x} cy={y} r={FULL} />
      {side !== 'right' && <path class="assign-half" d={half(0)} />}
      {side !== 'left' && <path class="assign-half" d={half(1)} />}
      <text class="figure" x={x + 11} y={y - 6}>
        {SIDES[side]}
      </text>
    </>
  );
}
