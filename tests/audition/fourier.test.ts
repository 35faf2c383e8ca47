import { fft } from 'mathjs';
import { expect, test } from 'vitest';
import { transform, transformBack } from '../../src/audition/fourier.ts';
import { impulseResponse } from '../../src/audition/impulse-response.ts';
import { seededNoise } from '../../src/audition/seeded-noise.ts';

const RATE = 48_000;

test('transform() of 256 samples of noise agrees with mathjs, to 1e-9, and transformBack() undoes it', () => {
  const noise = seededNoise('transform');
  const re = Float64Array.from({ length: 256 }, noise);
  const im = Float64Array.from({ length: 256 }, noise);
  const before = { re: re.slice(), im: im.slice() };
  const wanted = fft(Array.from(re));
  const real = { re: re.slice(), im: new Float64Array(256) };
  transform(real);
  wanted.forEach((value, bin) => {
    const { re: wantedRe, im: wantedIm } = value as unknown as { re: number; im: number };
    expect(real.re[bin]).toBeCloseTo(wantedRe, 9);
    expect(real.im[bin]).toBeCloseTo(wantedIm, 9);
  });
  const both = { re, im };
  transform(both);
  transformBack(both);
  both.re.forEach((value, index) => {
    expect(value).toBeCloseTo(before.re[index] ?? Number.NaN, 9);
    expect(both.im[index]).toBeCloseTo(before.im[index] ?? Number.NaN, 9);
  });
});

test('impulseResponse() is the same for the same seed and another for another', () => {
  expect(impulseResponse('rack.plate.reverb.l', RATE)).toEqual(
    impulseResponse('rack.plate.reverb.l', RATE),
  );
  const [left, right] = ['l', 'r'].map((leg) => impulseResponse(`rack.plate.reverb.${leg}`, RATE));
  const product = left?.reduce((sum, sample, frame) => sum + sample * (right?.[frame] ?? 0), 0);
  const power = left?.reduce((sum, sample) => sum + sample ** 2, 0) ?? 0;
  expect(Math.abs((product ?? 1) / power)).toBeLessThan(0.02);
});

// Common practice, no source: the time of a reverb is that in which it falls by 60 dB; here 1.8 s.
test('impulseResponse() falls by 60 dB in 1.8 s: by 20 dB from 0.2 to 0.8 s, within 1 dB', () => {
  const response = impulseResponse('decay', RATE);
  const levelAround = (time: number) => {
    const [from, to] = [(time - 0.05) * RATE, (time + 0.05) * RATE];
    const part = response.slice(Math.round(from), Math.round(to));
    return 10 * Math.log10(part.reduce((sum, sample) => sum + sample ** 2, 0));
  };
  const fall = levelAround(0.2) - levelAround(0.8);
  expect(Math.abs(fall - 20)).toBeLessThan(1);
});
