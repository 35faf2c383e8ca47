import type { Setup } from '../../board/board.ts';
import type { Address } from '../../rig/address.ts';
import type { Rig } from '../../rig/schema.ts';
import { clippingStages } from '../../solve/headroom.ts';
import { type Simulation, simulate } from '../../solve/simulate.ts';
import { RandomStream } from '../random-stream.ts';
import { SEED } from '../seed.ts';
import { type Complaint, complaintAt, complaintId, type Oddity } from './complaint.ts';
import { faultId, faultsOf, type HuntFault, solutionWith } from './fault.ts';
import { type HuntLevel, huntLevel } from './level.ts';
import { Strategy } from './strategy.ts';
import { type LineUp, lineUp } from './suspects.ts';
import { workingBoard } from './working-board.ts';

/** A setup that works but for one thing that is hidden, and all that can be said about how to find it. */
export interface Hunt extends LineUp {
  readonly level: number;
  readonly seed: string;
  /** How everything was written down to stand. */
  readonly setup: Setup;
  /** What that sounds like. */
  readonly meantSolution: Simulation;
  readonly complaint: Complaint;
  /** The track, or the signal of one, that every reading is of. */
  readonly source: string;
  /** Everything that could be accused: all faults of the level that the setup can have. */
  readonly faults: readonly HuntFault[];
  readonly fault: HuntFault;
  /** Index of the suspect that the hidden fault belongs to. */
  readonly hidden: number;
  readonly strategy: Strategy;
  /** How many probes the best strategy needs in the worst case. */
  readonly best: number;
}

/** How many working setups are tried for one seed. */
const MOST_TRIES = 40;
/** A client who has more to say than this is not quoted. */
const MOST_ODDITIES = 2;

/**
 * The hunt of a level and a seed in a room. The same three give the same hunt on every machine.
 *
 * It is proven: its fault makes the complaint, so does every suspect and nothing else of the level, and readings
 * tell every two suspects apart.
 *
 * @param seed see {@link SEED}.
 * @throws RangeError when there is no such level or seed, or when the room offers no hunt of that level.
 */
export function hunt(rig: Rig, level: number, seed: string): Hunt {
  const how = huntLevel(level);
  if (!SEED.test(seed)) throw new RangeError(`Expected a seed of a-z and 0-9, but got "${seed}".`);
  const stream = new RandomStream(`hunt/${rig.id}/${level}/${seed}`);
  for (let attempt = 1; attempt <= MOST_TRIES; attempt += 1) {
    const found = tryHunt(rig, how, stream.part(`${attempt}`));
    if (found) return { level, seed, ...found };
  }
  throw new RangeError(`Expected a room with a hunt of level ${level}, but ${rig.id} has none.`);
}

function tryHunt(
  rig: Rig,
  how: HuntLevel,
  stream: RandomStream,
): Omit<Hunt, 'level' | 'seed'> | undefined {
  const setup = { rig, board: workingBoard(rig, how, stream.part('board')) };
  const meantSolution = simulate(setup);
  // It has to work before it is broken.
  if (clippingStages(meantSolution).length > 0) return undefined;
  const faults = faultsOf(setup, meantSolution, new Set(how.kinds));
  const [fewest, most] = how.suspects;
  const cases = casesOf(setup, meantSolution, faults).filter(({ complaint }) =>
    complaint.oddities.every(({ symptom }) => how.symptoms?.includes(symptom) ?? true),
  );
  // Each kind of fault is as likely as any other, though some can be at many more places.
  for (const kind of stream.part('kinds').shuffled(how.kinds)) {
    for (const { complaint, fitting } of stream.part(kind).shuffled(cases)) {
      const able = fitting.filter((fault) => fault.kind === kind);
      if (able.length === 0 || fitting.length < fewest) continue;
      const source = sourceOf(rig, complaint);
      const line = lineUp(setup, meantSolution, fitting, source);
      const count = line.suspects.length;
      if (count < fewest || count > most) continue;
      const fault = stream.part('fault').pick(able);
      const hidden = line.suspects.findIndex((suspect) => suspect.faults.includes(fault));
      const strategy = new Strategy(line.tests, count);
      const best = strategy.worstOf(line.suspects.map((_, index) => index));
      const told = { complaint, source, faults, fault, hidden, strategy, best };
      return { ...line, setup, meantSolution, ...told };
    }
  }
  return undefined;
}

/** A complaint with all faults that make just this one. */
interface Case {
  readonly complaint: Complaint;
  readonly fitting: HuntFault[];
}

/** All that could be complained of. */
function casesOf(setup: Setup, meant: Simulation, faults: readonly HuntFault[]): readonly Case[] {
  const cases = new Map<string, Case>();
  for (const fault of faults) {
    const found = solutionWith(setup, meant, fault);
    for (const { id: output } of setup.rig.outputs) {
      const complaint = complaintAt(setup.rig, output, meant, found);
      if (!complaint || !isQuotable(complaint)) continue;
      const id = complaintId(complaint);
      const known = cases.get(id);
      if (known) known.fitting.push(fault);
      else cases.set(id, { complaint, fitting: [fault] });
    }
  }
  return [...cases.values()];
}

const isQuotable = ({ oddities, isOfAll }: Complaint): boolean =>
  isOfAll || oddities.length <= MOST_ODDITIES;

/** What the readings are of: the first track complained of, or its left side where the sides are confused. */
function sourceOf(rig: Rig, { oddities }: Complaint): string {
  const [{ track, symptom }] = oddities as readonly [Oddity, ...Oddity[]];
  const isStereo = rig.box.tracks.some(({ id, stereo }) => id === track && stereo);
  return symptom === 'sides-swapped' && isStereo ? `${track}.l` : track;
}

/** The fault of a hunt with this id, if there is one. */
export const faultNamed = ({ faults }: Hunt, id: string): HuntFault | undefined =>
  faults.find((fault) => faultId(fault) === id);

/** Whether a meter can be held at a place in a hunt. */
export const isProbePlace = ({ places }: Hunt, place: Address): boolean => places.includes(place);
