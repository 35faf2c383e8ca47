import {
  controls,
  isOn,
  numberAt,
  ownerOf,
  type StripStage,
  soloingOf,
} from '../../../simulator/index.ts';
import type { StageMark } from '../../drawing/drawing.ts';
import { signed } from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';
import { WordBox } from './WordBox.tsx';

interface Props {
  mark: StageMark;
  owner: string;
  scene: Scene;
  hands: Hands | undefined;
}

const DRAWN: readonly StripStage[] = ['trim', 'polarity', 'mute', 'pan'];

/** A trim, polarity, mute or pan on its wire. Inserts and faders have symbols of their own. */
export function StageSymbol({ mark, owner, scene, hands }: Props) {
  const { stage, place, at } = mark;
  if (!DRAWN.includes(stage) || !controls(scene.setup.rig).has(place)) return null;
  const isToggle = stage === 'mute' || stage === 'polarity';
  const isOpenToHands = hands && !(isToggle && scene.locked.has(place));
  return (
    <g>
      <StageShape stage={stage} place={place} at={at} scene={scene} />
      {isOpenToHands && (
        <rect
          class="hit"
          x={at.x - 16}
          y={at.y - 16}
          width={32}
          height={32}
          onClick={() => {
            hands.open(owner, isToggle ? undefined : place);
            if (!isToggle) return;
            const value = !isOn(scene.setup, place);
            hands.send({ type: 'control.set', address: place, value });
          }}
        />
      )}
    </g>
  );
}

function StageShape({
  stage,
  place,
  at,
  scene,
}: Omit<Props, 'mark' | 'owner' | 'hands'> & StageMark) {
  const { x, y } = at;
  switch (stage) {
    case 'trim': {
      const gain = numberAt(scene.setup, place);
      return (
        <>
          <path class="stage" d={`M${x - 9} ${y - 8}h18l-9 16z`} />
          {gain !== 0 && (
            <text class="figure" x={x + 13} y={y + 3}>
              {signed(gain)}
            </text>
          )}
        </>
      );
    }
    case 'polarity': {
      const isInverted = isOn(scene.setup, place);
      return (
        <>
          <circle class={isInverted ? 'stage stage-on' : 'stage stage-off'} cx={x} cy={y} r={7} />
          <path
            class={isInverted ? 'stage-slash-on' : 'stage-slash'}
            d={`M${x - 8} ${y + 8}l16 -16`}
          />
        </>
      );
    }
    case 'mute': {
      // A strip that the solo of others cuts is cut just before its mute.
      const isCut = soloingOf(scene.setup).cut.has(ownerOf(place));
      const isMuted = isOn(scene.setup, place);
      return (
        <>
          {isCut && <path class="cut-gap" d={`M${x - 10} ${y - 13}h20`} />}
          <WordBox
            word={isMuted ? 'muted' : isCut ? 'cut' : 'mute'}
            at={at}
            state={isMuted ? 'on' : isCut ? 'cut' : 'off'}
          />
        </>
      );
    }
    default: {
      const position = numberAt(scene.setup, place);
      return (
        <>
          <line class="pan-track" x1={x - 20} x2={x + 20} y1={y} y2={y} />
          <circle class="stage" cx={x + position * 20} cy={y} r={6} />
        </>
      );
    }
  }
}
