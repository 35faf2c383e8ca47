import type { Point, WireLine } from '../../drawing/drawing.ts';
import { brightnessOf, levelToLight } from '../../drawing/light.ts';
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
export function LitWire({ wire, scene }: Props) {
  const d = pathOf(wire.points);
  return (
    <g>
      <path class={`wire wire-${wire.role}${wire.isNormal ? ' wire-normal' : ''}`} d={d} />
      <Light d={d} place={wire.place} scene={scene} />
    </g>
  );
}

/** The light on a line, by the level at a place. Nothing where the source is silent. */
export function Light({ d, place, scene }: { d: string; place: string; scene: Scene }) {
  const brightness = brightnessOf(levelToLight(scene.solution, place, scene.follow));
  if (brightness === 'unknown') return <path class="wire-unknown" d={d} />;
  if (brightness === 0) return null;
  const width = lightWidth(brightness);
  return (
    <>
      <path class="light-casing" d={d} stroke-width={width + 2} />
      <path class="light" d={d} stroke-width={width} />
    </>
  );
}

/** A straight line as the path of a wire. */
export const line = (from: Point, to: Point): string => pathOf([from, to]);
