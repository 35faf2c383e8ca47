import { ownerOf, pickAt } from '../../../simulator/index.ts';
import type { PathSwitch } from '../../drawing/drawing.ts';
import { Light, line } from './LitWires.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props {
  pathSwitch: PathSwitch;
  scene: Scene;
  hands: Hands | undefined;
}

/** The switch before the second path of an in-line strip: a lever that stands at its own input or at the first path. */
export function PathSwitchSymbol({ pathSwitch, scene, hands }: Props) {
  const { address, input, first, end } = pathSwitch;
  const takesFirst = pickAt(scene.setup, address) === 'first';
  const contact = takesFirst ? first : input;
  const lever = line(contact, end);
  return (
    <g>
      <path class="lever" d={lever} />
      <Light lines={[{ d: lever, place: address }]} scene={scene} />
      {[input, first, end].map(({ x, y }) => (
        <circle
          key={`${x} ${y}`}
          class={x === contact.x && y === contact.y ? 'contact contact-on' : 'contact'}
          cx={x}
          cy={y}
          r={3.5}
        />
      ))}
      {hands && !scene.locked.has(address) && (
        <rect
          class="hit"
          x={first.x - 6}
          y={input.y - 4}
          width={end.x - first.x + 18}
          height={end.y - input.y + 8}
          onClick={() => {
            hands.open(ownerOf(address));
            hands.send({
              type: 'control.set',
              address,
              value: takesFirst ? 'jack' : 'first',
            });
          }}
        />
      )}
    </g>
  );
}
