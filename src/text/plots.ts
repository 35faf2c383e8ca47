import {
  type Address,
  compressedLevel,
  type Db,
  type Path,
  type Rig,
  type WorkingCompressor,
} from '../../simulator/index.ts';
import type { LevelScale } from './level-units.ts';
import { headroomFigure } from './noise.ts';
import { sourceName } from './owners.ts';
import { deviceName, goalName, placeName } from './places.ts';
import { levelText } from './quantities.ts';
import { sentence } from './sentence.ts';
import { unsigned } from './signed.ts';

/** How a level runs along a way: where it starts, where it arrives, and where there is least headroom. */
export function waySentence(
  rig: Rig,
  { signal, steps, level }: Path,
  tightest: { readonly place: Address; readonly headroom: Db } | undefined,
  scale: LevelScale,
): string {
  const [start, end] = [steps[0], steps.at(-1)];
  const run = `${sourceName(rig, signal)} starts at ${levelText(start?.level, 1, scale)} and reaches ${goalName(rig, end?.place ?? '')} at ${levelText(level, 1, scale)}`;
  if (!tightest || tightest.headroom === Infinity) return sentence(run);
  const room =
    tightest.headroom < 0
      ? `${placeName(rig, tightest.place)} clips by ${headroomFigure(-tightest.headroom)} dB`
      : `the least headroom on the way is ${headroomFigure(tightest.headroom)} dB, at ${placeName(rig, tightest.place)}`;
  return sentence(`${run}; ${room}`);
}

/** Where a compressor works on its curve, and what the curve is. */
export function curveSentence(
  rig: Rig,
  { place, curve, heard, gain }: WorkingCompressor,
  scale: LevelScale,
): string {
  const { threshold, ratio, knee } = curve;
  const works =
    gain === 0
      ? 'turns nothing down'
      : `turns it down by ${unsigned(gain)} dB to ${levelText(compressedLevel(curve, heard), 1, scale)}`;
  const law = `threshold ${levelText(threshold, 1, scale)}, ratio ${ratio === Infinity ? '∞' : ratio} : 1, ${knee === 0 ? 'no knee' : `knee ${knee.toFixed(1)} dB wide`}`;
  return sentence(
    `${deviceName(rig, place.slice(0, place.lastIndexOf('.')))} hears ${levelText(heard, 1, scale)} and ${works}; ${law}`,
  );
}
