import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Circuit } from '../../../simulator/circuit/circuit.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { alwaysPasses, leadsPast, leadsThrough } from '../../../simulator/trace/leads.ts';
import { isWithin, passes, placesOf } from '../../../simulator/trace/path.ts';
import { MOST_PATHS, paths } from '../../../simulator/trace/paths.ts';
import { arbitrarySetup } from '../arbitrary-setup.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

/** Whether these stops come one after the other in a list of places. */
function comeInOrder(places: readonly string[], stops: readonly string[]): boolean {
  const [stop, ...later] = stops;
  if (stop === undefined) return true;
  return places.some((place, at) => isWithin(place, stop) && comeInOrder(places.slice(at), later));
}

/**
 * Whether some place leads back to itself, be it from its left to its right: the list of ways takes both sides of
 * a place at once, and so leaves out a way that comes back to the other side.
 */
function comesBack({ stages, wires }: Circuit): boolean {
  const next = new Map<string, Set<string>>();
  wires.forEach((into, to) => {
    for (const { from, ratio } of into) {
      const [start, end] = [stages[from]?.place ?? '', stages[to]?.place ?? ''];
      if (ratio !== 0) next.set(start, (next.get(start) ?? new Set()).add(end));
    }
  });
  return [...next.keys()].some((start) => {
    const reached = new Set(next.get(start));
    for (const place of reached) for (const further of next.get(place) ?? []) reached.add(further);
    return reached.has(start);
  });
}

/** A random desk without loops, with the ways of one of its signals to the end and two owners. */
const cases = arbitrarySetup().chain((setup) => {
  const solution = simulate(setup);
  const owners = [
    ...new Set(solution.circuit.stages.map(({ place }) => place.split('.').slice(0, 2).join('.'))),
  ];
  return fc.record({
    solution: fc.constant(solution),
    signal: fc.constantFrom(...solution.circuit.signals),
    stops: fc.array(fc.constantFrom(...owners, 'desk.main', 'desk.ch1', 'desk.ch1.fader'), {
      minLength: 1,
      maxLength: 3,
    }),
  });
});

describe('leadsThrough(), leadsPast() and alwaysPasses()', () => {
  test('agree with the list of ways where it is whole', () => {
    const seen = { through: 0, past: 0, always: 0 };
    fc.assert(
      fc.property(cases, ({ solution, signal, stops }) => {
        const { circuit } = solution;
        const ways = paths(solution, signal.id, 'out.end');
        if (comesBack(circuit) || ways.length >= MOST_PATHS) return;
        for (const stop of stops) {
          const through = leadsThrough(circuit, signal.stage, stop, 'out.end');
          const past = leadsPast(circuit, signal.stage, stop, 'out.end');
          expect(through, `through ${stop}`).toBe(ways.some((way) => passes(way, stop)));
          expect(past, `past ${stop}`).toBe(ways.some((way) => !passes(way, stop)));
          if (through) seen.through += 1;
          if (past) seen.past += 1;
        }
        const always = alwaysPasses(circuit, signal.stage, stops, 'out.end');
        const inOrder = ways.length > 0 && ways.every((way) => comeInOrder(placesOf(way), stops));
        expect(always, stops.join(', ')).toBe(inOrder);
        if (always) seen.always += 1;
      }),
      { seed: 606, numRuns: 700 },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
  });
});
