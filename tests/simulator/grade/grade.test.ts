import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withValues } from '../../../simulator/board/board.ts';
import { grade, isPassed } from '../../../simulator/grade/grade.ts';
import { controls, DRILL_CONCEPTS, drillOf } from '../../../simulator/index.ts';
import { RUNS } from '../arbitrary-setup.ts';

/** What a solution moves, and what else there is to be switched, locked or not. */
const CASES = DRILL_CONCEPTS.map((concept) => {
  const drill = drillOf(concept, 2, 'either');
  const { rig, start, solution } = drill;
  const solving = Object.keys({ ...start, ...solution }).filter(
    (address) => start[address] !== solution[address],
  );
  const switches = [...controls(rig).values()].filter(({ kind }) => kind === 'switch');
  return { concept, drill, solving, switches };
});

test.each(CASES)('isPassed() says what grade() says: $concept', ({ drill, solving, switches }) => {
  const { rig, start, solution } = drill;
  const verdicts = new Set<boolean>();
  fc.assert(
    fc.property(
      fc.subarray(solving, { minLength: Math.max(0, solving.length - 1) }),
      fc.subarray(switches, { maxLength: 1 }),
      (moved, switched) => {
        const values = {
          ...Object.fromEntries(
            moved.map((at) => [at, solution[at] ?? controls(rig).get(at)?.default ?? false]),
          ),
          ...Object.fromEntries(
            switched.map((one) => [one.address, !(start[one.address] ?? one.default)]),
          ),
        };
        const board = withValues(rig, start, values);
        const { passed } = grade(drill, board);
        expect(isPassed(drill, board)).toBe(passed);
        verdicts.add(passed);
      },
    ),
    { ...RUNS, numRuns: 40 },
  );
  expect(verdicts.size).toBe(2);
});
