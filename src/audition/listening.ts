import {
  type Address,
  type Db,
  db,
  type Level,
  levelAt,
  ratioOf,
  type Solution,
  UNITY,
  type Wire,
} from '../../simulator/index.ts';
import {
  type AudioAction,
  type AudioGraph,
  type AudioPart,
  type AudioWire,
  EARS,
} from './audio-graph.ts';
import { FULL_VOLUME_RATIO, LOUDEST_DBU } from './calibration.ts';
import { lateWires, wireName } from './late-wires.ts';

/** What one hears at a place. */
export interface Listening {
  readonly place: Address;
  readonly graph: AudioGraph;
  /** Level at the place, both legs together. Nothing where an unstable loop reaches: that is not played. */
  readonly level: Level;
  /** By how much the guard turns it down: 0 dB or a loss. */
  readonly guard: Db;
}

const SUM = { kind: 'sum' } as const;
const SILENT: AudioGraph = {
  parts: EARS.map((id) => ({ id, action: SUM })),
  wires: [],
};

/**
 * What is to be played for a place to be heard: the part of the circuit that reaches it over open wires, at the
 * gains of the solution. Compressors stand still at the gain that the whole music gives them. A mono place is
 * heard in both ears.
 *
 * @throws RangeError when the circuit has no such place.
 */
export function listenAt(solution: Solution, place: Address): Listening {
  const { circuit } = solution;
  const legs = circuit.stagesAt.get(place);
  if (!legs) throw new RangeError(`Expected a place in the circuit, but got ${place}.`);
  const level = levelAt(solution, place);
  const legLevels = legs.map((leg) => levelAt(solution, circuit.stages[leg]?.id ?? place));
  const guard = guardGain(legLevels);
  if (level === undefined) return { place, graph: SILENT, level, guard };

  const comesFrom = originsIn(solution, lateWires(solution));
  const parts = new Map<number, AudioPart>();
  const wires = new Map<string, AudioWire>();
  const join = ({ stage, ratio, isLate }: Origin, to: string) => {
    const from = parts.get(stage) ?? partOf(solution, stage);
    parts.set(stage, from);
    const name = `${from.id} → ${to} ${isLate}`;
    const together = (wires.get(name)?.ratio ?? 0) + ratio;
    wires.set(name, { from: from.id, to, ratio: together, isLate });
  };
  EARS.forEach((ear, side) => {
    const leg = { from: legs[side] ?? legs[0], ratio: FULL_VOLUME_RATIO * ratioOf(guard) };
    join(comesFrom(leg), ear);
  });
  // A map goes on with what is added while one walks it.
  for (const [stage, { id }] of parts) {
    for (const wire of circuit.wires[stage] ?? []) {
      const origin = comesFrom(wire, stage);
      if (origin.ratio !== 0) join(origin, id);
    }
  }
  const graph = { parts: [...parts.values(), ...SILENT.parts], wires: [...wires.values()] };
  return { place, graph, level, guard };
}

/** Where what a wire brings was last more than turned up or down, and what it is turned up by since. */
interface Origin {
  readonly stage: number;
  readonly ratio: number;
  readonly isLate: boolean;
}

/**
 * Finds the origins of wires. A stage that only passes on what one wire brings needs no part of its own: a strip is
 * a row of such stages. Whether there is one wire does not depend on what is open, so that a desk that is turned
 * keeps its parts.
 *
 * @param late names of wires that have to come later.
 */
function originsIn(solution: Solution, late: ReadonlySet<string>) {
  const { circuit, compression } = solution;
  return function originOf({ from, ratio }: Wire, to?: number): Origin {
    const isLate = to !== undefined && late.has(wireName(from, to));
    const law = circuit.stages[from]?.law;
    const own =
      law?.kind === 'source' ? 10 ** (law.level / 20) : ratioOf(compression.get(from) ?? UNITY);
    const wires = circuit.wires[from] ?? [];
    const [only] = wires;
    if (only && wires.length === 1 && actionOf(solution, from).kind === 'sum' && !isLate) {
      const before = originOf(only, from);
      return { ...before, ratio: before.ratio * own * ratio };
    }
    return { stage: from, ratio: own * ratio, isLate };
  };
}

function partOf(solution: Solution, stage: number): AudioPart {
  const action = actionOf(solution, stage);
  return { id: `${solution.circuit.stages[stage]?.id} ${JSON.stringify(action)}`, action };
}

function actionOf({ circuit }: Solution, stage: number): AudioAction {
  const { id = '', law = SUM } = circuit.stages[stage] ?? {};
  switch (law.kind) {
    case 'source':
      return { kind: 'play', signal: circuit.signals.find((one) => one.stage === stage)?.id ?? '' };
    case 'filter':
      return law.sections.length === 0 ? SUM : { kind: 'filter', sections: law.sections };
    case 'delay':
      return law.time === 0 ? SUM : { kind: 'delay', time: law.time };
    case 'decorrelator':
      return { kind: 'reverberate', stage: id };
    default:
      return SUM;
  }
}

/** By how much legs have to be turned down for the loudest of them to keep its peaks below the ceiling. */
const guardGain = (legs: readonly Level[]): Db =>
  db(Math.min(0, ...legs.map((level) => LOUDEST_DBU - (level ?? LOUDEST_DBU))));
