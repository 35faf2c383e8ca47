import { expect } from 'vitest';
import type { Level } from '../../../simulator/solve/levels.ts';

/** Below this, in dBu, what is left is the rounding of voltages that cancel: silence. */
const SILENT_BELOW = -220;

/** Expects two levels to be alike: both unknown, both silent, or less than `tolerance` dB apart. */
export function expectNear(found: Level, wanted: Level, tolerance: number, where: string): void {
  if (found === undefined || wanted === undefined) {
    expect(found, where).toBe(wanted);
  } else if (found > SILENT_BELOW || wanted > SILENT_BELOW) {
    const said = `${where}: ${found} dBu, wanted ${wanted} dBu`;
    expect(Math.abs(found - wanted), said).toBeLessThanOrEqual(tolerance);
  }
}
