import { describe, expect, test } from 'vitest';
import { parseWalkThrough } from '../../../simulator/grade/walk-through.ts';
import { findRig, lineWith, problemsOf, replaced, WALK } from './tasks.ts';

describe('parseWalkThrough()', () => {
  const walk = parseWalkThrough('first-steps.yaml', WALK, findRig);

  test('makes each board of the one before: −1 dB, then the mute, then −2 dB without it', () => {
    expect(walk.start).toEqual({ 'desk.a.fader': -12 });
    expect(walk.steps.map(({ board }) => board)).toEqual([
      { 'desk.a.fader': -1 },
      { 'desk.a.fader': -1, 'desk.b.mute': true },
      { 'desk.a.fader': -2 },
    ]);
  });

  test('follows a source until another is named', () => {
    expect(walk.steps.map(({ follow }) => follow)).toEqual(['viola', 'horn', 'horn']);
  });

  test.each<[what: string, from: string, to: string, place: string, part: string, found: string]>([
    [
      'an unknown source to follow',
      'follow: viola',
      'follow: cello',
      'follow',
      'follow: cello',
      '"cello"',
    ],
    [
      'one at a step',
      'follow: horn',
      'follow: bugle',
      'steps[1].follow',
      'follow: bugle',
      '"bugle"',
    ],
    [
      'changes that do not fit',
      'desk.b.mute: true',
      'desk.b.mute: 1',
      'steps[1].changes["desk.b.mute"]',
      'desk.b.mute: 1',
      '1',
    ],
    [
      'a step whose id is used',
      'id: three',
      'id: one',
      'steps[2].id',
      'id: one\n    say: Back',
      '"one" twice',
    ],
    [
      'an unknown output of a claim',
      'output: tape',
      'output: disc',
      'steps[0].heard[0].output',
      'output: disc',
      '"disc"',
    ],
    ['a step that says nothing', 'say: Back.', 'say: ""', 'steps[2].say', 'say: ""', '""'],
    ['another rig', 'rig: shed', 'rig: barn', 'rig', 'rig: barn', '"barn"'],
  ])('refuses %s', (_what, from, to, place, part, found) => {
    const text = replaced(WALK, from, to);
    const [problem, ...more] = problemsOf(() => parseWalkThrough('f', text, findRig));
    expect(problem).toMatchObject({ place, line: lineWith(text, part), found });
    expect(more).toEqual([]);
  });
});
