import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { bayRoom } from '../bay-room.ts';

const rig = bayRoom();
const hear = (board: Board) => simulate({ rig, board });
const VIOLA = 4;
/** 100 Ω into so many inputs of 10 kΩ, against into one. */
const loss = (inputs: number) =>
  20 * Math.log10(10_000 / inputs / (100 + 10_000 / inputs) / (10_000 / 10_100));

describe('a mult', () => {
  const SPLIT = { 'bay.split.in': 'converter.out1', 'desk.a.in': 'bay.split.out1' };

  test('with one input plugged into it loses nothing', () => {
    expect(levelOf(hear(SPLIT), 'viola', 'desk.a.in')).toBeCloseTo(VIOLA, 9);
    expect(levelOf(hear(SPLIT), 'viola', 'bay.split.out2')).toBeCloseTo(VIOLA, 9);
  });

  test('feeds all that is plugged into it, and all load what feeds it', () => {
    const solution = hear({
      ...SPLIT,
      'rack.squash.in': 'bay.split.out2',
      'out.cans': 'bay.split.out3',
    });
    for (const place of ['desk.a.in', 'rack.squash.in', 'out.cans', 'bay.split.in']) {
      expect(levelOf(solution, 'viola', place)).toBeCloseTo(VIOLA + loss(3), 9);
    }
  });

  test('behind a mult counts by what is plugged into it', () => {
    const solution = hear({
      ...SPLIT,
      'bay.spare.in': 'bay.split.out2',
      'rack.squash.in': 'bay.spare.out1',
      'out.cans': 'bay.spare.out2',
    });
    for (const place of ['desk.a.in', 'rack.squash.in', 'out.cans']) {
      expect(levelOf(solution, 'viola', place)).toBeCloseTo(VIOLA + loss(3), 9);
    }
  });

  test('that feeds itself is silent, and no loop', () => {
    for (const board of [
      { 'bay.split.in': 'bay.split.out1', 'desk.c.in': 'bay.split.out2' },
      {
        'bay.split.in': 'bay.spare.out1',
        'bay.spare.in': 'bay.split.out1',
        'desk.c.in': 'bay.split.out2',
      },
    ] satisfies Board[]) {
      const solution = hear(board);
      expect(levelAt(solution, 'desk.c.in')).toBe(-Infinity);
      expect(solution.loops).toEqual([]);
    }
  });
});

describe('an output that a half-normal splits', () => {
  test('is loaded by both inputs, and by one alone once the normal is broken', () => {
    // Output 3 carries the left of the organ, at −5 dBu.
    const cord = { 'out.cans': 'converter.out3' };
    expect(levelAt(hear(cord), 'out.cans')).toBeCloseTo(-5 + loss(2), 9);
    expect(levelAt(hear(cord), 'desk.c.in')).toBeCloseTo(-5 + loss(2), 9);
    expect(levelAt(hear({ ...cord, 'desk.c.in': 'open' }), 'out.cans')).toBeCloseTo(-5, 9);
  });

  test('loses what the impedances of the bay make of it', () => {
    const matched = bayRoom((text) => `${text}  outputOhms: 600\n  inputOhms: 600\n`);
    const solution = simulate({ rig: matched, board: { 'out.cans': 'converter.out3' } });
    // A third of the voltage instead of a half.
    expect(levelAt(solution, 'out.cans')).toBeCloseTo(-5 + 20 * Math.log10(2 / 3), 9);
  });
});
