import { describe, expect, test } from 'vitest';
import type { Check } from '../../simulator/index.ts';
import {
  candidateClaims,
  checkDocument,
  forgottenMoves,
  type Scenario,
} from '../../simulator/index.ts';
import { parseAssignment } from '../../src/class/assignment.ts';
import { givenItems } from '../../src/class/given-task.ts';
import {
  checkOf,
  failedBy,
  type OwnDraft,
  ownDraftOf,
  ownDraftSchema,
} from '../../src/class/own-draft.ts';
import { newOwn, ownEdited } from '../../src/class/own-edit.ts';
import { ownGaps, proveOwn } from '../../src/class/prove-own.ts';
import { COURSE } from './a-class.ts';

/** Makes a scenario of start and solution alone, as an instructor would with what the page offers. */
function madeOf({ rig, start, solution, open }: Scenario): OwnDraft {
  const checks: Check[] = [];
  for (const claim of candidateClaims(rig, start, solution).slice(0, 20)) {
    checks.push(checkOf(claim, checks));
  }
  const mistakes = forgottenMoves(rig, start, solution).filter(
    ({ board }) => failedBy(rig, checks, board).length > 0,
  );
  let own = newOwn('of-my-own', 'insert', rig, start, false);
  own = ownEdited(own, { type: 'board.set', of: 'solution', board: solution });
  own = ownEdited(own, {
    type: 'words.set',
    words: { title: 'Mine', brief: 'One.\n\nTwo.', debrief: 'So it was.', hints: 'Look.\nListen.' },
  });
  for (const pattern of open) own = ownEdited(own, { type: 'lock.set', pattern, isOpen: true });
  for (const { claim } of checks) {
    own = ownEdited(own, { type: 'check.set', claim, isAsked: true });
  }
  for (const { address, board } of mistakes.slice(0, 12)) {
    own = ownEdited(own, { type: 'mistake.add', name: `Forgot ${address}`, board });
  }
  return own;
}

const scenarios = [...COURSE.scenarios.values()];
const { rig } = scenarios[0] ?? {};
if (!rig) throw new Error('The course has no scenarios.');

describe('a scenario made of what the simulator hears in the solution, but not at the start', () => {
  const made = scenarios.map((scenario) => ({ scenario, own: madeOf(scenario) }));
  const complete = made.filter(({ own }) => own.mistakes.length >= 2 && own.checks.length > 0);

  // Where a single control is moved, one alone can be forgotten: the instructor has to set a second mistake.
  test('can be made of most starts and solutions of the course with nothing set by hand', () => {
    expect(complete.length).toBeGreaterThan(scenarios.length / 2);
  });

  test.each(complete)('passes the author’s check: $scenario.id', ({ scenario, own }) => {
    expect(ownGaps(own, scenario.rig)).toEqual([]);
    const proof = proveOwn(own, scenario.rig);
    if ('problems' in proof) throw new Error(proof.problems.join('\n'));
    const { task } = proof;
    const assignment = parseAssignment(
      'a',
      JSON.stringify({
        format: 'tap-and-sum/assignment',
        version: 1,
        id: 'mine',
        title: 'Mine',
        passPercent: 50,
        items: [{ id: 'it', task }],
      }),
    );
    const given = givenItems('a', assignment, COURSE)[0]?.taskOf('ada');
    if (given?.kind !== 'scenario') throw new Error('Expected a scenario.');
    // It opens again as the draft that it was made from.
    const again = ownDraftOf('it', task, given.task);
    expect(again).toEqual({ ...own, item: 'it', follow: again.follow });
    const document = {
      file: 'draft',
      data: JSON.parse(JSON.stringify(again)),
      lineOf: () => undefined,
    };
    expect(checkDocument(document, ownDraftSchema)).toEqual(again);
  });
});

describe('ownGaps()', () => {
  const empty = newOwn('mine', 'insert', rig, {}, false);

  test('names all that a new scenario lacks, in the order of the steps', () => {
    expect(ownGaps(empty, rig)).toEqual([
      'solution',
      'open',
      'checks',
      'mistakes',
      'title',
      'brief',
      'debrief',
    ]);
  });

  test('proveOwn() says in words what is wrong with it', () => {
    const proof = proveOwn(empty, rig);
    expect('problems' in proof && proof.problems.length).toBeGreaterThan(0);
  });

  test('another room leaves the words and nothing of the boards', () => {
    const worded = ownEdited(empty, { type: 'words.set', words: { title: 'Kept' } });
    const other = { ...rig, id: 'other' };
    const moved = ownEdited(worded, { type: 'room.set', rig: other, board: {}, isOwnRig: true });
    expect(moved).toMatchObject({
      title: 'Kept',
      rig: 'other',
      checks: [],
      mistakes: [],
      open: [],
    });
    expect(moved.ownRig).toBe(other);
  });
});

test('a locked control that the solution moves is a problem', () => {
  const scenario = scenarios.find((one) => madeOf(one).mistakes.length >= 2);
  if (!scenario) throw new Error('Expected one.');
  const own = { ...madeOf(scenario), open: ['desk.main.fader'] };
  const proof = proveOwn(own, scenario.rig);
  expect('problems' in proof && proof.problems.join()).toContain('locked');
});
