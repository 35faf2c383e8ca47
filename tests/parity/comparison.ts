import type { Agreement } from '../../src/course/index.ts';
import type { Source } from './network.ts';
import { Random } from './random.ts';
import type { SetupData } from './setup-file.ts';
import type { Elsewhere } from './solve-elsewhere.ts';

/** What is compared with which engine, and by how much they may differ. */
export type Run = Pick<Agreement, 'engine' | 'compares' | 'allowedDb'>;

/** What a comparison of many setups came to. */
export class Tally {
  rigs = 0;
  looped = 0;
  undecided = 0;
  comparisons = 0;
  unknown = 0;
  silent = 0;
  worstDb = 0;
  readonly #run: Run;

  constructor(run: Run) {
    this.#run = run;
  }

  /**
   * Holds what the simulator says against what is wanted, both in dB.
   *
   * @param floor below this both count as silence: what is left of a cancellation is rounding there.
   * @throws Error when they differ by more than the tolerance.
   */
  compare(
    where: string,
    found: number | undefined,
    wanted: number | undefined,
    floor: number,
  ): void {
    this.comparisons += 1;
    if (found === undefined || wanted === undefined) {
      if (found !== wanted)
        throw new Error(`${where}: found ${found}, but ${this.#run.engine} says ${wanted}.`);
      this.unknown += 1;
      return;
    }
    if (found < floor && wanted < floor) {
      this.silent += 1;
      return;
    }
    const error = Math.abs(found - wanted);
    if (!(error <= this.#run.allowedDb)) {
      throw new Error(`${where}: found ${found} dB, but ${this.#run.engine} says ${wanted} dB.`);
    }
    this.worstDb = Math.max(this.worstDb, error);
  }

  /** One line for a person. */
  get line(): string {
    const loops = this.looped > 0 ? ` (${this.looped} with loops)` : '';
    const undecided = this.undecided > 0 ? `, ${this.undecided} left out as undecided` : '';
    return (
      `${this.#run.compares}; ${this.#run.engine}: ${this.rigs} rigs${loops}${undecided}, ${this.comparisons} comparisons ` +
      `(${this.silent} of silence, ${this.unknown} of no level), ` +
      `worst error ${this.worstDb.toExponential(1)} dB, allowed ${this.#run.allowedDb} dB`
    );
  }
}

/** How far below a source its rest counts as silence, in dB. */
export const SILENT_BELOW = 200;

/** How many places besides the outputs are compared: some that several sources meet at, some others. */
const MEETING_PLACES = 40;
const OTHER_PLACES = 20;

/** All outputs of a setup, and some of its other places. */
export function placesToCompare(
  setup: SetupData,
  { system, powers }: Elsewhere,
  seed: number,
): string[] {
  const outputs = setup.rig.outputs.map(({ id }) => `out.${id}`);
  const others = new Random(seed).shuffled([...system.network.places]);
  const heardAt = (nodes: readonly string[]) => {
    const indices = nodes.map((node) => system.indexOf.get(node) ?? -1);
    return powers.filter((power) => indices.some((node) => (power[node] ?? 0) > 0)).length;
  };
  const meeting = others.filter(([, nodes]) => heardAt(nodes) > 1).slice(0, MEETING_PLACES);
  const chosen = [...meeting, ...others.slice(0, OTHER_PLACES)].map(([place]) => place);
  return [...new Set([...outputs, 'desk.main.out', ...chosen])];
}

/** Share of a track's power that another engine finds at a place, in dB; nothing where it has no level. */
export function gainElsewhere(
  elsewhere: Elsewhere,
  track: string,
  place: string,
): number | undefined {
  const nodes = elsewhere.system.network.places.get(place) ?? [];
  return sumElsewhere(elsewhere, nodes, (source) => (source.track === track ? 1 : 0));
}

/** Level of all sources together at some nodes, in dBu; nothing where they have none. */
export const levelElsewhere = (
  elsewhere: Elsewhere,
  nodes: readonly string[],
): number | undefined => sumElsewhere(elsewhere, nodes, ({ levelDbu }) => 10 ** (levelDbu / 10));

function sumElsewhere(
  { system, unknown, powers }: Elsewhere,
  nodes: readonly string[],
  powerOf: (source: Source) => number,
): number | undefined {
  const indices = nodes.map((node) => system.indexOf.get(node) ?? -1);
  if (indices.some((index) => unknown.has(index))) return undefined;
  let power = 0;
  system.network.sources.forEach((source, column) => {
    const born = powerOf(source);
    if (born === 0) return;
    for (const index of indices) power += born * (powers[column]?.[index] ?? Number.NaN);
  });
  // A power of nothing may come out a little below it.
  return 10 * Math.log10(Math.max(power, 0));
}
