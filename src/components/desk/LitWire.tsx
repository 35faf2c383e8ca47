import { pickAt } from '../../../simulator/index.ts';
import type { Point, SendCrossing, WireLine } from '../../drawing/drawing.ts';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import type { Scene } from './scene.ts';

const pathOf = (points: readonly Point[]) =>
  points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');

/** Width of the light on a wire, in units of the drawing. */
export const lightWidth = (brightness: number): number => 1 + 4.5 * brightness;

interface Props {
  wire: WireLine;
  scene: Scene;
}

/** A wire, and on it the light of the followed source, the wider the louder. */
export const LitWire = drawnWhenChanged<Props>(Wire, ({ wire }) => wire);

function Wire({ wire, scene }: Props) {
  const { place, sends } = wire;
  const d = pathOf(wire.points);
  const { isSilent } = scene.light(place);
  return (
    <g>
      <path
        class={`wire wire-${wire.role}${wire.isNormal ? ' wire-normal' : ''}${isSilent ? ' wire-silent' : ''}`}
        d={d}
      />
      {/* A source is followed to wherever it stands; what is traced to an output is lit where it goes on. */}
      {sends && scene.followed.kind !== 'source' ? (
        takenAfter(scene, sends).map((send) => (
          <Light key={send} d={d} place={send} scene={scene} />
        ))
      ) : (
        <Light d={d} place={place} scene={scene} />
      )}
    </g>
  );
}

/** The sends of a strip that are taken after the fader. */
const takenAfter = ({ setup }: Scene, sends: readonly SendCrossing[]): string[] =>
  sends
    .filter(
      ({ tapSwitch, fixedTap }) => (tapSwitch ? pickAt(setup, tapSwitch) : fixedTap) === 'post',
    )
    .map(({ address }) => address);

/** A line that two wires side by side are drawn on is at least so wide. */
const DOUBLED = 5;

/**
 * The light on a line, by the level at a place. Nothing where what is followed is silent. Where copies of one
 * sound add up it is two lines side by side; on a loop it has beads on it.
 */
export function Light({ d, place, scene }: { d: string; place: string; scene: Scene }) {
  const { brightness, copies, isLoop } = scene.light(place);
  if (brightness === 'unknown') return <path class="wire-unknown" d={d} />;
  if (brightness === 0) return null;
  const isDoubled = copies > 1;
  const width = Math.max(isDoubled ? DOUBLED : 0, lightWidth(brightness));
  return (
    <>
      <path class="light-casing" d={d} stroke-width={width + 2} />
      <path class="light" d={d} stroke-width={width} />
      {isDoubled && <path class="light-parting" d={d} />}
      {isLoop && <path class="light-loop" d={d} />}
    </>
  );
}

/** A straight line as the path of a wire. */
export const line = (...ends: readonly [Point, Point]): string => pathOf(ends);
