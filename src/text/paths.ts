import {
  type Address,
  controls,
  type Dbu,
  fullLabel,
  isOn,
  type Level,
  MOST_PATHS,
  ownerLabel,
  ownerOf,
  type Path,
  type PathStep,
  partLabel,
  pluginAt,
  type Rig,
  type Setup,
  valueAt,
} from '../../simulator/index.ts';
import { IN_DBU, type LevelScale } from './level-units.ts';
import { sourceName } from './owners.ts';
import { goalName, goalOfSend } from './places.ts';
import { controlText, gainText, levelText, panText } from './quantities.ts';
import { counted, listed, sentence } from './sentence.ts';

/** A gain below this, in dB, is none to a reader. */
const UNHEARD_DB = 0.005;

/** Parts that are worth a row even where they change nothing: one looks for them on the way. */
const LANDMARKS = /^([^.]+\.)?(source|fader|level|gain|compress|reverb)$/;

/** One place of a path, as a row of a table. */
export interface PathRow {
  readonly place: Address;
  /** `Strip 3 Cello fader` */
  readonly name: string;
  /** The level that came to it: `−6.0 dBu`; empty where the signal starts. */
  readonly before: string;
  /** What the place did to the signal: `−6.0 dB`, `starts`, `inverted`, `arrives`. */
  readonly did: string;
  /** The level after it: `−12.0 dBu`. */
  readonly level: string;
}

/**
 * A path as one line, from owner to owner: `Cello track → Output 3 → Strip 3 Cello, send to Aux 1 → Aux 1`.
 */
export function pathLine(rig: Rig, path: Path): string {
  const stations: string[] = [];
  let last: { owner: string; index: number } | undefined;
  let inside: Address | undefined;
  for (const { place } of path.steps) {
    const owner = ownerOf(place);
    if (owner !== last?.owner) {
      last = { owner, index: stations.push(ownerLabel(rig, owner)) - 1 };
    }
    const plugin = pluginAt(rig, place);
    if (plugin?.address !== inside && plugin) stations[last.index] += `, ${plugin.plugin.label}`;
    inside = plugin?.address;
    if (goalOfSend(rig, place)) stations[last.index] += `, ${partLabel(rig, place)}`;
  }
  return stations.join(' → ');
}

/**
 * A path as rows, in signal order. Places where nothing happens to a reader, such as jacks at unity and
 * sums, are left out unless `every` is asked for.
 */
export function pathRows(
  setup: Setup,
  path: Path,
  {
    every = false,
    digits = 1,
    scale = IN_DBU,
  }: { every?: boolean; digits?: number; scale?: LevelScale } = {},
): PathRow[] {
  return path.steps
    .filter((step, index) => every || isTelling(setup, step, index === path.steps.length - 1))
    .map((step) => ({
      place: step.place,
      name: fullLabel(setup.rig, step.place),
      before:
        step === path.steps[0] ? '' : levelText((step.level - step.gain) as Dbu, digits, scale),
      did: step === path.steps.at(-1) ? 'arrives' : didText(setup, step, digits),
      level: levelText(step.level, digits, scale),
    }));
}

function isTelling(setup: Setup, { place, gain }: PathStep, isLast: boolean): boolean {
  if (isLast || Math.abs(gain) >= UNHEARD_DB || place.startsWith('converter.')) return true;
  const name = place.split('.').slice(2).join('.');
  if (name === 'polarity') return isOn(setup, place);
  return LANDMARKS.test(name) || goalOfSend(setup.rig, place) !== undefined;
}

function didText(setup: Setup, { place, gain }: PathStep, digits: number): string {
  const control = controls(setup.rig).get(place);
  const part = place.split('.').at(-1);
  const moved = gainText(gain, digits);
  if (part === 'source') return 'starts';
  if (part === 'reverb') return 'turned into reverberation';
  if (control?.kind === 'pan') return `${moved}, ${panText(Number(valueAt(setup, place)))}`;
  if (part === 'polarity' && control) return controlText(control, valueAt(setup, place));
  return Math.abs(gain) < UNHEARD_DB && control?.kind !== 'gain' ? 'unchanged' : moved;
}

/** How a source reaches a place, in one sentence: `Cello reaches Capture by 2 ways, together at +3.0 dBu.` */
export function pathsSentence(
  rig: Rig,
  found: {
    readonly source: string;
    readonly output: string;
    readonly ways: readonly Path[];
    readonly level: Level;
  },
  scale = IN_DBU,
): string {
  const source = sourceName(rig, found.source);
  const output = goalName(rig, found.output);
  const { ways, level } = found;
  if (ways.length === 0) return sentence(`${source} does not reach ${output}`);
  return sentence(
    `${source} reaches ${output} by ${waysText(rig, ways)}, ${resultText(level, ways.length, scale)}`,
  );
}

function resultText(level: Level, count: number, scale: LevelScale): string {
  if (level === undefined) return `with ${levelText(level)}`;
  if (level === -Infinity) return 'which cancel each other to silence';
  return `${count === 1 ? '' : 'together '}at ${levelText(level, 1, scale)}`;
}

/** How many ways there are; by its sides where several signals of a source arrive. */
function waysText(rig: Rig, ways: readonly Path[]): string {
  const counts = new Map<string, number>();
  for (const { signal } of ways) counts.set(signal, (counts.get(signal) ?? 0) + 1);
  const [first = 0, ...others] = counts.values();
  if (others.length === 0) return countedWays(first);
  if (others.every((count) => count === first)) return `${countedWays(first)} on each side`;
  return listed(
    [...counts].map(([signal, count]) => `${countedWays(count)} (${sourceName(rig, signal)})`),
  );
}

/** The list of ways ends somewhere; then there may be more. */
const countedWays = (count: number): string =>
  count < MOST_PATHS ? counted(count, 'way') : `${count} ways or more`;
