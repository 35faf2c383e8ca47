import type { Address } from '../rig/address.ts';
import type { CompressionCurve } from '../units/compression.ts';
import { type Db, type Dbu, levelOfPower } from '../units/level.ts';
import type { Solution } from './solution.ts';

/** A compressor at work. */
export interface WorkingCompressor {
  /** The place where it turns down: `rack.comp.compress`. */
  readonly place: Address;
  readonly curve: CompressionCurve;
  /** RMS level that it goes by, in dBu: all its legs together in power. */
  readonly heard: Dbu;
  /** 0 dB or a loss, before make-up. */
  readonly gain: Db;
}

/**
 * The compressors that something comes to, in signal order. Legs that listen to one another are one. An empty list
 * means that none hears anything, or that an unstable loop leaves those that do without a level.
 */
export function workingCompressors(solution: Solution): WorkingCompressor[] {
  const { circuit, compression, rows, columns } = solution;
  const byPlace = new Map<Address, WorkingCompressor>();
  for (const [stage, gain] of compression) {
    const { law, place = '' } = circuit.stages[stage] ?? {};
    if (law?.kind !== 'compressor' || byPlace.has(place)) continue;
    const power = law.listensTo.reduce((sum, heard) => {
      const row = rows[heard];
      return row ? sum + columns.powerOf(row) : sum;
    }, 0);
    if (power === 0) continue;
    byPlace.set(place, { place, curve: law.curve, heard: levelOfPower(power), gain });
  }
  return [...byPlace.values()];
}
