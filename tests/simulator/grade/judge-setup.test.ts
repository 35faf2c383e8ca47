import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import type { Claim } from '../../../simulator/grade/check.ts';
import { strangersIn } from '../../../simulator/grade/check-claim.ts';
import { holds } from '../../../simulator/grade/holds.ts';
import { judge } from '../../../simulator/grade/judge.ts';
import type { Judgement } from '../../../simulator/grade/verdict.ts';
import { noiseAt } from '../../../simulator/solve/noise.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const hear = (board: Board) => ({ setup: { rig, board }, solution: simulate({ rig, board }) });

/** A judgement, which the short way to find out whether a claim holds has to agree with. */
function judged(claim: Claim, board: Board = {}): Judgement {
  const judgement = judge(claim, hear(board));
  expect(holds(claim, hear(board))).toBe(judgement.holds);
  return judgement;
}

const HOWLING: Board = { 'desk.a.late': 0, 'desk.c.in': 'desk.late.out', 'desk.c.late': 1 };
const SILENT: Board = { 'box.viola.mute': true, 'box.horn.mute': true, 'box.organ.mute': true };

describe('judge() headroom', () => {
  const everywhere = (minDb: number): Claim => ({ kind: 'headroom', minDb });
  const behindTheTrim = (minDb: number): Claim => ({
    kind: 'headroom',
    at: 'desk.a.trim',
    minDb,
  });

  test('holds while the stage with the least keeps it: 21 − (4 + 12) = 5 dB at the converter', () => {
    expect(judged(everywhere(4.9))).toMatchObject({
      holds: true,
      heard: {
        kind: 'headroom',
        least: { stage: 'converter.out1', headroom: expect.closeTo(5, 9) },
      },
    });
  });

  test('fails where one stage has less, and names whose peaks and what raises them: 24 − (4 + 7 + 12) = 1 dB', () => {
    const {
      holds: isHeld,
      heard,
      reasons,
    } = judged(everywhere(4.9), {
      'desk.a.trim': 7,
      'desk.a.fader': -20,
    });
    expect(isHeld).toBe(false);
    expect(heard).toMatchObject({
      least: { place: 'desk.a.trim', headroom: expect.closeTo(1, 9) },
    });
    expect(reasons).toMatchObject([
      { code: 'driven', by: { place: 'desk.a.trim', clip: 24 }, loudest: ['viola'] },
      { code: 'changes-most', place: 'desk.a.trim', gain: expect.closeTo(7, 9) },
    ]);
  });

  test('at one place goes by that place alone: 24 − (4 − 3 + 12) = 11 dB', () => {
    const board = { 'desk.a.trim': -3, 'desk.b.trim': 20 };
    expect(judged(behindTheTrim(10.9), board).holds).toBe(true);
    expect(judged(behindTheTrim(11.1), board).holds).toBe(false);
  });

  test('silence keeps any headroom; a howling loop keeps none, and is named', () => {
    expect(judged(everywhere(100), SILENT).holds).toBe(true);
    expect(judged(behindTheTrim(100), SILENT)).toMatchObject({
      holds: true,
      heard: { least: { headroom: Infinity } },
    });
    expect(judged(everywhere(0), HOWLING)).toMatchObject({
      holds: false,
      heard: { least: undefined },
      reasons: [{ code: 'loop', stable: false }],
    });
  });

  test('a place without an active stage cannot be asked about', () => {
    const strangers = strangersIn({ kind: 'headroom', at: 'desk.a.pan', minDb: 3 }, rig);
    expect(strangers).toMatchObject([{ at: ['at'], found: '"desk.a.pan"' }]);
    expect(strangersIn(behindTheTrim(3), rig)).toEqual([]);
    expect(strangersIn({ kind: 'headroom', at: 'desk.main.fader.l', minDb: 3 }, rig)).toEqual([]);
  });
});

describe('judge() above-noise', () => {
  const claim = (minDb: number): Claim => ({
    kind: 'above-noise',
    source: 'viola',
    output: 'tape',
    minDb,
  });
  const ratioAt = (board: Board): number => {
    const { solution } = hear(board);
    return 4 + Number(board['desk.a.fader'] ?? 0) - Number(noiseAt(solution, 'out.tape'));
  };

  test('holds up to the distance of level and noise, and not beyond it', () => {
    const board = { 'desk.a.fader': -9, 'desk.a.pan': -1 };
    const distance = ratioAt(board);
    expect(judged(claim(distance - 0.05), board)).toMatchObject({
      holds: true,
      heard: { kind: 'above-noise', level: expect.closeTo(-5, 9) },
    });
    const { holds: isHeld, reasons } = judged(claim(distance + 0.05), board);
    expect(isHeld).toBe(false);
    expect(reasons).toMatchObject([
      { code: 'noise-from', output: 'out.tape' },
      { code: 'changes-most', place: 'desk.a.fader', gain: expect.closeTo(-9, 9) },
    ]);
  });

  test('a level that is pulled first and pushed later stands nearer to the noise', () => {
    const late = { 'desk.a.trim': -12, 'desk.main.fader': 12 };
    const { heard } = judged(claim(0), late);
    expect(heard).toMatchObject({ level: expect.closeTo(4, 9) });
    const noise = heard.kind === 'above-noise' ? Number(heard.noise) : Number.NaN;
    expect(noise).toBeGreaterThan(Number(noiseAt(hear({}).solution, 'out.tape')) + 6);
  });

  test('silence and a howling loop stand above nothing, and say why', () => {
    expect(judged(claim(0), { 'desk.a.mute': true })).toMatchObject({
      holds: false,
      heard: { level: -Infinity },
      reasons: [{ code: 'noise-from' }, { code: 'stops', stop: { places: ['desk.a.mute'] } }],
    });
    expect(judged(claim(0), { ...HOWLING, 'desk.c.main': true })).toMatchObject({
      holds: false,
      heard: { level: undefined },
      reasons: [{ code: 'loop', stable: false }],
    });
  });
});

describe('judge() no-finding', () => {
  const twice: Board = { 'desk.a.band': true };
  const soft: Board = { 'box.viola.fader': -3 };

  test('of a kind holds without one, whatever else there is, and tells those of the kind', () => {
    const claim: Claim = { kind: 'no-finding', code: 'arrives-twice' };
    expect(judged(claim, soft)).toMatchObject({ holds: true, heard: { found: [] } });
    expect(judged(claim, twice)).toMatchObject({
      holds: false,
      heard: { kind: 'findings', found: [{ code: 'arrives-twice', signal: 'viola' }] },
      reasons: [{ code: 'finding', finding: { code: 'arrives-twice' } }],
    });
  });

  test('of no kind asks for no fault; what is only worth a look may stay', () => {
    const claim: Claim = { kind: 'no-finding' };
    const patched: Board = { ...SILENT, 'box.organ.to': 'none' };
    const faults = judged(claim, { ...patched, 'box.viola.to': 'none' }).reasons;
    expect(faults.length).toBeGreaterThan(0);
    for (const reason of faults) {
      expect(reason).toMatchObject({ code: 'finding', finding: { severity: 'fault' } });
    }
    expect(judged({ kind: 'no-finding', code: 'box-fader' }, soft).holds).toBe(false);
    expect(judged(claim, soft).reasons).toEqual(judged(claim).reasons);
  });
});
