import { describe, expect, test } from 'vitest';
import { complaintAt, complaintId } from '../../../../simulator/puzzle/hunt/complaint.ts';
import { faultId, type HuntFault, solutionWith } from '../../../../simulator/puzzle/hunt/fault.ts';
import { type Hunt, hunt } from '../../../../simulator/puzzle/hunt/hunt.ts';
import { HUNT_LEVELS, huntLevel } from '../../../../simulator/puzzle/hunt/level.ts';
import { fewestFor } from '../../../../simulator/puzzle/hunt/strategy.ts';
import { findings } from '../../../../simulator/trace/findings.ts';
import { smallRoom } from '../../small-room.ts';
import { netLoft } from './net-loft-room.ts';

const rig = netLoft();
const SEEDS = Array.from({ length: 40 }, (_, index) => `s${index}`);
const known = new Map(
  HUNT_LEVELS.map((_, index) => [index + 1, SEEDS.map((seed) => hunt(rig, index + 1, seed))]),
);
const huntsOf = (level: number): readonly Hunt[] => known.get(level) ?? [];
const LEVELS = HUNT_LEVELS.map((_, index) => index + 1);

/** What somebody at the output of the complaint would say if a fault was there. */
function complaintWith({ setup, meantSolution, complaint }: Hunt, fault: HuntFault) {
  const found = solutionWith(setup, meantSolution, fault);
  const own = complaintAt(rig, complaint.output, meantSolution, found);
  return own && complaintId(own);
}

describe.each(LEVELS)('hunts of level %i', (level) => {
  const hunts = huntsOf(level);

  test('every suspect makes the complaint, and nothing else of the level does', () => {
    for (const one of hunts.slice(0, 8)) {
      const suspected = new Set(one.suspects.flatMap(({ faults }) => faults.map(faultId)));
      const fitting = one.faults.filter(
        (fault) => complaintWith(one, fault) === complaintId(one.complaint),
      );
      expect(new Set(fitting.map(faultId)), one.seed).toEqual(suspected);
    }
  });

  test('the hidden fault is of the level, and among the suspects', () => {
    for (const { fault, hidden, suspects, seed } of hunts) {
      expect(huntLevel(level).kinds, seed).toContain(fault.kind);
      expect(suspects[hidden]?.faults, seed).toContain(fault);
    }
  });

  test('readings tell every two suspects apart, and the best strategy finds each in time', () => {
    for (const { suspects, tests, strategy, best, seed } of hunts) {
      const everyone = suspects.map((_, index) => index);
      for (const guilty of everyone) {
        let fitting: readonly number[] = everyone;
        let made = 0;
        for (let step = strategy.bestFor(fitting); step; step = strategy.bestFor(fitting)) {
          const outcomes = tests[step.test] ?? [];
          fitting = fitting.filter((suspect) => outcomes[suspect] === outcomes[guilty]);
          made += 1;
        }
        expect(fitting, seed).toEqual([guilty]);
        expect(made, seed).toBeLessThanOrEqual(best);
      }
    }
  });

  test('the best strategy was searched for exactly, and keeps between its bounds', () => {
    for (const { suspects, tests, strategy, best, seed } of hunts) {
      const [fewest, most] = huntLevel(level).suspects;
      const outcomes = Math.max(...tests.map((one) => new Set(one).size));
      expect(strategy.isExact, seed).toBe(true);
      expect(best, seed).toBeGreaterThanOrEqual(fewestFor(suspects.length, outcomes));
      expect(best, seed).toBeLessThanOrEqual(suspects.length - 1);
      expect(suspects.length, seed).toBeGreaterThanOrEqual(fewest);
      expect(suspects.length, seed).toBeLessThanOrEqual(most);
    }
  });

  test('before anything went wrong an engineer would have called nothing there a fault', () => {
    for (const { setup, meantSolution, seed } of hunts) {
      const faults = findings(setup, meantSolution).filter(({ severity }) => severity === 'fault');
      expect(
        faults.map(({ code }) => code),
        seed,
      ).toEqual([]);
    }
  });
});

test('the same room, level and seed make the same hunt, on a rig that was read anew as well', () => {
  for (const level of LEVELS) {
    const [one, other] = [hunt(rig, level, 'k7x2'), hunt(netLoft(), level, 'k7x2')];
    expect(faultId(other.fault)).toBe(faultId(one.fault));
    expect(other.setup.board).toEqual(one.setup.board);
    expect(other.tests).toEqual(one.tests);
    expect(other.complaint).toEqual(one.complaint);
  }
});

test('over some seeds the hardest level hides nearly every kind of fault', () => {
  const kinds = new Set(huntsOf(HUNT_LEVELS.length).map(({ fault }) => fault.kind));
  expect(kinds.size).toBeGreaterThanOrEqual(9);
});

test('another room has hunts too', () => {
  expect(hunt(smallRoom(), 1, 'shed').suspects.length).toBeGreaterThanOrEqual(4);
});

test('a level or a seed that there is not is refused', () => {
  expect(() => hunt(rig, 0, 'a')).toThrow('Expected a level from 1 to 5, but got 0.');
  expect(() => hunt(rig, 1, 'A b')).toThrow('Expected a seed of a-z and 0-9, but got "A b".');
});
