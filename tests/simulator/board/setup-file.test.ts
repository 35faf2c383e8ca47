import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { parse, stringify } from 'yaml';
import { parseRig, parseSetup, setupData } from '../../../simulator/board/setup-file.ts';
import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import { misfitOf } from '../../../simulator/rig/control.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { arbitrarySetup, RUNS } from '../arbitrary-setup.ts';
import { SMALL_ROOM, smallRoomSetup } from '../small-room.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

function problemsIn(text: string): readonly Problem[] {
  try {
    parseSetup('file.yaml', text);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

/** The line of the file, from 1, that holds this text. */
const lineWith = (text: string, part: string): number =>
  text.slice(0, text.indexOf(part)).split('\n').length;

describe('parseSetup()', () => {
  test('reads a board: what is off its default, closed as −∞', () => {
    const text = smallRoomSetup('desk.a.fader: -.inf', 'desk.b.fader: -2.5', 'desk.c.fader: 0');
    const { board, rig, title } = parseSetup('file.yaml', text);
    expect(board).toEqual({ 'desk.a.fader': -Infinity, 'desk.b.fader': -2.5 });
    expect(rig.id).toBe('shed');
    expect(title).toBeUndefined();
  });

  test('reads the same setup from JSON as from YAML', () => {
    const yaml = `title: Both\n${smallRoomSetup('desk.a.ears: -.inf', 'desk.b.ears: "-inf"', 'desk.b.fader: -.inf', 'desk.b.in: none')}`;
    const json = JSON.stringify(parse(yaml), (_key, value: unknown) =>
      value === -Infinity ? '-inf' : value,
    );
    expect(parseSetup('file.json', json)).toEqual(parseSetup('file.yaml', yaml));
  });

  test('parseRig() reads the same rig as parseSetup()', () => {
    expect(parseRig('rig.yaml', SMALL_ROOM)).toEqual(parseSetup('f', smallRoomSetup()).rig);
  });

  test('setupData() written as JSON or YAML reads back as the same setup', () => {
    fc.assert(
      fc.property(
        arbitrarySetup(),
        fc.option(fc.constant('A title'), { nil: undefined }),
        (setup, title) => {
          const data = setupData({ ...setup, ...(title ? { title } : {}) });
          const expected = { ...setup, ...(title ? { title } : {}) };
          expect(parseSetup('file.json', JSON.stringify(data))).toEqual(expected);
          expect(parseSetup('file.yaml', stringify(data))).toEqual(expected);
        },
      ),
      { ...RUNS, numRuns: 40 },
    );
  });
});

describe('parseSetup() refuses, at its place and line', () => {
  const good = smallRoomSetup('desk.a.fader: -3');
  test.each<[what: string, text: string, place: string, part: string, found: string]>([
    [
      'another format',
      good.replace('tap-and-sum/setup', 'tap-and-sum/rig'),
      'format',
      'format:',
      '"tap-and-sum/rig"',
    ],
    ['another version', good.replace('version: 1', 'version: 2'), 'version', 'version:', '2'],
    [
      'an unknown key',
      good.replace('  converter:', '  mixer:\n    a: 1\n  converter:'),
      'rig.mixer',
      'mixer:',
      'the unknown key mixer',
    ],
    [
      'a level above full scale',
      good.replace('levelDbfs: -23', 'levelDbfs: 1'),
      'rig.box.tracks[1].levelDbfs',
      'levelDbfs: 1',
      '1',
    ],
    [
      'an id in capitals',
      good.replace('id: horn', 'id: Horn'),
      'rig.box.tracks[1].id',
      'id: Horn',
      '"Horn"',
    ],
    [
      'a rig that contradicts itself',
      good.replace('id: horn', 'id: viola'),
      'rig.box.tracks[1].id',
      'label: Horn',
      '"viola" a second time',
    ],
    [
      'no such control',
      smallRoomSetup('desk.a.fader: -3', 'desk.a.fadr: -2'),
      'board["desk.a.fadr"]',
      'desk.a.fadr',
      '"desk.a.fadr"',
    ],
    [
      'a value out of range',
      smallRoomSetup('desk.a.mute: true', 'desk.a.fader: 12'),
      'board["desk.a.fader"]',
      'desk.a.fader: 12',
      '12',
    ],
    [
      'a value of the wrong type',
      smallRoomSetup('desk.a.mute: "on"'),
      'board["desk.a.mute"]',
      'desk.a.mute:',
      '"on"',
    ],
    [
      'a closed trim',
      smallRoomSetup('desk.a.trim: -.inf'),
      'board["desk.a.trim"]',
      'desk.a.trim:',
      '"-inf"',
    ],
    [
      'an infinite fader',
      smallRoomSetup('desk.a.fader: .inf'),
      'board["desk.a.fader"]',
      'desk.a.fader:',
      '"inf"',
    ],
    [
      'no such jack',
      smallRoomSetup('desk.a.in: converter.out9'),
      'board["desk.a.in"]',
      'desk.a.in: converter.out9',
      '"converter.out9"',
    ],
    [
      'an output with two cords',
      smallRoomSetup('desk.c.in: converter.out1'),
      'board["desk.c.in"]',
      'desk.c.in: converter.out1',
      'converter.out1 plugged into both desk.a.in and desk.c.in',
    ],
    [
      'a map as a value',
      smallRoomSetup('desk.a.fader: { at: 1 }'),
      'board["desk.a.fader"]',
      'desk.a.fader: {',
      'a map of keys',
    ],
    [
      'a long title',
      `title: ${'t'.repeat(121)}\n${good}`,
      'title',
      'title:',
      `"${'t'.repeat(56)}…`,
    ],
  ])('%s', (_what, text, place, part, found) => {
    const [problem, ...more] = problemsIn(text);
    expect(problem).toMatchObject({ place, found, line: lineWith(text, part) });
    expect(more).toEqual([]);
  });

  test.each(['__proto__', 'constructor', 'prototype'])('the key %s on a board', (key) => {
    const text = smallRoomSetup('desk.a.fader: -3', `${key}: 4`);
    expect(problemsIn(text)).toMatchObject([{ place: 'board', line: lineWith(text, `${key}:`) }]);
  });

  test.each([
    ['desk.a.fadr: -2', 'Nearest: desk.a.fader, desk.b.fader, desk.c.fader.'],
    ['rack.squash.treshold: -2', /^Nearest: rack\.squash\.threshold,/],
    ['desk.c.in: converter.out06', /^Nearest: converter\.out6,/],
    ['out.tape.l: desk.main.l', /desk\.main\.out\.l/],
  ])('%s with the nearest names as its hint', (line, hint) => {
    const [problem] = problemsIn(smallRoomSetup(line));
    expect(problem?.hint).toMatch(hint);
  });

  test('a board for another rig, with each of 200 entries that do not fit at its line', () => {
    const misfits = Array.from({ length: 50 }, (_, index) => [
      `desk.ch${index}.fader: -3`,
      `rack.unit${index}.in: desk.a.insert.send`,
      `box.viola.send${index}: -6`,
      `out.booth${index}: desk.late.out`,
    ]).flat();
    const unfit = [
      ...misfits.slice(0, 196),
      'desk.a.fader: 40',
      'desk.b.mute: 1',
      'box.stack.to: out16',
      'desk.c.in: converter.out16',
    ];
    const text = smallRoomSetup('desk.a.trim: 3', ...unfit, 'desk.b.fader: -4');
    const problems = problemsIn(text);
    expect(unfit).toHaveLength(200);
    expect(problems.map(({ place, line }) => [place, line])).toEqual(
      unfit.map((entry) => [`board["${entry.split(':')[0]}"]`, lineWith(text, `  ${entry}`)]),
    );
  });

  test('thousands of unknown addresses in a moment', { timeout: 20_000 }, () => {
    const lines = Array.from(
      { length: 3_000 },
      (_, index) => `desk.strip${index}.fader${'x'.repeat(50)}: 1`,
    );
    expect(problemsIn(smallRoomSetup(...lines))).toHaveLength(3_000);
  });
});

describe('parseSetup() of anything', () => {
  /** Either a setup whose every entry fits, or InputError with at least one problem. */
  function expectSetupOrInputError(text: string): 'setup' | 'refused' {
    try {
      const { rig, board } = parseSetup('any', text);
      for (const [address, value] of Object.entries(board)) {
        const control = controls(rig).get(address);
        expect(control && misfitOf(control, value)).toBeUndefined();
        expect(control?.default).not.toBe(value);
      }
      const plugged = [...controls(rig).values()].flatMap((control) => {
        const value = board[control.address] ?? control.default;
        return control.kind === 'cord' && value !== 'none' ? [value] : [];
      });
      expect(new Set(plugged).size).toBe(plugged.length);
      return 'setup';
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(error.problems.length).toBeGreaterThan(0);
      return 'refused';
    }
  }

  test('random text and random JSON', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.string(), fc.json()), (text) => {
        expect(expectSetupOrInputError(text)).toBe('refused');
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  type Data = { [key: string]: Data } | Data[] | string | number | boolean | null;
  const isBranch = (data: Data): data is { [key: string]: Data } | Data[] =>
    typeof data === 'object' && data !== null;
  /** All branches of some data, from the root. */
  const branchesOf = (data: Data): ({ [key: string]: Data } | Data[])[] =>
    isBranch(data) ? [data, ...Object.values(data).flatMap(branchesOf)] : [];

  const garbage: fc.Arbitrary<Data> = fc.oneof(
    fc.constantFrom<Data>(
      null,
      true,
      -1,
      0,
      1.5,
      1e9,
      '',
      'none',
      'main',
      'viola',
      'desk.a.in',
      '-inf',
      [],
      {},
    ),
    fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Data>,
  );
  interface Mutation {
    readonly branch: number;
    readonly key: number;
    readonly how: 'delete' | 'replace' | 'insert' | 'swap' | 'repeat';
    readonly value: Data;
    readonly name: string;
  }
  const mutation: fc.Arbitrary<Mutation> = fc.record({
    branch: fc.nat(),
    key: fc.nat(),
    how: fc.constantFrom<Mutation['how']>('delete', 'replace', 'insert', 'swap', 'repeat'),
    value: garbage,
    name: fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom('__proto__', 'id', 'desk.a.fader', 'toString'),
    ),
  });

  function mutate(root: Data, { branch, key, how, value, name }: Mutation): void {
    const branches = branchesOf(root);
    const chosen = branches[branch % Math.max(1, branches.length)];
    if (!chosen) return;
    const keys = Object.keys(chosen);
    const at = keys[key % Math.max(1, keys.length)];
    const map = chosen as { [key: string]: Data };
    if (how === 'insert' || at === undefined) {
      if (Array.isArray(chosen)) chosen.push(value);
      else
        Object.defineProperty(map, name, {
          value,
          enumerable: true,
          configurable: true,
          writable: true,
        });
    } else if (how === 'delete') {
      if (Array.isArray(chosen)) chosen.splice(Number(at), 1);
      else delete map[at];
    } else if (how === 'swap') {
      const other = keys[(key + 1) % keys.length] ?? at;
      [map[at], map[other]] = [map[other] ?? null, map[at] ?? null];
    } else if (how === 'repeat' && Array.isArray(chosen)) {
      chosen.push(structuredClone(map[at] ?? null));
    } else {
      map[at] = value;
    }
  }

  test('a good setup with a few random mutations', { timeout: 30_000 }, () => {
    const good = parse(
      smallRoomSetup(
        'desk.a.fader: -3',
        'desk.a.ears: "-inf"',
        'rack.boost.in: desk.a.insert.send',
      ),
    ) as Data;
    const seen = { setup: 0, refused: 0 };
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 3 }), (mutations) => {
        const data = structuredClone(good);
        for (const one of mutations) mutate(data, one);
        seen[expectSetupOrInputError(JSON.stringify(data))] += 1;
      }),
      { seed: 63, numRuns: 800 },
    );
    expect(seen.setup).toBeGreaterThan(30);
    expect(seen.refused).toBeGreaterThan(400);
  });

  test('a good setup with random characters put in or taken out', { timeout: 30_000 }, () => {
    const good = smallRoomSetup('desk.a.fader: -3', 'desk.b.in: none');
    const cut = fc.record({
      at: fc.nat({ max: good.length }),
      away: fc.nat({ max: 4 }),
      put: fc.string({ maxLength: 4, unit: fc.constantFrom(...'{}[]:,-?&*!|>\'"#\n ab1.') }),
    });
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 3 }), (cuts) => {
        const text = cuts.reduce(
          (now, { at, away, put }) => now.slice(0, at) + put + now.slice(at + away),
          good,
        );
        expect(['setup', 'refused']).toContain(expectSetupOrInputError(text));
      }),
      { seed: 88, numRuns: 400 },
    );
  });
});
