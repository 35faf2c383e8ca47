import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outputPlace, paths, type Solution, simulate } from '../../../simulator/index.ts';
import { copiesOf } from '../../../simulator/trace/copies.ts';
import { levelsToward } from '../../../simulator/trace/toward.ts';
import { arbitrarySetup, LINEAR } from '../arbitrary-setup.ts';

const RUNS = 60;

/** By how many open ways, stage by stage, one comes from a stage to another; counted one by one. */
function waysBetween({ circuit }: Solution, from: number, to: number): number {
  if (from === to) return 1;
  return (circuit.wires[to] ?? []).reduce((sum, wire) => {
    const isReverb = circuit.stages[wire.from]?.law.kind === 'decorrelator';
    if (wire.ratio === 0 || isReverb) return sum;
    return sum + waysBetween({ circuit } as Solution, from, wire.from);
  }, 0);
}

describe('copiesOf()', () => {
  test('without loops and reverbs it counts each way that one finds by walking back', () => {
    fc.assert(
      fc.property(arbitrarySetup(LINEAR), (setup) => {
        const solution = simulate(setup);
        fc.pre(solution.order.every((component) => component.length === 1));
        for (const { id, stage } of solution.circuit.signals) {
          const copies = copiesOf(solution, id);
          for (const output of setup.rig.outputs) {
            for (const end of solution.circuit.stagesAt.get(outputPlace(output.id)) ?? []) {
              expect(copies[end]).toBe(Math.min(9, waysBetween(solution, stage, end)));
            }
          }
        }
      }),
      { numRuns: RUNS },
    );
  });
});

describe('levelsToward()', () => {
  test('at the output itself it is the level there', () => {
    fc.assert(
      fc.property(arbitrarySetup(), (setup) => {
        const solution = simulate(setup);
        for (const { id } of setup.rig.outputs) {
          const place = outputPlace(id);
          const level = levelsToward(solution, place)(place);
          const stages = solution.circuit.stagesAt.get(place) ?? [];
          if (stages.some((stage) => !solution.rows[stage])) continue;
          const power = stages.reduce(
            (sum, stage) => sum + solution.columns.powerOf(solution.rows[stage] as never),
            0,
          );
          expect(10 ** (Number(level) / 10)).toBeCloseTo(power, 9);
        }
      }),
      { numRuns: RUNS },
    );
  });

  test('it is silent exactly where no open wire leads on to the output, or nothing stands', () => {
    fc.assert(
      fc.property(arbitrarySetup(), (setup) => {
        const solution = simulate(setup);
        const [output] = setup.rig.outputs;
        if (!output) return;
        const toward = levelsToward(solution, outputPlace(output.id));
        for (const { id } of solution.circuit.signals) {
          const [track = id] = id.split('.');
          const source = `box.${track}.source`;
          if (!solution.circuit.stagesAt.has(source)) continue;
          const arrives = paths(solution, track, outputPlace(output.id)).length > 0;
          const level = toward(source);
          if (level !== undefined) expect(level !== -Infinity).toBe(arrives);
        }
      }),
      { numRuns: RUNS },
    );
  });
});
