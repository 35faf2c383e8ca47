import { useMemo } from 'preact/hooks';
import { type Address, pickAt } from '../../../simulator/index.ts';
import type { Point, SendCrossing, WireLine } from '../../drawing/drawing.ts';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import type { Scene } from './scene.ts';

const pathOf = (points: readonly Point[]) => `M${points.map(({ x, y }) => `${x} ${y}`).join('L')}`;

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

function Wires({ wires, lines = [], scene }: WiresProps) {
  const paths = useMemo(
    () =>
      wires.map(({ points, corners }) =>
        pathOf(corners ? [corners[0], ...points, corners[1]] : points),
      ),
    [wires],
  );
  const bare = new Map<string, string>();
  const onWires = wires.flatMap(({ place, role, isNormal, sends }, index): LightLine[] => {
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
      <Light lines={[...onWires, ...lines]} scene={scene} />
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
interface Lit extends LightLine {
  /** In units of the drawing; nothing where the level is unknown. */
  readonly width: number | undefined;
  readonly isDoubled: boolean;
  readonly isLoop: boolean;
}

/** A line that two wires side by side are drawn on is at least so wide. */
const DOUBLED = 5;

/**
 * What light is made of, from below, each with its width on a line in units of the drawing, if it is there. All casings
 * lie below all light, so that none cuts through where a line goes on.
 */
const LAYERS: readonly (readonly [
  look: string,
  width: (lit: Lit) => number | undefined | false,
])[] = [
  ['light-casing', ({ width }) => width && width + 2],
  ['light', ({ width }) => width],
  ['light-parting', ({ isDoubled }) => isDoubled && 1.6],
  ['light-loop', ({ isLoop }) => isLoop && 7],
  ['wire-unknown', ({ width }) => !width && 4],
];

interface LightProps {
  lines: readonly LightLine[];
  scene: Scene;
}

/**
 * The light on lines, by the levels at their places. Nothing where what is followed is silent. Where copies of one
 * sound add up it is two lines side by side; on a loop it has beads on it.
 */
export function Light({ lines, scene }: LightProps) {
  const lit = litAlike(lines, scene);
  return LAYERS.flatMap(([look, widthOn]) =>
    lit.flatMap((one) => {
      const width = widthOn(one);
      return width ? (
        <path key={look + one.place} class={look} d={one.d} stroke-width={width} />
      ) : (
        []
      );
    }),
  );
}

function litAlike(lines: readonly LightLine[], scene: Scene): Lit[] {
  const byLook = new Map<string, Lit>();
  for (const { d, place } of lines) {
    const { brightness, copies, isLoop } = scene.light(place);
    if (brightness === 0) continue;
    const isKnown = brightness !== 'unknown';
    const isDoubled = isKnown && copies > 1;
    const width = isKnown ? Math.max(isDoubled ? DOUBLED : 0, lightWidth(brightness)) : undefined;
    const one = { place, d, width, isDoubled, isLoop: isKnown && isLoop };
    const look = `${width} ${isDoubled} ${one.isLoop}`;
    const before = byLook.get(look);
    byLook.set(look, before ? { ...before, d: before.d + d } : one);
  }
  return [...byLook.values()];
}
