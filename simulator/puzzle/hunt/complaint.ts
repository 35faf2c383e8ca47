import { stagesOf } from '../../circuit/circuit.ts';
import { outputPlace } from '../../rig/address.ts';
import type { Rig } from '../../rig/schema.ts';
import type { Solution } from '../../solve/solution.ts';
import { type Dbu, levelOfPower, powerOf } from '../../units/level.ts';
import { levelAtStage, levelsLookAlike, signalIndexes } from './reading.ts';

/** What a listener notices about one track at one output. */
export const SYMPTOMS = [
  'silent',
  'intruder',
  'left-lost',
  'right-lost',
  'sides-swapped',
  'quiet',
  'loud',
  'leans-left',
  'leans-right',
] as const;
export type Symptom = (typeof SYMPTOMS)[number];

/** Something about a track that is not as it was meant. */
export interface Oddity {
  readonly track: string;
  readonly symptom: Symptom;
}

/** All that somebody who listens at one output notices. What is not named there is as it was meant. */
export interface Complaint {
  /** Id of the output. */
  readonly output: string;
  /** At least one, in the order of the tracks. */
  readonly oddities: readonly Oddity[];
  /** Whether all that was to be heard there has the same oddity. */
  readonly isOfAll: boolean;
}

/** By how much a level has to change before a listener notices, in dB. Ours. */
export const NOTICED = 3;

/** Two complaints are the same when this is. */
export const complaintId = ({ output, oddities }: Complaint): string =>
  [output, ...oddities.map(({ track, symptom }) => `${track} ${symptom}`)].join('; ');

/**
 * What somebody at an output would complain of. Nothing when all sounds as it was meant, or when a loop grows there.
 *
 * @param meant what the setup sounds like as it was written down.
 * @param found what it sounds like.
 */
export function complaintAt(
  rig: Rig,
  output: string,
  meant: Solution,
  found: Solution,
): Complaint | undefined {
  // Where the fault does not reach, the row is the very one that was meant.
  const stages = stagesOf(found.circuit, outputPlace(output));
  if (stages.every((stage) => found.rows[stage] === meant.rows[stage])) return undefined;
  const oddities: Oddity[] = [];
  let isOfAll = true;
  for (const { id: track } of rig.box.tracks) {
    const before = levelsAt(meant, track, output);
    const after = levelsAt(found, track, output);
    if (!before || !after) return undefined;
    const symptom = symptomOf(before, after);
    if (symptom) oddities.push({ track, symptom });
    else if (before.flat().some(isHeard)) isOfAll = false;
  }
  const [first] = oddities;
  if (!first) return undefined;
  isOfAll &&= oddities.length > 1 && oddities.every(({ symptom }) => symptom === first.symptom);
  return { output, oddities, isOfAll };
}

/** Levels of the signals of a track at an output, by leg. */
type Heard = readonly (readonly Dbu[])[];

/** Nothing where a loop that grows leaves no level. */
function levelsAt(solution: Solution, track: string, output: string): Heard | undefined {
  const signals = signalIndexes(solution, track);
  const legs = stagesOf(solution.circuit, outputPlace(output)).map((stage) =>
    signals.map((signal) => levelAtStage(solution, [signal], stage)),
  );
  const isKnown = legs.every((leg) => leg.every((level) => level !== undefined));
  return isKnown ? (legs as Heard) : undefined;
}

const isHeard = (level: Dbu): boolean => level > -Infinity;

function symptomOf(before: Heard, after: Heard): Symptom | undefined {
  if (areAlike(before.flat(), after.flat())) return undefined;
  if (!before.flat().some(isHeard)) return 'intruder';
  if (!after.flat().some(isHeard)) return 'silent';
  return sideSymptomOf(before, after) ?? levelSymptomOf(before.flat(), after.flat());
}

/** What is odd about left and right; nothing where there is one leg alone. */
function sideSymptomOf([left, right]: Heard, [leftNow, rightNow]: Heard): Symptom | undefined {
  if (!left || !right || !leftNow || !rightNow) return undefined;
  if (left.some(isHeard) && !leftNow.some(isHeard)) return 'left-lost';
  if (right.some(isHeard) && !rightNow.some(isHeard)) return 'right-lost';
  if (areAlike(left, rightNow) && areAlike(right, leftNow)) return 'sides-swapped';
  const lean = riseBetween(right, rightNow) - riseBetween(left, leftNow);
  if (Number.isNaN(lean) || Math.abs(lean) < NOTICED) return undefined;
  return lean > 0 ? 'leans-right' : 'leans-left';
}

function levelSymptomOf(before: readonly Dbu[], after: readonly Dbu[]): Symptom | undefined {
  const rise = riseBetween(before, after);
  if (Math.abs(rise) < NOTICED) return undefined;
  return rise > 0 ? 'loud' : 'quiet';
}

const areAlike = (some: readonly Dbu[], others: readonly Dbu[]): boolean =>
  some.every((level, index) => levelsLookAlike(level, others[index]));

/** By how much all signals together have risen, in dB. */
const riseBetween = (before: readonly Dbu[], after: readonly Dbu[]): number =>
  totalOf(after) - totalOf(before);

const totalOf = (levels: readonly Dbu[]): Dbu =>
  levelOfPower(levels.reduce((sum, level) => sum + powerOf(level), 0));
