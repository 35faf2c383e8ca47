import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { controls } from '../../../../simulator/rig/controls.ts';
import { jacks } from '../../../../simulator/rig/jacks.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import { findings } from '../../../../simulator/trace/findings.ts';
import { arbitrarySetup, RUNS } from '../../arbitrary-setup.ts';
import { allFound } from './found.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 60_000 });

test('findings() of a room in order is empty', () => {
  expect(allFound({ 'desk.w.in.l': 'converter.out3', 'desk.w.in.r': 'converter.out4' })).toEqual(
    [],
  );
});

test('findings() tells faults before notes', () => {
  const board = { 'box.viola.fader': -2, 'desk.a.band': true, 'desk.a.wash.tap': 'pre' } as const;
  const severities = allFound({ ...board, 'desk.a.wash': 0 }).map(({ severity }) => severity);
  expect(severities).toEqual([...severities].sort());
  expect(new Set(severities)).toEqual(new Set(['fault', 'note']));
});

test('findings() of any setup names a control or jack and a track of its rig, and nothing twice', () => {
  fc.assert(
    fc.property(arbitrarySetup({ loops: true }), (setup) => {
      const found = findings(setup, simulate(setup));
      const { inputs, outputs } = jacks(setup.rig);
      const places = new Set([...controls(setup.rig).keys(), ...inputs, ...outputs]);
      const tracks = new Set(setup.rig.box.tracks.map(({ id }) => id));
      for (const { mendAt, follow } of found) {
        expect(places).toContain(mendAt);
        if (follow !== undefined) expect(tracks).toContain(follow);
      }
      const texts = found.map((one) => JSON.stringify(one));
      expect(new Set(texts).size).toBe(texts.length);
    }),
    RUNS,
  );
});
