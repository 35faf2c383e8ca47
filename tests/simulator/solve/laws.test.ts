import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Setup } from '../../../simulator/board/board.ts';
import { withValues } from '../../../simulator/board/board.ts';
import { feedOf } from '../../../simulator/board/feeds.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import type { Rig } from '../../../simulator/rig/schema.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { dbu } from '../../../simulator/units/level.ts';
import { arbitrarySetup, placesAndLegs, RUNS } from '../arbitrary-setup.ts';
import { expectNear } from './near-levels.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

/** Without compressors a desk is linear, with reverbs and loops in it too. */
const noCompressor = fc.oneof(
  arbitrarySetup({ devices: ['gain', 'reverb'] }),
  arbitrarySetup({ devices: ['gain', 'reverb'], loops: true }),
);
const anySetup = fc.oneof(arbitrarySetup(), arbitrarySetup({ loops: true }));
const TOLERANCE_DB = 1e-7;

const tracksOf = ({ rig }: Setup) => rig.box.tracks.map(({ id }) => id);

/** The same setup with a track recorded louder or softer. */
function withLevelMoved({ rig, board }: Setup, track: string, byDb: number): Setup {
  const tracks = rig.box.tracks.map((one) =>
    one.id === track ? { ...one, levelDbfs: one.levelDbfs + byDb } : one,
  );
  return { rig: { ...rig, box: { ...rig.box, tracks } }, board };
}

/** A setup, one of its tracks, and a number of dB that is not 0. */
const setupAndMove = (setups: fc.Arbitrary<Setup>) =>
  setups.chain((setup) =>
    fc.record({
      setup: fc.constant(setup),
      track: fc.constantFrom(...tracksOf(setup)),
      byDb: fc.integer({ min: 1, max: 12 }).map((quarters) => -quarters / 4),
    }),
  );

describe('simulate() of a desk without compressors', () => {
  test('superposition: what one source does changes no level of another, to 1e-7 dB', () => {
    fc.assert(
      fc.property(setupAndMove(noCompressor), ({ setup, track, byDb }) => {
        const [before, after] = [simulate(setup), simulate(withLevelMoved(setup, track, byDb))];
        for (const place of placesAndLegs(before.circuit)) {
          for (const other of tracksOf(setup)) {
            if (other === track) continue;
            const levels = [levelOf(after, other, place), levelOf(before, other, place)] as const;
            expectNear(...levels, TOLERANCE_DB, `${other} at ${place}`);
          }
        }
      }),
      RUNS,
    );
  });

  test('scaling: a recording x dB lower is x dB lower everywhere, to 1e-7 dB', () => {
    fc.assert(
      fc.property(setupAndMove(noCompressor), ({ setup, track, byDb }) => {
        const [before, after] = [simulate(setup), simulate(withLevelMoved(setup, track, byDb))];
        for (const place of placesAndLegs(before.circuit)) {
          const was = levelOf(before, track, place);
          const wanted = was === undefined ? undefined : dbu(was + byDb);
          expectNear(levelOf(after, track, place), wanted, TOLERANCE_DB, `${track} at ${place}`);
        }
      }),
      RUNS,
    );
  });

  test('mute: a muted track is silent from its mute on, and nothing else changes, to 1e-7 dB', () => {
    fc.assert(
      fc.property(setupAndMove(noCompressor), ({ setup, track }) => {
        const mute = `box.${track}.mute`;
        // A send before the fader passes the mute by.
        const sends = [...controls(setup.rig).values()].filter(
          ({ kind, address }) => kind === 'gain' && address.startsWith(`box.${track}.bus`),
        );
        const closed = Object.fromEntries(sends.map(({ address }) => [address, -Infinity]));
        const muted = (on: boolean) =>
          simulate({
            ...setup,
            board: withValues(setup.rig, setup.board, { ...closed, [mute]: on }),
          });
        const [before, after] = [muted(false), muted(true)];
        const upstream = ['source', 'plugin', 'fader'].map((name) => `box.${track}.${name}`);
        for (const place of placesAndLegs(before.circuit)) {
          const isUpstream = upstream.some((start) => place.startsWith(start));
          for (const source of tracksOf(setup)) {
            const was = levelOf(before, source, place);
            const now = levelOf(after, source, place);
            if (source !== track || isUpstream)
              expectNear(now, was, TOLERANCE_DB, `${source} at ${place}`);
            else if (was !== undefined) expect(now, `${source} at ${place}`).toBe(-Infinity);
          }
        }
      }),
      RUNS,
    );
  });
});

describe('simulate() of any desk', () => {
  test('the levels of all sources together are the level of the mix, in power, to 1e-7 dB', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        const solution = simulate(setup);
        for (const place of placesAndLegs(solution.circuit)) {
          const levels = tracksOf(setup).map((track) => levelOf(solution, track, place));
          const whole = levelAt(solution, place);
          if (whole === undefined) {
            expect(levels.every((level) => level === undefined)).toBe(true);
            continue;
          }
          const power = levels.reduce(
            (sum: number, level) => sum + 10 ** ((level ?? Number.NaN) / 10),
            0,
          );
          expectNear(dbu(10 * Math.log10(power)), whole, TOLERANCE_DB, place);
        }
      }),
      RUNS,
    );
  });

  test('a track is its signals together, and a place its legs, in power, to 1e-7 dB', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        const solution = simulate(setup);
        const { circuit } = solution;
        for (const [place, stages] of circuit.stagesAt) {
          for (const track of tracksOf(setup)) {
            const parts = circuit.signals
              .filter((signal) => signal.track === track)
              .flatMap(({ id }) =>
                stages.map((stage) => levelOf(solution, id, circuit.stages[stage]?.id ?? '')),
              );
            if (parts.includes(undefined)) continue;
            const power = parts.reduce((sum: number, level) => sum + 10 ** ((level ?? 0) / 10), 0);
            expectNear(
              dbu(10 * Math.log10(power)),
              levelOf(solution, track, place),
              TOLERANCE_DB,
              place,
            );
          }
        }
      }),
      RUNS,
    );
  });

  test('the order of the strips and of the rack changes nothing, to 1e-6 dB', () => {
    fc.assert(
      fc.property(anySetup, ({ rig, board }) => {
        const turned: Rig = {
          ...rig,
          desk: {
            ...rig.desk,
            strips: [...rig.desk.strips].reverse(),
            subgroups: [...rig.desk.subgroups].reverse(),
            auxes: [...rig.desk.auxes].reverse(),
          },
          rack: [...rig.rack].reverse(),
          box: { ...rig.box, tracks: [...rig.box.tracks].reverse() },
        };
        const [one, other] = [simulate({ rig, board }), simulate({ rig: turned, board })];
        expect(other.loops.length).toBe(one.loops.length);
        for (const place of placesAndLegs(one.circuit)) {
          expectNear(levelAt(other, place), levelAt(one, place), 1e-6, place);
        }
      }),
      RUNS,
    );
  });

  test('a strip with nothing in it adds nothing to any level, to 1e-7 dB', () => {
    fc.assert(
      fc.property(anySetup, ({ rig, board }) => {
        const idle = { id: 'idle', mark: 'I', label: 'Idle', type: 'narrow' };
        const more: Rig = { ...rig, desk: { ...rig.desk, strips: [idle, ...rig.desk.strips] } };
        const open = withValues(more, board, {
          ...Object.fromEntries(rig.desk.auxes.map(({ id }) => [`desk.idle.${id}`, 5])),
          ...Object.fromEntries(rig.desk.subgroups.map(({ id }) => [`desk.idle.${id}`, true])),
        });
        const [before, after] = [simulate({ rig, board }), simulate({ rig: more, board: open })];
        for (const place of placesAndLegs(before.circuit)) {
          expectNear(levelAt(after, place), levelAt(before, place), TOLERANCE_DB, place);
        }
        expect(levelAt(after, 'desk.idle.mute')).toBe(-Infinity);
      }),
      RUNS,
    );
  });

  test('a unity gain in an insert changes no level, to 1e-6 dB', () => {
    let tried = 0;
    fc.assert(
      fc.property(anySetup, ({ rig, board }) => {
        const unity = {
          id: 'unity',
          label: 'Unity',
          kind: 'gain',
          inputs: 1,
          outputs: 1,
          level: 'plus4',
        } as const;
        const more: Rig = { ...rig, rack: [...rig.rack, unity] };
        const used = Object.values(board);
        const cords = more.desk.strips.flatMap(({ id, type }) => {
          const [send, back] = [`desk.${id}.insert.send`, `desk.${id}.insert.return`];
          // On a bay it may lead nowhere, or be fed from elsewhere.
          const isFree =
            type === 'narrow' &&
            !used.includes(send) &&
            feedOf({ rig: more, board }, back)?.output === send;
          return isFree ? [{ 'rack.unity.in': send, [back]: 'rack.unity.out' }] : [];
        });
        const [cord] = cords;
        if (!cord) return;
        tried += 1;
        const before = simulate({ rig: more, board });
        const after = simulate({ rig: more, board: withValues(more, board, cord) });
        for (const place of placesAndLegs(before.circuit)) {
          if (place.startsWith('rack.unity') || place in cord) continue;
          expectNear(levelAt(after, place), levelAt(before, place), 1e-6, place);
        }
      }),
      RUNS,
    );
    expect(tried).toBeGreaterThan(60);
  });
});

test('the setups of these properties are worth it: sound arrives, loops close, both stable and not', () => {
  const seen = { sound: 0, stable: 0, unstable: 0, none: 0 };
  for (const setup of fc.sample(anySetup, { ...RUNS })) {
    const solution = simulate(setup);
    const level = levelAt(solution, 'out.end');
    if (level === undefined || level > -100) seen.sound += 1;
    if (solution.loops.length === 0) seen.none += 1;
    else if (solution.loops.every(({ stable }) => stable)) seen.stable += 1;
    else seen.unstable += 1;
  }
  expect(seen.sound).toBeGreaterThan(40);
  expect(seen.stable).toBeGreaterThan(8);
  expect(seen.unstable).toBeGreaterThan(2);
  expect(seen.none).toBeGreaterThan(40);
});
