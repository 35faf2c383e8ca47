import type { Reading } from './reading.ts';
import type { RigData, SoloMode, StripData } from './setup-file.ts';

/** What the solo switches of strips do at the moment; nothing on a desk without any. */
export const soloMode = (reading: Reading, { desk }: RigData): SoloMode | undefined =>
  desk.solo?.[0] && reading.value<SoloMode>('desk.control.mode', desk.solo[0]);

/** Whether the solo of others closes the mute of a strip. */
export function isCut(reading: Reading, rig: RigData, strip: StripData): boolean {
  if (soloMode(reading, rig) !== 'in-place') return false;
  const isSoloed = ({ id }: StripData) => reading.on(`desk.${id}.solo`);
  return rig.desk.strips.some(isSoloed) && !isSoloed(strip) && !reading.on(`desk.${strip.id}.safe`);
}
