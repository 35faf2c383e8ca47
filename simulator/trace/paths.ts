import { type Circuit, type Signal, signalsNamed, stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { lawTransfer } from '../solve/law-transfer.ts';
import { addPowers, type Power, powerAt, powerThrough, totalOf } from '../solve/power.ts';
import type { Solution } from '../solve/solution.ts';
import {
  addTransfers,
  cascade,
  delayOf,
  type Grid,
  gainOf,
  spectrumOf,
  type Transfer,
  transferOf,
} from '../solve/transfer.ts';
import type { Seconds } from '../units/frequency.ts';
import { type Dbu, gainBetween, levelOfPower, ratioOf, UNITY } from '../units/level.ts';
import type { LegLevel, Path, PathStep } from './path.ts';

/** The most paths that are listed for one signal and output. */
export const MOST_PATHS = 64;
/** The most places that the search steps on before it stops, so that no rig can hold it up. */
const MOST_VISITS = 50_000;

/**
 * All open ways of a source to an output, the loudest first.
 *
 * An empty list means that nothing arrives. No way passes a stage twice, so a loop is gone round at most
 * once in part. Ways through a compressor have the gain that it takes now, with all that it hears.
 *
 * @param source a track, both its sides where it is stereo, or one signal.
 * @param output a place, or one leg of a place.
 * @throws RangeError when there is no such source or place.
 */
export function paths(solution: Solution, source: string, output: Address): Path[] {
  const approach = approachTo(solution, output);
  return signalsNamed(solution.circuit, source)
    .flatMap((signal) => pathsOfSignal(solution, signal, approach))
    .sort((a, b) => b.level - a.level);
}

/** All that leads to an output. */
interface Approach {
  readonly goals: ReadonlySet<number>;
  /** Stages from which an open way leads to it, with its own. */
  readonly leading: ReadonlySet<number>;
  /** Open wires between them, by the stage that they start from. */
  readonly next: ReadonlyMap<number, readonly WireOnwards[]>;
}

/** Approaches that were found, by solution and output: every source is asked for at the same few outputs. */
const approaches = new WeakMap<Solution, Map<Address, Approach>>();

function approachTo(solution: Solution, output: Address): Approach {
  const ofSolution = approaches.get(solution) ?? new Map<Address, Approach>();
  approaches.set(solution, ofSolution);
  const known = ofSolution.get(output);
  if (known) return known;
  const goals = new Set(stagesOf(solution.circuit, output));
  const leading = stagesLeadingTo(solution.circuit, goals);
  const approach = { goals, leading, next: wiresOnwards(solution, leading) };
  ofSolution.set(output, approach);
  return approach;
}

/** Stages from which an open way leads to one of the goals, with the goals themselves, as a walk meets them. */
export function stagesLeadingTo({ wires }: Circuit, goals: Iterable<number>): Set<number> {
  const leading = new Set(goals);
  const waiting = [...leading];
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    for (const { from, ratio } of wires[stage] ?? []) {
      if (ratio === 0 || leading.has(from)) continue;
      leading.add(from);
      waiting.push(from);
    }
  }
  return leading;
}

/**
 * What a path holds at the legs of one place: voltages relative to 0 dBu, by stage, and there by the stage
 * where the signal was born. Each output leg of a reverb bears a signal of its own.
 */
type Voltages = ReadonlyMap<number, ReadonlyMap<number, Transfer>>;

function pathsOfSignal(
  solution: Solution,
  signal: Signal,
  { goals, leading, next }: Approach,
): Path[] {
  const { circuit } = solution;
  const found: Path[] = [];
  let visits = 0;
  /** What the way walked so far has passed. */
  const walked = new Set([signal.stage]);

  const walk = (steps: readonly PathStep[], here: Voltages, decorrelated: boolean) => {
    visits += 1;
    if (visits > MOST_VISITS || found.length >= MOST_PATHS) return;
    const arrived = [...here].filter(([stage]) => goals.has(stage));
    if (arrived.length > 0) {
      found.push(pathFrom(signal, steps, new Map(arrived), decorrelated));
    }
    // A way may lead on from one leg of a place to the other one, through a device that has both.
    for (const [place, voltages] of onwards(here, next, walked, solution)) {
      const turnsNew = [...voltages.keys()].some(
        (stage) => circuit.stages[stage]?.law.kind === 'decorrelator',
      );
      const step = stepTo(circuit, place, voltages, steps.at(-1)?.level);
      for (const stage of voltages.keys()) walked.add(stage);
      walk([...steps, step], voltages, decorrelated || turnsNew);
      for (const stage of voltages.keys()) walked.delete(stage);
    }
  };

  if (!leading.has(signal.stage)) return [];
  const born = new Map<number, Transfer>([[signal.stage, 10 ** (signal.level / 20)]]);
  const start = new Map([[signal.stage, born]]);
  const place = circuit.stages[signal.stage]?.place ?? '';
  walk([stepTo(circuit, place, start, undefined)], start, false);
  return found;
}

/** An open wire seen from where it starts, with the gain of the stage that it leads to. */
interface WireOnwards {
  readonly to: number;
  readonly transfer: Transfer;
}

/** Open wires by the stage that they start from, of those that lead on to the goals. */
function wiresOnwards(
  { circuit, compression, grid }: Solution,
  leading: ReadonlySet<number>,
): ReadonlyMap<number, readonly WireOnwards[]> {
  const onwardsFrom = new Map<number, WireOnwards[]>();
  for (const to of leading) {
    for (const wire of circuit.wires[to] ?? []) {
      if (wire.ratio === 0) continue;
      const law = circuit.stages[to]?.law;
      const ratio = wire.ratio * ratioOf(compression.get(to) ?? UNITY);
      const transfer = law ? cascade(ratio, lawTransfer(law, grid)) : ratio;
      const known = onwardsFrom.get(wire.from);
      if (known) known.push({ to, transfer });
      else onwardsFrom.set(wire.from, [{ to, transfer }]);
    }
  }
  return onwardsFrom;
}

/** The places that come next, each with what the path holds at its legs. Stages walked before are left out. */
function onwards(
  here: Voltages,
  next: ReadonlyMap<number, readonly WireOnwards[]>,
  walked: ReadonlySet<number>,
  { circuit: { stages }, grid }: Solution,
): Map<Address, Map<number, Map<number, Transfer>>> {
  const places = new Map<Address, Map<number, Map<number, Transfer>>>();
  for (const [stage, voltages] of here) {
    for (const { to, transfer } of next.get(stage) ?? []) {
      if (walked.has(to)) continue;
      const place = stages[to]?.place ?? '';
      const legs = places.get(place) ?? new Map<number, Map<number, Transfer>>();
      places.set(place, legs);
      const leg = legs.get(to) ?? new Map<number, Transfer>();
      legs.set(to, leg);
      for (const [birth, voltage] of voltages) {
        leg.set(birth, addTransfers(leg.get(birth) ?? 0, cascade(voltage, transfer)));
      }
    }
  }
  for (const legs of places.values()) {
    for (const [stage, leg] of legs) {
      if (stages[stage]?.law.kind !== 'decorrelator') continue;
      legs.set(stage, new Map([[stage, reborn(leg, grid)]]));
    }
  }
  return places;
}

/** Signals that were born apart add in power. */
const powersOf = (leg: ReadonlyMap<number, Transfer>): Power =>
  [...leg.values()].reduce<Power>((sum, one) => addPowers(sum, powerThrough(one)), 0);

const powerOfVoltages = (leg: ReadonlyMap<number, Transfer>): number => totalOf(powersOf(leg));

/** What a decorrelator makes of a signal: a new one of the same power at every frequency. */
function reborn(leg: ReadonlyMap<number, Transfer>, grid: Grid): Transfer {
  const power = powersOf(leg);
  if (typeof power === 'number') return Math.sqrt(power);
  return transferOf(
    spectrumOf(grid, (point) => ({ re: Math.sqrt(powerAt(power, point)), im: 0 })),
    0 as Seconds,
    grid,
  );
}

const levelOfVoltages = (voltages: Voltages): Dbu =>
  levelOfPower([...voltages.values()].reduce((sum, leg) => sum + powerOfVoltages(leg), 0));

function stepTo(
  { stages }: Circuit,
  place: Address,
  voltages: Voltages,
  before: Dbu | undefined,
): PathStep {
  const legs = [...voltages].map(
    ([stage, leg]): LegLevel => ({
      leg: stages[stage]?.leg ?? '',
      level: levelOfPower(powerOfVoltages(leg)),
    }),
  );
  const level = levelOfVoltages(voltages);
  return { place, level, legs, gain: before === undefined ? UNITY : gainBetween(before, level) };
}

/** Whether a transfer turns the polarity round; where it depends on frequency, whether it does so on the whole. */
function isInverted(transfer: Transfer): boolean {
  const gain = gainOf(transfer);
  return typeof gain === 'number' ? gain < 0 : gain.re.reduce((sum, re) => sum + re, 0) < 0;
}

function pathFrom(
  signal: Signal,
  steps: readonly PathStep[],
  arrived: Voltages,
  decorrelated: boolean,
): Path {
  const level = levelOfVoltages(arrived);
  return {
    signal: signal.id,
    steps,
    gain: gainBetween(signal.level, level),
    level,
    inverted: [...arrived.values()].every((leg) => [...leg.values()].every(isInverted)),
    delay: Math.min(
      ...[...arrived.values()].flatMap((leg) => [...leg.values()].map(delayOf)),
    ) as Seconds,
    decorrelated,
  };
}
