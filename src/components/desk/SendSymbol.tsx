import { numberAt, ownerOf, pickAt } from '../../../simulator/index.ts';
import type { SendCrossing } from '../../drawing/drawing.ts';
import { signed } from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';

const CLOSED_RADIUS = 4.5;
const LARGEST_RADIUS = 11;
/** The send level at which the dot is as small as an open one gets, in dB. */
const SMALLEST_DB = -40;

interface Props {
  send: SendCrossing;
  scene: Scene;
  hands: Hands | undefined;
}

/**
 * A send: a dot on the strip's own wire when it is taken before the fader, a lozenge on the wire that
 * comes back up when it is taken after it; the larger the louder, hollow when it is closed.
 */
export function SendSymbol({ send, scene, hands }: Props) {
  const { address, tapSwitch, fixedTap, before, after } = send;
  const gain = numberAt(scene.setup, address);
  const tap = tapSwitch ? pickAt(scene.setup, tapSwitch) : fixedTap;
  const isBefore = tap === 'pre';
  const at = isBefore ? before : after;
  const isClosed = gain === -Infinity;
  const radius = isClosed ? CLOSED_RADIUS : radiusOf(gain);
  const kind = `send send-${isBefore ? 'before' : 'after'}${isClosed ? ' send-closed' : ''}`;
  const owner = ownerOf(address);
  const isLocked = scene.locked.has(tapSwitch ?? address);
  return (
    <g>
      {isBefore ? (
        <circle class={kind} cx={at.x} cy={at.y} r={radius} />
      ) : (
        <path class={kind} d={lozenge(at.x, at.y, radius + 1)} />
      )}
      {!isClosed && (
        <text class="figure" x={before.x + 13} y={at.y - 7}>
          {signed(gain)}
        </text>
      )}
      {hands && (
        <>
          {tapSwitch && !isLocked && (
            <rect
              class="hit"
              x={(isBefore ? after.x : before.x) - 12}
              y={at.y - 14}
              width={24}
              height={28}
              onClick={() => {
                hands.open(owner);
                hands.send({
                  type: 'control.set',
                  address: tapSwitch,
                  value: isBefore ? 'post' : 'pre',
                });
              }}
            />
          )}
          <rect
            class="hit"
            x={at.x - 12}
            y={at.y - 14}
            width={24}
            height={28}
            onClick={() => hands.open(owner, address)}
          />
        </>
      )}
    </g>
  );
}

function radiusOf(gain: number): number {
  const share = Math.min(1, Math.max(0, (gain - SMALLEST_DB) / (10 - SMALLEST_DB)));
  return CLOSED_RADIUS + share * (LARGEST_RADIUS - CLOSED_RADIUS);
}

const lozenge = (x: number, y: number, r: number) =>
  `M${x - r} ${y}L${x} ${y - r}L${x + r} ${y}L${x} ${y + r}Z`;
