import { describe, expect, test } from 'vitest';
import { isPassed } from '../../../simulator/grade/grade.ts';
import {
  type Board,
  controls,
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  type Drill,
  drillOf,
  grade,
  lockedControls,
  movesBetween,
  rigSchema,
  withValues,
} from '../../../simulator/index.ts';
import { SIZES } from '../../../simulator/puzzle/drill-name.ts';
import { contradictionsIn } from '../../../simulator/rig/check-rig.ts';
import { drillName } from '../../../src/share/drill-link.ts';
import { combinations, valuesOf } from './all-moves.ts';

/** How many drills are proven in all. `DRILLS=10000` proves as many as the design asks for. */
const COUNT = Number(process.env['DRILLS'] ?? 360);
const EACH = Math.ceil(COUNT / (DRILL_CONCEPTS.length * DRILL_LEVELS.length));
const KINDS = DRILL_CONCEPTS.flatMap((concept) =>
  DRILL_LEVELS.map((level) => [concept, level] as const),
);

/** What is wrong with a drill, by the graders alone; nothing when all is well. */
function complaintAbout(drill: Drill): string | undefined {
  const { rig, start, solution, par, level, open } = drill;
  const { fewest, most } = SIZES[level];
  const moves = movesBetween(rig, start, solution);
  const locked = lockedControls(rig, open);
  if (grade(drill, start).passed) return 'its start passes';
  if (!grade(drill, solution).passed) return 'its solution does not pass';
  if (moves.length !== par) return `par ${par} with a solution of ${moves.length} moves`;
  if (par < fewest || par > most) return `par ${par} at level ${level}`;
  if (moves.some(({ control }) => locked.has(control.address))) return 'it moves a locked control';
  // No move of the solution can be left out.
  for (const { control, from } of moves) {
    const less = withValues(rig, solution, { [control.address]: from });
    if (isPassed(drill, less)) return `${control.address} need not be moved`;
  }
  return undefined;
}

describe('drillOf() makes drills that are proven', () => {
  test.each(KINDS)(
    '%s, level %i',
    (concept, level) => {
      const pars = new Map<number, number>();
      for (let index = 0; index < EACH; index += 1) {
        const drill = drillOf(concept, level, `n${index}`);
        expect(complaintAbout(drill), drillName(drill)).toBeUndefined();
        pars.set(drill.par, (pars.get(drill.par) ?? 0) + 1);
      }
      const counts = [...pars]
        .sort(([a], [b]) => a - b)
        .map(([par, count]) => `par ${par}: ${count}`);
      console.log(`${concept}, level ${level}: ${EACH} drills proven (${counts.join(', ')})`);
    },
    600_000,
  );
});

test.each(KINDS)(
  'drillOf() gives the same drill of %s, level %i, for the same seed',
  (concept, level) => {
    const [one, other] = [drillOf(concept, level, 'twice'), drillOf(concept, level, 'twice')];
    expect(JSON.stringify(other)).toBe(JSON.stringify(one));
    expect(drillOf(concept, level, 'thrice').start).not.toEqual(one.start);
  },
);

test.each(KINDS)('the room of %s, level %i, is a sound rig', (concept, level) => {
  const { rig } = drillOf(concept, level, 'room');
  expect(rigSchema.parse(rig)).toEqual(rig);
  expect(contradictionsIn(rig)).toEqual([]);
});

test('drillOf() refuses what is no seed', () => {
  expect(() => drillOf('subgroups', 1, 'No seed')).toThrow(RangeError);
});

// Every locked control is put elsewhere once, on a board that passes.
test.each(KINDS)('no locked control is a shortcut in %s, level %i', (concept, level) => {
  const drill = drillOf(concept, level, 'locks');
  const { rig, solution, open } = drill;
  const locked = lockedControls(rig, open);
  expect(locked.size).toBeGreaterThan(10);
  for (const address of locked) {
    const control = controls(rig).get(address);
    if (!control) throw new RangeError(`Expected a control, but got ${address}.`);
    const standing = solution[address] ?? control.default;
    const elsewhere = valuesOf(control).find((value) => value !== standing);
    if (elsewhere === undefined) continue;
    const board = withValues(rig, solution, { [address]: elsewhere });
    expect(isPassed(drill, board), address).toBe(false);
  }
});

// Goes through every combination of values of open controls with fewer moves than par, and grades each:
// no pruning, and none of the code that searches.
describe('no combination of fewer moves than par passes', () => {
  const SAMPLED = 2;
  test.each(DRILL_CONCEPTS)('%s', (concept) => {
    let graded = 0;
    let found = 0;
    for (let index = 0; found < SAMPLED && index < 60; index += 1) {
      const drill = drillOf(concept, 2, `b${index}`);
      if (drill.par !== 2) continue;
      found += 1;
      for (const values of combinations(drill, drill.par - 1)) {
        const board: Board = withValues(drill.rig, drill.start, values);
        graded += 1;
        expect(grade(drill, board).passed, `${drillName(drill)} ${JSON.stringify(values)}`).toBe(
          false,
        );
      }
    }
    expect(found).toBe(SAMPLED);
    console.log(`${concept}: ${graded} boards with one move graded, none passes`);
  });

  test('subgroups of par 3, with two moves', () => {
    const drill = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6']
      .map((seed) => drillOf('subgroups', 2, seed))
      .find(({ par }) => par === 3);
    if (!drill) throw new Error('Expected a drill of par 3 among these seeds.');
    let graded = 0;
    for (const values of combinations(drill, 2)) {
      graded += 1;
      expect(grade(drill, withValues(drill.rig, drill.start, values)).passed).toBe(false);
    }
    expect(graded).toBeGreaterThan(500);
  });
});
