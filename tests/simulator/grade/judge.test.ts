import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import type { Claim } from '../../../simulator/grade/check.ts';
import { judge } from '../../../simulator/grade/judge.ts';
import type { Judgement, Reason } from '../../../simulator/grade/verdict.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const judged = (claim: Claim, board: Board = {}): Judgement => {
  const setup = { rig, board };
  return judge(claim, { setup, solution: simulate(setup) });
};

/** The first reason, which tells most, without its paths. */
function firstReason({ reasons }: Judgement): Partial<Reason> & { code?: string } {
  const [first] = reasons;
  if (!first) return {};
  return Object.fromEntries(Object.entries(first).filter(([key]) => !/^paths?$/.test(key)));
}

const viola = { source: 'viola', output: 'tape' } as const;
const LOOP: Board = { 'desk.a.late': 0, 'desk.c.in': 'desk.late.out', 'desk.c.late': 2 };
const INSERT: Board = {
  'rack.squash.in': 'desk.a.insert.send',
  'desk.a.insert.return': 'rack.squash.out',
};
const PARALLEL: Board = {
  'desk.a.late': 0,
  'rack.squash.in': 'desk.late.out',
  'desk.c.in': 'rack.squash.out',
};

describe('judge() reaches', () => {
  const claim: Claim = { kind: 'reaches', ...viola, minDbu: 1, maxDbu: 4.5 };

  test('holds at 4 dBu between 1 and 4.5, and shows the way', () => {
    const { holds, heard, reasons } = judged(claim);
    expect(holds).toBe(true);
    expect(heard).toEqual({ kind: 'level', level: expect.closeTo(4, 9) });
    expect(reasons.map(({ code }) => code)).toEqual(['arrives']);
  });

  test('fails at 4 − 9 = −5 dBu, by the fader that lowers it most', () => {
    const judgement = judged(claim, {
      'desk.a.fader': -9,
      'desk.a.trim': -2,
      'desk.a.pan': -1,
      'desk.main.fader': 2,
    });
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({
      code: 'changes-most',
      place: 'desk.a.fader',
      gain: expect.closeTo(-9, 9),
    });
  });

  test('fails at 4 + 7 = 11 dBu, by the trim that raises it most', () => {
    const judgement = judged(claim, { 'desk.a.trim': 7, 'desk.a.pan': -1 });
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({
      code: 'changes-most',
      place: 'desk.a.trim',
      gain: expect.closeTo(7, 9),
    });
  });

  test('fails doubled at 4 + 6.02 dBu, where the two ways part and meet', () => {
    const judgement = judged(claim, { 'desk.a.band': true });
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({
      code: 'parts',
      at: 'desk.a.pan',
      meets: 'desk.main.sum',
    });
  });

  test('fails in silence, and names what is closed', () => {
    const judgement = judged(claim, { 'desk.a.mute': true });
    expect(judgement).toMatchObject({ holds: false, heard: { level: -Infinity } });
    expect(firstReason(judgement)).toMatchObject({
      code: 'stops',
      stop: { code: 'closed', places: ['desk.a.mute'] },
    });
  });

  test('fails without a level behind an unstable loop, and names the loop', () => {
    const judgement = judged(claim, LOOP);
    expect(judgement).toMatchObject({ holds: false, heard: { kind: 'level', level: undefined } });
    expect(firstReason(judgement)).toMatchObject({
      code: 'loop',
      stable: false,
      gain: expect.closeTo(2, 9),
    });
  });

  test('listens at any place by its address: −2 dBu of horn in its own strip', () => {
    const at = {
      kind: 'reaches',
      source: 'horn',
      output: 'desk.b.fader',
      minDbu: -2.1,
      maxDbu: -1.9,
    } as const;
    expect(judged(at).holds).toBe(true);
  });
});

describe('judge() absent', () => {
  const claim: Claim = { kind: 'absent', source: 'viola', output: 'cans' };

  test('holds in silence, and says where it stops', () => {
    const judgement = judged(claim);
    expect(judgement.holds).toBe(true);
    expect(firstReason(judgement)).toMatchObject({
      code: 'stops',
      stop: { places: ['desk.a.ears'] },
    });
  });

  test('fails at 4 − 40 = −36 dBu, by the way that it takes', () => {
    const judgement = judged(claim, { 'desk.a.ears': -40 });
    expect(judgement.holds).toBe(false);
    expect(judgement.heard).toEqual({ kind: 'level', level: expect.closeTo(-36, 9) });
    expect(firstReason(judgement).code).toBe('arrives');
  });
});

describe('judge() once', () => {
  const claim: Claim = { kind: 'once', ...viola };

  test('holds with one way, and does not count what a reverb made', () => {
    const { holds, heard } = judged(claim, { 'desk.a.wash': -3 });
    expect(holds).toBe(true);
    expect(heard).toEqual({ kind: 'arrivals', counts: [{ signal: 'viola', count: 1 }] });
  });

  test('fails with two, where they part and meet', () => {
    const judgement = judged(claim, { 'desk.a.band': true });
    expect(judgement).toMatchObject({ holds: false, heard: { counts: [{ count: 2 }] } });
    expect(firstReason(judgement)).toEqual({
      code: 'parts',
      at: 'desk.a.pan',
      meets: 'desk.main.sum',
    });
  });

  test('fails with none, and says where it stops', () => {
    const judgement = judged(claim, { 'desk.a.in': 'none' });
    expect(judgement).toMatchObject({ holds: false, heard: { counts: [{ count: 0 }] } });
    expect(firstReason(judgement)).toMatchObject({
      code: 'stops',
      stop: { code: 'no-way', ends: ['converter.out1'] },
    });
  });

  test('counts either side of a stereo track: one of them arrives', () => {
    const { holds, heard } = judged(
      { kind: 'once', source: 'organ', output: 'tape' },
      { 'desk.c.in': 'converter.out4' },
    );
    expect(holds).toBe(false);
    expect(heard).toMatchObject({
      counts: [
        { signal: 'organ.l', count: 0 },
        { signal: 'organ.r', count: 1 },
      ],
    });
  });
});

describe('judge() steady and follows', () => {
  const probe = { move: 'fader', of: 'viola', byDb: -10 } as const;
  const steady = (output: string): Claim => ({
    kind: 'steady',
    source: 'viola',
    output,
    probe,
    toleranceDb: 0.1,
  });
  const follows = (output: string): Claim => ({
    kind: 'follows',
    source: 'viola',
    output,
    probe,
    toleranceDb: 0.1,
  });
  const fed: Board = { 'desk.a.ears': -3, 'desk.a.late': -3 };

  test('a send before the fader is steady and does not follow: it leaves before the fader', () => {
    expect(judged(steady('cans'), fed)).toMatchObject({
      holds: true,
      heard: { kind: 'move', probeDb: -10 },
    });
    const judgement = judged(follows('cans'), fed);
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({
      code: 'misses-probe',
      control: 'desk.a.fader',
      leavesAt: 'desk.a.ears',
    });
  });

  test('a send after the fader follows and is not steady: it passes the fader', () => {
    const { holds, heard } = judged(follows('desk.late.out'), fed);
    expect(holds).toBe(true);
    expect(heard).toMatchObject({ before: expect.closeTo(1, 9), after: expect.closeTo(-9, 9) });
    const judgement = judged(steady('desk.late.out'), fed);
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({ code: 'passes-probe', control: 'desk.a.fader' });
  });

  test('what is silent is neither', () => {
    for (const claim of [steady('cans'), follows('cans')]) {
      const judgement = judged(claim);
      expect(judgement.holds).toBe(false);
      expect(firstReason(judgement)).toMatchObject({
        code: 'stops',
        stop: { places: ['desk.a.ears'] },
      });
    }
  });

  test('a fader without room for −10 dB goes up: −85 + 10 = −75 dB', () => {
    const { holds, heard } = judged(follows('tape'), { 'desk.a.fader': -85 });
    expect(holds).toBe(true);
    expect(heard).toMatchObject({ probeDb: 10 });
  });

  test('a fader without room for +8 dB goes down, and a trim at its top as well', () => {
    const up = { control: 'desk.a.fader', byDb: 8 } as const;
    const claim: Claim = { kind: 'follows', ...viola, probe: up, toleranceDb: 0.1 };
    expect(judged(claim, { 'desk.a.fader': 3 }).heard).toMatchObject({ probeDb: -8 });
    const trim = { move: 'trim', of: 'viola', byDb: 6 } as const;
    expect(judged({ ...claim, probe: trim }, { 'desk.a.trim': 20 })).toMatchObject({
      holds: true,
      heard: { probeDb: -6 },
    });
  });

  test('a closed fader cannot be moved, nor that of a source that comes in nowhere', () => {
    const shut = judged(
      { kind: 'steady', ...viola, probe: { control: 'desk.a.fader', byDb: -5 }, toleranceDb: 0.1 },
      { 'desk.a.fader': -Infinity },
    );
    expect(shut).toMatchObject({
      holds: false,
      heard: { kind: 'no-probe' },
      reasons: [{ code: 'no-probe', control: 'desk.a.fader' }],
    });
    const away = judged(steady('cans'), { 'desk.a.in': 'none' });
    expect(away).toMatchObject({ holds: false, reasons: [{ code: 'no-probe', source: 'viola' }] });
  });

  test('a strip without a trim cannot be probed by its trim', () => {
    const bare = smallRoom((text) => text.replace('[trim, polarity,', '[polarity,'));
    const setup = { rig: bare, board: {} };
    const claim: Claim = {
      kind: 'steady',
      ...viola,
      probe: { move: 'trim', of: 'viola', byDb: -10 },
      toleranceDb: 0.1,
    };
    expect(judge(claim, { setup, solution: simulate(setup) })).toMatchObject({
      holds: false,
      heard: { kind: 'no-probe' },
    });
  });

  test('a probe moves all strips that a source comes in on, and no other', () => {
    const board: Board = {
      'box.horn.to': 'out1',
      'desk.c.in': 'converter.out2',
      'desk.b.in': 'none',
      'box.viola.to': 'out1-2',
      'desk.c.ears': 0,
    };
    const claim: Claim = { kind: 'follows', ...viola, probe, toleranceDb: 0.1 };
    expect(judged(claim, board).holds).toBe(true);
    expect(judged({ ...claim, source: 'horn' }, board).holds).toBe(true);
  });

  test('follows within its tolerance: a limiter holds 9 of 10 dB back', () => {
    const board: Board = {
      ...PARALLEL,
      'desk.a.main': false,
      'rack.squash.threshold': -6,
      'rack.squash.ratio': 'inf',
    };
    const claim: Claim = { kind: 'follows', ...viola, probe, toleranceDb: 0.1 };
    const judgement = judged(claim, board);
    expect(judgement.holds).toBe(false);
    expect(judgement.heard).toMatchObject({
      before: expect.closeTo(-6, 9),
      after: expect.closeTo(-6, 9),
    });
  });
});

describe('judge() passes', () => {
  const claim = (...through: string[]): Claim => ({ kind: 'passes', ...viola, through });

  test('holds through an insert: the strip, the device, the strip again, the main bus', () => {
    expect(
      judged(claim('desk.a.insert.send', 'rack.squash', 'desk.a.fader', 'desk.main'), INSERT).holds,
    ).toBe(true);
    expect(judged(claim('desk.a', 'rack.squash', 'desk.a'), INSERT).holds).toBe(true);
    expect(judged(claim('rack.squash', 'desk.a'), INSERT).holds).toBe(true);
  });

  test('fails past the device, and names it', () => {
    const judgement = judged(claim('rack.squash'));
    expect(judgement).toMatchObject({ holds: false, heard: { kind: 'ways', all: 1, through: 0 } });
    expect(firstReason(judgement)).toEqual({ code: 'misses', stop: 'rack.squash' });
  });

  test('fails when only one of two ways passes it', () => {
    const judgement = judged(claim('rack.squash'), PARALLEL);
    expect(judgement).toMatchObject({ holds: false, heard: { all: 2, through: 1 } });
  });

  test('fails in the wrong order, and names both', () => {
    const judgement = judged(claim('desk.a.fader', 'rack.squash'), INSERT);
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({
      code: 'wrong-order',
      first: 'rack.squash',
      second: 'desk.a.fader',
    });
  });

  test('fails in silence', () => {
    const judgement = judged(claim('desk.a'), { 'desk.a.main': false });
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toMatchObject({
      code: 'stops',
      stop: { places: ['desk.a.main'] },
    });
  });
});

describe('judge() avoids', () => {
  const claim: Claim = { kind: 'avoids', ...viola, past: 'rack.squash' };

  test('holds past the device', () => {
    expect(judged(claim)).toMatchObject({ holds: true, heard: { all: 1, through: 0 } });
  });

  test('fails through it', () => {
    const judgement = judged(claim, INSERT);
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({ code: 'passes', stop: 'rack.squash' });
  });

  test('does not take a device for another whose name begins alike', () => {
    const alike = smallRoom((text) => text.replace('id: boost', 'id: squash-two'));
    const setup = {
      rig: alike,
      board: {
        'rack.squash-two.in': 'desk.a.insert.send',
        'desk.a.insert.return': 'rack.squash-two.out',
      },
    };
    expect(judge(claim, { setup, solution: simulate(setup) }).holds).toBe(true);
  });
});

describe('judge() dry-and-through', () => {
  const claim: Claim = { kind: 'dry-and-through', ...viola, through: 'rack.squash' };

  test('holds with a way past and a way through', () => {
    expect(judged(claim, PARALLEL)).toMatchObject({ holds: true, heard: { all: 2, through: 1 } });
  });

  test('fails with an insert: nothing arrives dry', () => {
    const judgement = judged(claim, INSERT);
    expect(judgement.holds).toBe(false);
    expect(firstReason(judgement)).toEqual({ code: 'passes', stop: 'rack.squash' });
  });

  test('fails without the device, and says where its input is cut off', () => {
    const judgement = judged(claim, { ...PARALLEL, 'desk.a.late': -Infinity });
    expect(judgement.holds).toBe(false);
    expect(judgement.reasons.map(({ code }) => code)).toEqual(['misses', 'stops']);
    expect(judgement.reasons[1]).toMatchObject({
      output: 'rack.squash.in',
      stop: { places: ['desk.a.late'] },
    });
  });

  test('fails when the device leads nowhere, and says where what leaves it stops', () => {
    const judgement = judged(claim, { ...PARALLEL, 'desk.c.fader': -Infinity });
    expect(judgement.reasons[1]).toMatchObject({
      code: 'stops',
      stop: { code: 'closed', places: ['desk.c.fader'] },
    });
  });

  test('fails past a strip that leads nowhere, which has no output place to say more of', () => {
    const past: Claim = { ...claim, through: 'desk.c' };
    const { holds, reasons } = judged(past, { ...PARALLEL, 'desk.c.fader': -Infinity });
    expect(holds).toBe(false);
    expect(reasons.map(({ code }) => code)).toEqual(['misses']);
  });
});

describe('judge() no-loop', () => {
  test('holds without, fails with one, stable or not, and names its places', () => {
    expect(judged({ kind: 'no-loop' })).toMatchObject({
      holds: true,
      heard: { kind: 'loops', count: 0 },
    });
    for (const sendDb of [-7, 2]) {
      const judgement = judged({ kind: 'no-loop' }, { ...LOOP, 'desk.c.late': sendDb });
      expect(judgement).toMatchObject({ holds: false, heard: { count: 1 } });
      expect(firstReason(judgement)).toMatchObject({
        code: 'loop',
        places: expect.arrayContaining(['desk.c.late', 'desk.late.out']),
        gain: expect.closeTo(sendDb, 9),
        stable: sendDb < 0,
      });
    }
  });
});
