import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { componentsInOrder } from '../../../simulator/solve/components.ts';
import { db, dbu } from '../../../simulator/units/level.ts';
import { circuitOf } from './parts.ts';

const sorted = (components: readonly (readonly number[])[]) =>
  components.map((component) => [...component].sort((a, b) => a - b));

describe('componentsInOrder()', () => {
  test('puts every stage of a chain after the one that it depends on: 2 → 0 → 1', () => {
    expect(
      componentsInOrder(
        circuitOf(3, [
          [2, 0],
          [0, 1],
        ]),
      ),
    ).toEqual([[2], [0], [1]]);
  });

  test('takes the stages of a ring together, what feeds it before, what it feeds after', () => {
    const circuit = circuitOf(5, [
      [4, 1],
      [1, 2],
      [2, 3],
      [3, 1],
      [3, 0],
    ]);
    expect(sorted(componentsInOrder(circuit))).toEqual([[4], [1, 2, 3], [0]]);
  });

  test('takes two rings with a stage in common as one', () => {
    expect(
      sorted(
        componentsInOrder(
          circuitOf(3, [
            [0, 1],
            [1, 0],
            [1, 2],
            [2, 1],
          ]),
        ),
      ),
    ).toEqual([[0, 1, 2]]);
  });

  test('passes over closed wires', () => {
    expect(
      componentsInOrder(
        circuitOf(2, [
          [0, 1],
          [1, 0, 0],
        ]),
      ),
    ).toEqual([[0], [1]]);
  });

  test('lets a compressor depend on what it listens to', () => {
    const law = {
      kind: 'compressor',
      curve: { threshold: dbu(-3), ratio: 2, knee: db(0) },
      listensTo: [2],
    } as const;
    expect(componentsInOrder(circuitOf(3, [[0, 1]], { 1: law }))).toEqual([[0], [2], [1]]);
    expect(
      sorted(
        componentsInOrder(
          circuitOf(
            3,
            [
              [0, 1],
              [1, 2],
            ],
            { 1: law },
          ),
        ),
      ),
    ).toEqual([[0], [1, 2]]);
  });

  test('holds every stage once, each after all that feed it, and together with those that it reaches back', () => {
    const size = 8;
    const wire = fc.tuple(fc.nat({ max: size - 1 }), fc.nat({ max: size - 1 }));
    fc.assert(
      fc.property(fc.array(wire, { maxLength: 16 }), (wires) => {
        const components = componentsInOrder(circuitOf(size, wires));
        expect(components.flat().sort((a, b) => a - b)).toEqual([...Array(size).keys()]);
        const componentOf = (stage: number) => components.findIndex((one) => one.includes(stage));
        const reach = reachability(size, wires);
        for (const [from, to] of wires)
          expect(componentOf(from)).toBeLessThanOrEqual(componentOf(to));
        for (let a = 0; a < size; a += 1) {
          for (let b = 0; b < size; b += 1) {
            const isMutual = a === b || (reach[a]?.[b] === true && reach[b]?.[a] === true);
            expect(componentOf(a) === componentOf(b)).toBe(isMutual);
          }
        }
      }),
      { seed: 404, numRuns: 300 },
    );
  });
});

/** Which stage reaches which, by Warshall's closure. */
function reachability(size: number, wires: readonly (readonly [number, number])[]): boolean[][] {
  const reach = Array.from({ length: size }, () => new Array<boolean>(size).fill(false));
  for (const [from, to] of wires) (reach[from] as boolean[])[to] = true;
  for (let via = 0; via < size; via += 1) {
    for (const row of reach) {
      if (row[via])
        reach[via]?.forEach((isReached, to) => {
          if (isReached) row[to] = true;
        });
    }
  }
  return reach;
}
