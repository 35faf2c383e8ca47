import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Board, simulate } from '../../simulator/index.ts';
import { CEILING } from '../../src/audition/calibration.ts';
import { listenAt } from '../../src/audition/listening.ts';
import { findBrowser } from '../config/find-browser.ts';
import { type AudioPage, openAudioPage } from './audio-page.ts';
import type { Change, ChangeOrder } from './render-changes.ts';
import { deskRig, SETUPS } from './setups.ts';

/** What comes out while a desk is turned, rendered by a browser: no click, and never too loud. */

const found = await findBrowser().catch((error: Error) => error);
if (found instanceof Error) console.warn(`SKIPPED: hearing needs a browser.\n${found.message}`);

describe.skipIf(found instanceof Error)('while a desk is turned', () => {
  let page: AudioPage | undefined;
  beforeAll(async () => {
    if (!(found instanceof Error)) page = await openAudioPage(found);
  }, 60_000);
  afterAll(() => page?.close());

  const graphOf = (board: Board, place = 'out.capture') =>
    listenAt(simulate({ rig: deskRig, board }), place).graph;
  const render = async (order: ChangeOrder): Promise<Change[]> =>
    (await page?.call<ChangeOrder, Change[]>(
      'tests/audition/render-changes.ts',
      'renderChanges',
      order,
    )) ?? [];

  test('no sample goes beyond the ceiling, whatever the desk does and whatever is recorded', {
    timeout: 120_000,
  }, async () => {
    const loud: Board = { 'desk.ch1.fader': 10, 'desk.ch1.trim': 20, 'desk.main.fader': 10 };
    const boards: Board[] = [
      loud,
      { 'desk.main.mute': true },
      { ...loud, 'desk.ret1.fader': 10, 'desk.ch1.aux3': 10 },
      { 'desk.ch1.aux3': 10, 'desk.ret1.aux3': -1.5 },
      ...Object.values(SETUPS).map(({ board }) => board),
    ];
    const changes = await render({
      graphs: boards.map((board) => graphOf(board)),
      frames: 12_800,
      // As a recording it would stand 40 dB above its RMS of 1.
      sine: { frequency: 997, amplitude: 100 },
    });
    const peaks = changes.map(({ peak }) => peak);
    expect(peaks).toHaveLength(boards.length);
    for (const peak of peaks) expect(peak).toBeLessThanOrEqual(CEILING);
    expect(Math.max(...peaks)).toBeCloseTo(CEILING, 6);
  });

  const QUIET: Board = { 'desk.main.fader': -20 };
  test.each<readonly [string, Board, Board]>([
    ['a fader', QUIET, { ...QUIET, 'desk.ch1.fader': -12 }],
    ['a mute', QUIET, { ...QUIET, 'desk.ch1.mute': true }],
    ['a polarity', QUIET, { ...QUIET, 'desk.ch3.polarity': true }],
    [
      'a loop that grows, and is muted,',
      QUIET,
      { ...QUIET, 'desk.ch1.aux3': -6, 'desk.ret1.aux3': 6 },
    ],
    ['a cord out', QUIET, { ...QUIET, 'desk.ch8.in': 'none' }],
    [
      'a filter',
      { ...QUIET, 'rack.eq.in': 'desk.ch8.insert.send', 'desk.ch8.insert.return': 'rack.eq.out' },
      {
        ...QUIET,
        'rack.eq.in': 'desk.ch8.insert.send',
        'desk.ch8.insert.return': 'rack.eq.out',
        'rack.eq.low': 9,
      },
    ],
  ])(
    '$0 moves without a click, there and back: no step is 1.05 times one at rest',
    async (_what, before, after) => {
      const graphs = [before, before, after, after, before, before].map((board) => graphOf(board));
      const changes = await render({
        graphs,
        frames: 9600,
        sine: { frequency: 120, amplitude: Math.SQRT2 },
      });
      const steps = changes.map(({ step }) => step);
      const atRest = Math.max(steps[1] ?? 0, steps[3] ?? 0, steps[5] ?? 0);
      expect(atRest).toBeGreaterThan(0);
      expect(Math.max(steps[2] ?? 1, steps[4] ?? 1)).toBeLessThan(1.05 * atRest);
    },
  );

  test('a change of the place that is heard moves without a click', async () => {
    const board = { ...QUIET, 'desk.ch1.aux1': -20 };
    const changes = await render({
      graphs: [
        graphOf(board),
        graphOf(board),
        graphOf(board, 'out.headphones-a'),
        graphOf(board, 'out.headphones-a'),
      ],
      frames: 9600,
      sine: { frequency: 120, amplitude: Math.SQRT2 },
    });
    const steps = changes.map(({ step }) => step);
    expect(steps[2]).toBeLessThan(1.05 * Math.max(steps[1] ?? 0, steps[3] ?? 0));
  });
});
