/**
 * Computed: N noises of the same level stand 10·log N above one (NOI-3). The noise gain of a virtual-earth
 * adder of N equal resistors is N + 1, 20·log(N + 1) dB (NOI-4): the textbook noise gain 1 + Rf/Rin of an
 * inverting amplifier, with N resistors side by side. The figures are those of the project's table of check values.
 */
import { describe, expect, test } from 'vitest';
import { noiseAt, noiseShares, simulate, summingNoiseGain } from '../../simulator/index.ts';
import { NO_NOISE, setUp } from './rig-builder.ts';
import { expectNear, THREE_DECIMALS } from './tolerance.ts';

/** So many strips on the main bus, which the stereo strip is taken off. */
const noiseOf = (strips: number, noise: { readonly line: number; readonly bus: number }) =>
  simulate(
    setUp({
      levels: [-18],
      strips,
      noise: { fader: NO_NOISE, converterDbfs: NO_NOISE, ...noise },
      board: { 'desk.ret.main': false },
    }),
  );

describe('NOI-3, noises of N strips', () => {
  test.each([
    { strips: 8, level: -70.969 },
    { strips: 16, level: -67.959 },
    { strips: 32, level: -64.949 },
  ])('noiseAt() the output, $strips strips of −80 dBu: $level dBu', ({ strips, level }) => {
    const solution = noiseOf(strips, { line: -80, bus: NO_NOISE });
    expectNear(noiseAt(solution, 'out.capture'), level, THREE_DECIMALS);
    expectNear(noiseAt(solution, 'out.capture'), -80 + 10 * Math.log10(strips));
    const shares = noiseShares(solution, 'out.capture')?.slice(0, strips) ?? [];
    for (const { place, share } of shares) {
      expect(place).toMatch(/^desk\.ch\d+\.trim$/);
      expect(share).toBeCloseTo(1 / strips, 9);
    }
  });
});

describe('NOI-4, noise gain of a summing amplifier', () => {
  test.each([
    { strips: 1, gain: 6.021 },
    { strips: 2, gain: 9.542 },
    { strips: 8, gain: 19.085 },
    { strips: 16, gain: 24.609 },
    { strips: 32, gain: 30.37 },
  ])('noiseAt() one side of a bus with $strips strips: −111 + $gain dBu', ({ strips, gain }) => {
    const solution = noiseOf(strips, { line: NO_NOISE, bus: -111 });
    expectNear(noiseAt(solution, 'desk.main.sum.l'), -111 + gain, THREE_DECIMALS);
    expectNear(noiseAt(solution, 'desk.main.out.r'), -111 + 20 * Math.log10(strips + 1));
    expectNear(summingNoiseGain(strips), gain, THREE_DECIMALS);
  });
});
