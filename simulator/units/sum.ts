import { type Dbu, levelOfPower, powerOf } from './level.ts';

/**
 * Level of a mix of different signals, uncorrelated with one another: their powers add.
 *
 * Two equal levels sum to 3.01 dB above either. No signals sum to silence.
 * Source: *Audio Engineering: Know It All* (2008) §2.13.
 *
 * @param levels RMS levels in dBu, in any order.
 * @returns RMS level of the mix in dBu.
 */
export function sumUncorrelated(levels: readonly Dbu[]): Dbu {
  return levelOfPower(levels.reduce((sum, level) => sum + powerOf(level), 0));
}

/** One arrival of a signal: its level in dBu, and whether its polarity is inverted. */
export interface Arrival {
  readonly level: Dbu;
  readonly inverted?: boolean;
}

/**
 * Level of one signal that arrives by several paths at the same time: its voltages add.
 *
 * Two equal arrivals sum to 6.02 dB above either; with one of them inverted they cancel to silence.
 * No arrivals sum to silence. Source: *Audio Engineering: Know It All* (2008) §2.13.
 */
export function sumCoherent(arrivals: readonly Arrival[]): Dbu {
  const voltage = arrivals.reduce(
    (sum, { level, inverted }) => sum + (inverted ? -1 : 1) * 10 ** (level / 20),
    0,
  );
  return (20 * Math.log10(Math.abs(voltage))) as Dbu;
}
