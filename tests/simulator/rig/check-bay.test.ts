import { describe, expect, test } from 'vitest';
import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { jacks } from '../../../simulator/rig/jacks.ts';
import { fullLabel } from '../../../simulator/rig/labels.ts';
import { bayRoom } from '../bay-room.ts';

const rig = bayRoom();

function problemsAfter(from: string, to: string): readonly Problem[] {
  try {
    bayRoom((text) => {
      if (!text.includes(from)) throw new Error(`The bay has no ${from}.`);
      return text.replace(from, to);
    });
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

const FIRST = '{ top: converter.out1, bottom: desk.a.in }';
const SPLIT = '{ id: split, label: Split, outputs: 3 }';

describe('reading a bay refuses', () => {
  test.each<[what: string, from: string, to: string, at: string, found: string, hint: RegExp]>([
    [
      'a jack that is not there',
      FIRST,
      '{ top: converter.out9, bottom: desk.a.in }',
      '[0].top',
      '"converter.out9"',
      /Nearest: converter\.out/,
    ],
    [
      'an input as a top',
      FIRST,
      '{ top: desk.c.insert.return, bottom: desk.a.in }',
      '[0].top',
      'desk.c.insert.return, which is an input jack',
      /Outputs stand at the top/,
    ],
    [
      'an output as a bottom',
      FIRST,
      '{ top: converter.out1, bottom: converter.out6 }',
      '[0].bottom',
      'converter.out6, which is an output jack',
      /inputs at the bottom/,
    ],
    [
      'a stereo place without its side',
      FIRST,
      '{ top: desk.main.out, bottom: desk.a.in }',
      '[0].top',
      '"desk.main.out"',
      /two sides: desk\.main\.out\.l, desk\.main\.out\.r/,
    ],
    [
      'a device in two places',
      FIRST,
      '{ top: converter.out2, bottom: desk.a.in }',
      '[1].top',
      'converter.out2 at Lines 1 and at Lines 2',
      /mult/,
    ],
    ['a point without jacks', FIRST, '{}', '[0]', 'neither', /^$/],
    [
      'half a point in a row with normals',
      FIRST,
      '{ top: converter.out1 }',
      '[0]',
      'no bottom',
      /open row/,
    ],
  ])('%s', (_, from, to, at, found, hint) => {
    const problems = problemsAfter(from, to);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ place: `bay.rows[0].points${at}`, found });
    expect(problems[0]?.hint ?? '').toMatch(hint);
  });

  test.each([
    ['two rows with one id', 'id: more', 'id: lines', 'bay.rows[1].id'],
    ['two mults with one id', 'id: spare', 'id: split', 'bay.mults[1].id'],
    [
      'a mult with one output',
      SPLIT,
      '{ id: split, label: Split, outputs: 1 }',
      'bay.mults[0].outputs',
    ],
  ])('%s', (_, from, to, at) => {
    expect(problemsAfter(from, to)).toMatchObject([{ place: at }]);
  });

  test('an open plug in a jack without a normal', () => {
    expect(() => bayRoom((text) => text.replace('bay:', '  rack.squash.in: open\nbay:'))).toThrow(
      InputError,
    );
  });
});

describe('controls() of a bay', () => {
  test('offer an open plug where there is a normal to break', () => {
    const offered = [...controls(rig).values()].flatMap((control) =>
      control.kind === 'cord' && control.options.some(({ value }) => value === 'open')
        ? [control.address]
        : [],
    );
    expect(offered).toContain('desk.a.in');
    expect(offered).toContain('desk.c.insert.return');
    expect(offered).not.toContain('desk.b.insert.return');
    expect(offered).not.toContain('rack.squash.in');
  });

  test('name the jacks of a mult', () => {
    expect(jacks(rig).inputs).toContain('bay.split.in');
    expect(jacks(rig).outputs.filter((jack) => jack.startsWith('bay.split.'))).toEqual([
      'bay.split.out1',
      'bay.split.out2',
      'bay.split.out3',
    ]);
    expect(fullLabel(rig, 'bay.split.in')).toBe('Split input');
    expect(fullLabel(rig, 'bay.spare.out2')).toBe('Spare mult output 2');
  });
});
