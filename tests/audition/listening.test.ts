import { expect, test } from 'vitest';
import { simulate } from '../../simulator/index.ts';
import { type AudioWire, EARS } from '../../src/audition/audio-graph.ts';
import { FULL_VOLUME_RATIO } from '../../src/audition/calibration.ts';
import { listenAt } from '../../src/audition/listening.ts';
import { deskRig } from './setups.ts';

/** The return of the plate sends to the plate again. */
const loop = (gain: number) => ({
  rig: deskRig,
  board: { 'desk.ch1.aux3': -6, 'desk.ret1.aux3': gain },
});
/** The same by way of a line amplifier, with no reverb in it. */
const bareLoop = (gain: number) => ({
  rig: deskRig,
  board: {
    'rack.plate.in': 'none',
    'rack.line.in': 'desk.aux3.out',
    'desk.ret1.in.l': 'rack.line.out',
    'desk.ret1.in.r': 'none',
    'desk.ch1.aux3': -6,
    'desk.ret1.aux3': gain,
  },
});

test('listenAt() without a loop has no late wire', () => {
  const { graph } = listenAt(simulate({ rig: deskRig, board: {} }), 'out.capture');
  expect(graph.wires.filter(({ isLate }) => isLate)).toEqual([]);
  // Ten recordings, two sides of the mix, an aux, two sides of a reverb: the rest only turns them up or down.
  expect(graph.parts.length).toBeLessThan(30);
});

test.each([
  ['through a reverb', loop(-9)],
  ['through an amplifier', bareLoop(-9)],
])('listenAt() a stable loop %s has a late wire in every ring', (_through, setup) => {
  const solution = simulate(setup);
  expect(solution.loops.map(({ stable }) => stable)).toEqual([true]);
  const { graph, level } = listenAt(solution, 'out.capture');
  expect(graph.wires.some(({ isLate }) => isLate)).toBe(true);
  expect(hasRing(graph.wires)).toBe(true);
  expect(hasRing(graph.wires.filter(({ isLate }) => !isLate))).toBe(false);
  expect(level).toBeGreaterThan(-20);
});

test('listenAt() a loop with a delay in it needs no late wire', () => {
  const solution = simulate({
    rig: deskRig,
    board: {
      'rack.echo.in': 'desk.aux1.out',
      'out.headphones-a': 'none',
      'rack.plate.in': 'none',
      'desk.ret1.in.l': 'rack.echo.out',
      'desk.ret1.in.r': 'none',
      'rack.echo.time': '120',
      'rack.echo.feedback': -6,
      'desk.ch1.aux1': -6,
    },
  });
  expect(solution.loops.map(({ stable }) => stable)).toEqual([true]);
  const { wires } = listenAt(solution, 'out.capture').graph;
  expect(hasRing(wires)).toBe(true);
  expect(wires.some(({ isLate }) => isLate)).toBe(false);
});

test('listenAt() an unstable loop plays nothing: only the ears are left', () => {
  for (const setup of [loop(6), bareLoop(6)]) {
    const solution = simulate(setup);
    expect(solution.loops.map(({ stable }) => stable)).toEqual([false]);
    const { graph, level } = listenAt(solution, 'out.capture');
    expect(level).toBeUndefined();
    expect(graph.parts.map(({ id }) => id)).toEqual([...EARS]);
    expect(graph.wires).toEqual([]);
    // What it does not reach goes on.
    expect(listenAt(solution, 'out.headphones-b').level).toBeDefined();
  }
});

test('listenAt() a mono place leads to both ears alike, a stereo one to one each', () => {
  const solution = simulate({ rig: deskRig, board: { 'desk.ch1.aux1': -3 } });
  const earsOf = (place: string) =>
    listenAt(solution, place).graph.wires.filter(({ to }) => to.startsWith('ear.'));
  const [left, right] = earsOf('out.headphones-a');
  expect(left?.from).toBe(right?.from);
  expect(left?.ratio).toBe(FULL_VOLUME_RATIO);
  const [captureLeft, captureRight] = earsOf('out.capture');
  expect(captureLeft?.from).not.toBe(captureRight?.from);
});

test('listenAt() refuses what is no place', () => {
  expect(() => listenAt(simulate({ rig: deskRig, board: {} }), 'out.attic')).toThrow(RangeError);
});

/** Whether wires lead round: whether any is left when those whose start no other leads to are taken away. */
function hasRing(wires: readonly AudioWire[]): boolean {
  const left = wires.filter(({ from }) => wires.some(({ to }) => to === from));
  return left.length === wires.length ? left.length > 0 : hasRing(left);
}
