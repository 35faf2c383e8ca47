import type { Address } from '../rig/address.ts';
import { noiseShares } from '../solve/noise.ts';
import type { Solution } from '../solve/solution.ts';
import { partingOf } from '../trace/parting.ts';
import { isWithin, type Path, passes, placesOf } from '../trace/path.ts';
import { stopOf } from '../trace/stops.ts';
import type { Reason } from './verdict.ts';

/** Why a source does not arrive at an output. */
export const whyNot = (solution: Solution, source: string, output: Address): Reason => ({
  code: 'stops',
  source,
  output,
  stop: stopOf(solution, source, output),
});

export const arrivals = (list: readonly Path[]): Reason[] =>
  list.map((path) => ({ code: 'arrives', path }));

/** The place that lowers a path most, or that raises it most; nothing when no place does. */
export function changesMost(path: Path, direction: 'lowers' | 'raises'): Reason[] {
  const sign = direction === 'lowers' ? -1 : 1;
  const most = path.steps.reduce((best, step) =>
    sign * step.gain > sign * best.gain ? step : best,
  );
  if (sign * most.gain <= 0) return [];
  return [{ code: 'changes-most', path, place: most.place, gain: most.gain }];
}

/** Where two paths of one signal part and where they meet again. */
export function whereTheyPart(one: Path, other: Path): Reason {
  const { at, meets } = partingOf(one, other);
  return { code: 'parts', paths: [one, other], at, meets };
}

/** All loops that are closed, stable ones too. */
export const loopReasons = ({ circuit, loops }: Solution): Reason[] =>
  loops.map(({ ring, gain, stable }) => ({
    code: 'loop',
    places: [...new Set(ring.map((stage) => circuit.stages[stage]?.place ?? ''))],
    gain,
    stable,
  }));

/** Why there is no level: the loops that do not settle. */
export const unstableLoops = (solution: Solution): Reason[] =>
  loopReasons({ ...solution, loops: solution.loops.filter(({ stable }) => !stable) });

/** Where most of the noise at an output comes from; nothing where there is none. */
export function noiseReasons(solution: Solution, output: Address): Reason[] {
  const [most] = noiseShares(solution, output) ?? [];
  return most ? [{ code: 'noise-from', output, most }] : [];
}

/** Why a path did not move with a control: the place where it leaves the way to it. */
export function whyMissed(path: Path, control: Address, waysToControl: readonly Path[]): Reason {
  const beforeControl = new Set(waysToControl.flatMap(placesOf));
  const places = placesOf(path);
  const shared = places.findLastIndex((place) => beforeControl.has(place));
  return {
    code: 'misses-probe',
    path,
    control,
    leavesAt: shared < 0 ? undefined : places[shared + 1],
  };
}

/** Why a path does not pass all these stops in order; nothing when it does. */
export function whyOutOfOrder(path: Path, stops: readonly Address[]): Reason | undefined {
  const missed = stops.find((stop) => !passes(path, stop));
  if (missed !== undefined) return { code: 'misses', path, stop: missed };
  const places = placesOf(path);
  let reached = 0;
  const late = stops.findIndex((stop) => {
    const next = places.findIndex((place, index) => index >= reached && isWithin(place, stop));
    if (next >= 0) reached = next;
    return next < 0;
  });
  if (late < 0) return undefined;
  return { code: 'wrong-order', path, first: stops[late] ?? '', second: stops[late - 1] ?? '' };
}
