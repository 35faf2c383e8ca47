import {
  type Address,
  type Db,
  type Dbu,
  fullLabel,
  type Level,
  ownerLabel,
  ownerOf,
  type Rig,
} from '../../simulator/index.ts';
import type { LevelScale } from './level-units.ts';
import { headroomFigure } from './noise.ts';
import { levelText } from './quantities.ts';

/** What stands at one leg of a place that is metered. */
export interface MeterReading {
  readonly place: Address;
  /** RMS level of all that comes there. */
  readonly rms: Level;
  /** RMS level and crest together. */
  readonly peak: Level;
  readonly noise: Level;
  /** Nothing where no stage is active. */
  readonly limit: { readonly clip: Dbu; readonly headroom: Db } | undefined;
}

/** Name of a metered place, or of one of its legs: `Capture left`, `Strip 3 Cello line input`. */
export function meterName(rig: Rig, place: Address): string {
  const [section, , side] = place.split('.');
  if (section !== 'out') return fullLabel(rig, place);
  const output = ownerLabel(rig, ownerOf(place));
  return side ? `${output} ${side === 'l' ? 'left' : 'right'}` : output;
}

/** What a meter shows, in words: `−2.0 dBu, peaks +10.0 dBu, 12.0 dB below clipping, noise −78.1 dBu`. */
export function meterText({ rms, peak, noise, limit }: MeterReading, scale: LevelScale): string {
  const text = (level: Level) => levelText(level, 1, scale);
  if (rms === undefined) return text(rms);
  const parts = [text(rms)];
  if (rms !== -Infinity) parts.push(`peaks ${text(peak)}`);
  if (limit) parts.push(limitText(limit, text(limit.clip)));
  if (noise !== undefined) parts.push(noise === -Infinity ? 'no noise' : `noise ${text(noise)}`);
  return parts.join(', ');
}

function limitText({ headroom }: { readonly headroom: Db }, clip: string): string {
  if (headroom === Infinity) return `clips at ${clip}`;
  return headroom < 0
    ? `clips: ${headroomFigure(-headroom)} dB over ${clip}`
    : `${headroomFigure(headroom)} dB below clipping at ${clip}`;
}
