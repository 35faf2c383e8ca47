import { isOn, ownerOf } from '../../../simulator/index.ts';
import type { ToggleMark } from '../../drawing/drawing.ts';
import type { Hands, Scene } from './scene.ts';
import { WordBox } from './WordBox.tsx';

interface Props {
  mark: ToggleMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** A switch as its word in a box, which is full where it is on. */
export function ToggleSymbol({ mark: { address, word, at }, scene, hands }: Props) {
  const on = isOn(scene.setup, address);
  const isOpenToHands = hands && !scene.locked.has(address);
  return (
    <g>
      <WordBox word={word} at={at} state={on ? 'on' : 'off'} width={32} />
      {isOpenToHands && (
        <rect
          class="hit"
          x={at.x - 17}
          y={at.y - 14}
          width={34}
          height={28}
          onClick={() => {
            hands.open(ownerOf(address));
            hands.send({ type: 'control.set', address, value: !on });
          }}
        />
      )}
    </g>
  );
}
