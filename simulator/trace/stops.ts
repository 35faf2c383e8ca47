import { type Circuit, signalsNamed, stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import type { Solution } from '../solve/solution.ts';
import { stagesLeadingTo } from './paths.ts';

/** Why a source does not arrive at an output. */
export type Stop =
  /** Wires lead all the way, but these places on it are closed: a fader down, a mute, an assign off. */
  | { readonly code: 'closed'; readonly places: readonly Address[] }
  /** No wire leads there. The source gets this far, to places that nothing is plugged into, or else assigned from. */
  | {
      readonly code: 'no-way';
      readonly ends: readonly Address[];
      /** Places before the output that nothing comes into: where a cord is missing. */
      readonly openings: readonly Address[];
    };

/**
 * Finds where a source stops on its way to an output: by the way with the fewest closed places.
 *
 * To be asked when no path leads there. @throws RangeError when there is no such source or place.
 */
export function stopOf({ circuit }: Solution, source: string, output: Address): Stop {
  const starts = signalsNamed(circuit, source).map(({ stage }) => stage);
  return stopBetween(circuit, starts, output);
}

/** The same for what leaves a place. @throws RangeError when there is no such place. */
export const stopAfter = ({ circuit }: Solution, place: Address, output: Address): Stop =>
  stopBetween(circuit, stagesOf(circuit, place), output);

function stopBetween(circuit: Circuit, starts: readonly number[], output: Address): Stop {
  const { stages, wires } = circuit;
  const goals = new Set(stagesOf(circuit, output));
  const placeOf = (stage: number) => stages[stage]?.place ?? '';

  // Breadth-first by the number of closed wires, and among equals by length: what is still to be
  // visited at this number is appended to `level` while it is gone through.
  const onwards: { to: number; isClosed: boolean }[][] = stages.map(() => []);
  wires.forEach((into, to) => {
    for (const { from, ratio } of into) onwards[from]?.push({ to, isClosed: ratio === 0 });
  });
  const closedBefore = new Map<number, readonly number[]>(starts.map((stage) => [stage, []]));
  let level = [...starts];
  while (level.length > 0) {
    const deeper: number[] = [];
    for (const stage of level) {
      const closed = closedBefore.get(stage) ?? [];
      if (goals.has(stage)) return { code: 'closed', places: [...new Set(closed.map(placeOf))] };
      for (const { to, isClosed } of onwards[stage] ?? []) {
        const sofar = isClosed ? [...closed, to] : closed;
        const known = closedBefore.get(to);
        if (known && known.length <= sofar.length) continue;
        closedBefore.set(to, sofar);
        if (isClosed) deeper.push(to);
        else level.push(to);
      }
    }
    level = deeper;
  }

  const reached = new Set(
    [...closedBefore].flatMap(([stage, closed]) => (closed.length === 0 ? [stage] : [])),
  );
  const unplugged = [...reached].filter((stage) => (onwards[stage] ?? []).length === 0);
  const stuck = [...reached].filter((stage) =>
    (onwards[stage] ?? []).every(({ isClosed }) => isClosed),
  );
  const ends = unplugged.length > 0 ? unplugged : stuck;
  const openings = [...stagesLeadingTo(circuit, goals)].filter(
    (stage) => (wires[stage] ?? []).length === 0 && stages[stage]?.law.kind !== 'source',
  );
  const names = (list: readonly number[]) => [...new Set(list.map(placeOf))];
  return { code: 'no-way', ends: names(ends), openings: names(openings) };
}
