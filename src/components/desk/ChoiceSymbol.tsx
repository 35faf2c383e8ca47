import {
  CONTROL_ROOM,
  controls,
  ownerOf,
  part,
  pickAt,
  soloingOf,
} from '../../../simulator/index.ts';
import type { ChoiceMark } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened } from '../../drawing/names.ts';
import { shortOption } from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';
import { WordBox } from './WordBox.tsx';

const WIDTH = 84;

interface Props {
  mark: ChoiceMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** What is chosen of several things, in a box. What the control room listens to gives way to what is soloed. */
export function ChoiceSymbol({ mark: { address, name, at }, scene: { setup }, hands }: Props) {
  const control = controls(setup.rig).get(address);
  if (control?.kind !== 'choice') return null;
  const hearsSolo = address === part(CONTROL_ROOM, 'listen') && soloingOf(setup).heard.size > 0;
  const word = hearsSolo ? 'solo' : shortOption(control, pickAt(setup, address) ?? '');
  return (
    <g>
      <text class="choice-name" x={at.x - WIDTH / 2} y={at.y - 13}>
        {name}
      </text>
      <WordBox
        word={shortened(word, ROOM_FOR.choice)}
        at={at}
        state={hearsSolo ? 'on' : 'off'}
        width={WIDTH}
      />
      {hands && (
        <rect
          class="hit"
          x={at.x - WIDTH / 2}
          y={at.y - 14}
          width={WIDTH}
          height={28}
          onClick={() => hands.open(ownerOf(address), address)}
        />
      )}
    </g>
  );
}
