import { useMemo } from 'preact/hooks';
import { type Address, pickAt } from '../../../simulator/index.ts';
import type { Point, SendCrossing, WireLine } from '../../drawing/drawing.ts';
import type { Glow } from '../../drawing/light.ts';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import type { Scene } from './scene.ts';

const pathOf = (points: readonly Point[]) =>
  points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');

/** A straight line as the path of a wire. */
export const line = (...ends: readonly [Point, Point]): string => pathOf(ends);

/** Width of the light on a wire, in units of the drawing. */
export const lightWidth = (brightness: number): number => 1 + 4.5 * brightness;

interface WiresProps {
  wires: readonly WireLine[];
  /** What is lit besides, without a wire below it. */
  lines?: readonly LightLine[];
  scene: Scene;
}

/**
 * Wires, and over them the light of what is followed, the wider the louder. Those that look alike are one path, since
 * a browser's work goes by how many there are.
 */
export const LitWires = drawnWhenChanged<WiresProps>(Wires, ({ wires }) => wires);

function Wires({ wires, lines: besides = [], scene }: WiresProps) {
  const paths = useMemo(() => wires.map(({ points }) => pathOf(points)), [wires]);
  const bare = new Map<string, string>();
  const lines = wires.flatMap(({ place, role, isNormal, sends }, index): LightLine[] => {
    const d = paths[index] ?? '';
    const look = `wire wire-${role}${isNormal ? ' wire-normal' : ''}${scene.light(place).isSilent ? ' wire-silent' : ''}`;
    bare.set(look, (bare.get(look) ?? '') + d);
    // A source is followed to wherever it stands; what is traced to an output is lit where it goes on.
    const places = sends && scene.followed.kind !== 'source' ? takenAfter(scene, sends) : [place];
    return places.map((lit) => ({ d, place: lit }));
  });
  return (
    <>
      {[...bare].map(([look, d]) => (
        <path key={look} class={look} d={d} />
      ))}
      <Light lines={[...lines, ...besides]} scene={scene} />
    </>
  );
}

/** The sends of a strip that are taken after the fader. */
const takenAfter = ({ setup }: Scene, sends: readonly SendCrossing[]): Address[] =>
  sends
    .filter(
      ({ tapSwitch, fixedTap }) => (tapSwitch ? pickAt(setup, tapSwitch) : fixedTap) === 'post',
    )
    .map(({ address }) => address);

/** A line that is lit by what stands at a place. */
export interface LightLine {
  readonly d: string;
  readonly place: Address;
}

/** Lines that are lit alike, as one path, by the place of the first. */
interface Lit extends LightLine, Pick<Glow, 'brightness' | 'isLoop'> {
  readonly isDoubled: boolean;
}

/** A line that two wires side by side are drawn on is at least so wide. */
const DOUBLED = 5;

interface LightProps {
  lines: readonly LightLine[];
  scene: Scene;
}

/**
 * The light on lines, by the levels at their places. Nothing where what is followed is silent. Where copies of one
 * sound add up it is two lines side by side; on a loop it has beads on it. All casings lie below all light, so that
 * none cuts through where a line goes on.
 */
export function Light({ lines, scene }: LightProps) {
  const lit = litAlike(lines, scene);
  const known = lit.flatMap(({ place, d, brightness, isDoubled }) =>
    brightness === 'unknown'
      ? []
      : [{ place, d, width: Math.max(isDoubled ? DOUBLED : 0, lightWidth(brightness)) }],
  );
  const over = (look: string, isMarked: (one: Lit) => boolean) =>
    lit
      .filter(isMarked)
      .map(({ place, d }) => <path key={`${look} ${place}`} class={look} d={d} />);
  return (
    <>
      {[
        ...known.map(({ place, d, width }) => (
          <path key={`casing ${place}`} class="light-casing" d={d} stroke-width={width + 2} />
        )),
        ...known.map(({ place, d, width }) => (
          <path key={place} class="light" d={d} stroke-width={width} />
        )),
        ...over('light-parting', ({ isDoubled }) => isDoubled),
        ...over('light-loop', ({ isLoop }) => isLoop),
        ...over('wire-unknown', ({ brightness }) => brightness === 'unknown'),
      ]}
    </>
  );
}

function litAlike(lines: readonly LightLine[], scene: Scene): Lit[] {
  const byLook = new Map<string, Lit>();
  for (const { d, place } of lines) {
    const { brightness, copies, isLoop } = scene.light(place);
    if (brightness === 0) continue;
    const isKnown = brightness !== 'unknown';
    const isDoubled = isKnown && copies > 1;
    const look = `${brightness} ${isDoubled} ${isLoop}`;
    const before = byLook.get(look);
    byLook.set(
      look,
      before
        ? { ...before, d: before.d + d }
        : { place, d, brightness, isDoubled, isLoop: isKnown && isLoop },
    );
  }
  return [...byLook.values()];
}
