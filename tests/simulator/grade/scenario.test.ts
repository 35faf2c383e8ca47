import { describe, expect, test } from 'vitest';
import { MAX_FILE_LENGTH } from '../../../simulator/file/read-document.ts';
import { grade } from '../../../simulator/grade/grade.ts';
import { parseScenario } from '../../../simulator/grade/scenario.ts';
import { findRig, lineWith, problemsOf, replaced, SCENARIO } from './tasks.ts';

const scenario = parseScenario('quiet-cans.yaml', SCENARIO, findRig);

describe('parseScenario()', () => {
  test('reads boards as changes: the solution to the start, a mistake to the solution', () => {
    expect(scenario.start).toEqual({ 'desk.a.fader': -12 });
    expect(scenario.solution).toEqual({ 'desk.a.fader': -12, 'desk.a.ears': -5 });
    expect(scenario.proofs.map(({ name, fails }) => [name, fails])).toEqual([
      ['solution', []],
      ['softer', []],
      ['taken after the fader', ['holds-still']],
      ['the horn as well', ['no-horn']],
    ]);
    expect(scenario.proofs[2]?.board).toEqual({
      'desk.a.fader': -12,
      'desk.a.late': 8,
      'out.cans': 'desk.late.out',
    });
    expect(scenario.proofs[3]?.board).toEqual({
      'desk.a.fader': -12,
      'desk.a.ears': -5,
      'desk.b.ears': -20,
    });
  });

  test.each<[what: string, from: string, to: string, place: string, part: string, found: string]>([
    ['an unknown rig', 'rig: shed', 'rig: barn', 'rig', 'rig: barn', '"barn"'],
    [
      'an unknown source to follow',
      'follow: viola',
      'follow: cello',
      'follow',
      'follow: cello',
      '"cello"',
    ],
    [
      'a start that names no control',
      'desk.a.fader: -12',
      'desk.d.fader: -12',
      'start["desk.d.fader"]',
      'desk.d.fader',
      '"desk.d.fader"',
    ],
    [
      'a solution out of range',
      'desk.a.ears: -5',
      'desk.a.ears: 15',
      'solution["desk.a.ears"]',
      'desk.a.ears: 15',
      '15',
    ],
    [
      'a pattern that opens nothing',
      '- desk.*.late',
      '- desk.**.late',
      'open[1]',
      'desk.**.late',
      '"desk.**.late"',
    ],
    [
      'a check whose id is used',
      'id: heard',
      'id: no-horn',
      'checks[2].id',
      'id: no-horn\n    weight: 4',
      '"no-horn" twice',
    ],
    [
      'an unknown kind of claim',
      'kind: absent',
      'kind: missing',
      'checks[2].claim.kind',
      'kind: missing',
      '"missing"',
    ],
    [
      'an unknown source in a claim',
      'absent, source: horn',
      'absent, source: bugle',
      'checks[2].claim.source',
      'source: bugle',
      '"bugle"',
    ],
    [
      'an unknown output in a claim',
      'output: cans, minDbu',
      'output: tins, minDbu',
      'checks[0].claim.output',
      'output: tins',
      '"tins"',
    ],
    [
      'an unknown source in a probe',
      'of: viola }',
      'of: cello }',
      'checks[1].claim.probe.of',
      'of: cello',
      '"cello"',
    ],
    [
      'a probe of what is no gain',
      '{ move: fader, of: viola }',
      '{ control: desk.a.mute }',
      'checks[1].claim.probe.control',
      'control: desk.a.mute',
      'a switch',
    ],
    [
      'a probe that does not move',
      '{ move: fader, of: viola }',
      '{ move: fader, of: viola, byDb: 0 }',
      'checks[1].claim.probe.byDb',
      'byDb: 0',
      '0',
    ],
    [
      'a band upside down',
      'maxDbu: 1 ',
      'maxDbu: -4 ',
      'checks[0].claim.maxDbu',
      'maxDbu: -4',
      '-4',
    ],
    ['a weight of 0', 'weight: 2', 'weight: 0', 'checks[0].weight', 'weight: 0', '0'],
    [
      'a mistake that fails no known check',
      'fails: [no-horn]',
      'fails: [no-drum]',
      'mistakes[1].fails',
      'fails: [no-drum]',
      '"no-drum"',
    ],
    [
      'a mistake that fails nothing',
      'fails: [no-horn]',
      'fails: []',
      'mistakes[1].fails',
      'fails: []',
      'a list of 0',
    ],
    [
      'an unknown key',
      'debrief:',
      'answer: 4\ndebrief:',
      'answer',
      'answer: 4',
      'the unknown key answer',
    ],
    [
      'a special key',
      'desk.a.fader: -12',
      '__proto__: {}',
      'start',
      '__proto__',
      'the key __proto__',
    ],
    [
      'a cord that the start has elsewhere',
      'desk.a.fader: -12\n',
      'desk.a.in: none\n  rack.boost.in: converter.out1\n',
      'mistakes[1].changes["desk.a.in"]',
      'desk.a.in: converter.out1',
      'converter.out1 plugged into both desk.a.in and rack.boost.in',
    ],
  ])('refuses %s', (_what, from, to, place, part, found) => {
    let text = replaced(SCENARIO, from, to);
    if (to.includes('rack.boost.in'))
      text = replaced(text, 'desk.b.ears: -20', 'desk.a.in: converter.out1');
    const [problem, ...more] = problemsOf(() => parseScenario('f', text, findRig));
    expect(problem).toMatchObject({ place, line: lineWith(text, part), found });
    expect(more).toEqual([]);
  });

  test('refuses a file that is too long', () => {
    const text = `${SCENARIO}#${' '.repeat(MAX_FILE_LENGTH)}`;
    expect(problemsOf(() => parseScenario('f', text, findRig))).toHaveLength(1);
  });

  test('lists every problem at once: three', () => {
    const text = replaced(
      replaced(replaced(SCENARIO, 'follow: viola', 'follow: cello'), 'desk.*.late', 'desk.late'),
      'fails: [no-horn]',
      'fails: [none]',
    );
    expect(
      problemsOf(() => parseScenario('f', text, findRig))
        .map(({ place }) => place)
        .sort(),
    ).toEqual(['follow', 'mistakes[1].fails', 'open[1]']);
  });
});

describe('grade()', () => {
  test('passes the solution: 2 + 1 + 4 = 7 of 7', () => {
    expect(grade(scenario, scenario.solution)).toMatchObject({
      score: 7,
      of: 7,
      movedLocks: [],
      passed: true,
    });
  });

  test('fails the start: only the horn is right, 4 of 7', () => {
    const verdict = grade(scenario, scenario.start);
    expect(verdict).toMatchObject({ score: 4, of: 7, passed: false });
    expect(verdict.results.map(({ check, holds }) => [check.id, holds])).toEqual([
      ['heard', false],
      ['holds-still', false],
      ['no-horn', true],
    ]);
  });

  test('gives every proof the checks that it was written to fail, and no other', () => {
    for (const { board, fails, name } of scenario.proofs) {
      const failed = grade(scenario, board).results.flatMap(({ check, holds }) =>
        holds ? [] : [check.id],
      );
      expect(failed, name).toEqual(fails);
    }
  });

  test('fails a board on which a locked control was moved, whatever is heard', () => {
    const board = { ...scenario.solution, 'desk.b.mute': true };
    expect(grade(scenario, board)).toMatchObject({
      score: 7,
      of: 7,
      movedLocks: ['desk.b.mute'],
      passed: false,
    });
    const { 'desk.a.fader': _put, ...fromDefault } = scenario.solution;
    expect(grade(scenario, fromDefault)).toMatchObject({
      movedLocks: ['desk.a.fader'],
      passed: false,
    });
  });
});
