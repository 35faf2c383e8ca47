import { signalsNamed, stagesOf } from '../../circuit/circuit.ts';
import type { Address } from '../../rig/address.ts';
import type { Level } from '../../solve/levels.ts';
import type { Solution } from '../../solve/solution.ts';
import { type Dbu, levelOfPower } from '../../units/level.ts';

/** What a meter shows at a place: the level of one leg, or of left and right. Silence is `-Infinity`. */
export type Reading = readonly Level[];

/** The meter of a hunt shows nothing below this level, and nobody complains of what lies below it. */
export const AUDIBLE = -60 as Dbu;

/** What two readings may differ by and still look alike, in dB. Ours: half a step of a usual meter. */
export const LOOKS_ALIKE = 0.5;

/**
 * What a meter shows of one source at a place, leg by leg. @throws RangeError when there is no such source or place.
 *
 * @param source a track, both of its sides where it is stereo, or one signal.
 */
export function readingAt(solution: Solution, source: string, place: Address): Reading {
  const signals = signalIndexes(solution, source);
  return stagesOf(solution.circuit, place).map((stage) => levelAtStage(solution, signals, stage));
}

/** The signals of a source by their index. */
export const signalIndexes = ({ circuit }: Solution, source: string): readonly number[] =>
  signalsNamed(circuit, source).map((signal) => circuit.signals.indexOf(signal));

/** Level of some signals at one stage, as a meter shows it. */
export function levelAtStage(
  { rows, columns }: Solution,
  signals: readonly number[],
  stage: number,
): Level {
  const row = rows[stage];
  if (!row) return undefined;
  let power = 0;
  for (const signal of signals) power += columns.powerOfSignal(row, signal);
  const level = levelOfPower(power);
  return level < AUDIBLE ? (-Infinity as Dbu) : level;
}

/** Whether two readings of one place look alike on a meter. */
export const lookAlike = (one: Reading, other: Reading): boolean =>
  one.every((level, leg) => levelsLookAlike(level, other[leg]));

export function levelsLookAlike(one: Level, other: Level): boolean {
  if (one === undefined || other === undefined) return one === other;
  return one === other || Math.abs(one - other) <= LOOKS_ALIKE;
}

/**
 * Sorts readings of one place into groups that look alike, and names the group of each by a number. A row of
 * readings with no gap wider than {@link LOOKS_ALIKE} is one group, so that being alike is never a matter of order.
 */
export function groupsOf(readings: readonly Reading[]): readonly number[] {
  const legs = readings[0]?.length ?? 0;
  const keys = readings.map(() => '');
  for (let leg = 0; leg < legs; leg += 1) {
    const groups = levelGroups(readings.map((reading) => reading[leg]));
    groups.forEach((group, index) => {
      keys[index] = `${keys[index]} ${group}`;
    });
  }
  const names = new Map<string, number>();
  return keys.map((key) => {
    const name = names.get(key) ?? names.size;
    names.set(key, name);
    return name;
  });
}

/** The group of each level: unknown and silent are groups of their own. */
function levelGroups(levels: readonly Level[]): readonly number[] {
  const known = [...new Set(levels.filter((level) => level !== undefined))].sort((a, b) => a - b);
  const groups = new Map<Level, number>();
  let group = 0;
  known.forEach((level, index) => {
    const below = known[index - 1];
    if (below !== undefined && level - below > LOOKS_ALIKE) group += 1;
    groups.set(level, group);
  });
  return levels.map((level) => groups.get(level) ?? -1);
}
