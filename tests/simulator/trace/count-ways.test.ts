import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outputPlace, paths, simulate } from '../../../simulator/index.ts';
import { countWays } from '../../../simulator/trace/count-ways.ts';
import { MOST_PATHS } from '../../../simulator/trace/paths.ts';
import { arbitrarySetup, RUNS } from '../arbitrary-setup.ts';

/** So many ways are listed one by one before the list is cut. */
const MOST = MOST_PATHS - 1;

test('countWays() is how many ways paths() lists that pass no reverb, of every signal at every output', () => {
  let several = 0;
  fc.assert(
    fc.property(arbitrarySetup(), (setup) => {
      const solution = simulate(setup);
      for (const { id, stage } of solution.circuit.signals) {
        for (const output of setup.rig.outputs) {
          const place = outputPlace(output.id);
          const listed = paths(solution, id, place);
          if (listed.length > MOST) continue;
          const dry = listed.filter(({ decorrelated }) => !decorrelated).length;
          const goals = solution.circuit.stagesAt.get(place) ?? [];
          expect(countWays(solution.circuit, stage, goals, MOST)).toBe(dry);
          if (dry > 1) several += 1;
        }
      }
    }),
    RUNS,
  );
  // It would hold as well where nothing arrives.
  expect(several).toBeGreaterThan(20);
});

test('countWays() stops counting at the most that is asked for', () => {
  const wires = [
    [],
    [{ from: 0, ratio: 1 }],
    [{ from: 0, ratio: 1 }],
    [
      { from: 1, ratio: 1 },
      { from: 2, ratio: 1 },
    ],
  ];
  const stages = ['in', 'a', 'b', 'out'].map((id) => ({
    id,
    place: id,
    leg: undefined,
    law: { kind: 'sum' as const },
  }));
  const circuit = { stages, wires, signals: [], stagesAt: new Map(), active: new Map() };
  expect(countWays(circuit, 0, [3], 9)).toBe(2);
  expect(countWays(circuit, 0, [3], 1)).toBe(1);
});
