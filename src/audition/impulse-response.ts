import { type ComplexArray, transform, transformBack } from './fourier.ts';
import { seededNoise } from './seeded-noise.ts';

/** Frames of an impulse response: 2.7 s at 48 kHz. */
const LENGTH = 131_072;
/** Seconds in which it falls by 60 dB, and before which nothing comes. */
const DECAY = 1.8;
const PRE_DELAY = 0.008;
/** Fall of an amplitude by 60 dB as an exponent. */
const SIXTY_DB = Math.log(1000);

/**
 * Impulse response of a reverb of unit power: noise that dies away, a different one for each seed. Each third of
 * an octave from 20 Hz to 20 kHz passes with the power that it came with, and is uncorrelated with what came in,
 * as the simulator has it. A single frequency may be louder or softer by some decibels, as in any room.
 */
export function impulseResponse(seed: string, sampleRate: number): Float64Array<ArrayBuffer> {
  const noise = seededNoise(seed);
  const re = Float64Array.from({ length: LENGTH }, (_, frame) => {
    const time = frame / sampleRate - PRE_DELAY;
    return time < 0 ? 0 : noise() * Math.exp((-SIXTY_DB * time) / DECAY);
  });
  const spectrum = { re, im: new Float64Array(LENGTH) };
  transform(spectrum);
  levelBands(spectrum, sampleRate);
  transformBack(spectrum);
  return re;
}

/** Numbers of the outermost third-octave bands, at 20 Hz and 20 kHz. */
const [LOWEST, HIGHEST] = [-17, 13];

/**
 * Takes out of each third-octave band what is in phase with the input, and gives the rest a mean power of 1; all
 * beyond the outermost bands is treated as they are. Within a band a frequency counts by its inverse, so that
 * equal intervals count alike, as they do for the simulator.
 */
function levelBands({ re, im }: ComplexArray, sampleRate: number): void {
  const hertzOf = (bin: number) => (Math.min(bin, LENGTH - bin) * sampleRate) / LENGTH;
  const numberOf = (bin: number) => Math.round(10 * Math.log10(hertzOf(bin) / 1000));
  const bands = Array.from({ length: HIGHEST - LOWEST + 1 }, () => ({
    weight: 0,
    re: 0,
    power: 0,
  }));
  for (let bin = 1; bin <= LENGTH / 2; bin += 1) {
    const band = bands[numberOf(bin) - LOWEST];
    if (!band) continue;
    band.weight += 1 / bin;
    band.re += (re[bin] ?? 0) / bin;
    band.power += ((re[bin] ?? 0) ** 2 + (im[bin] ?? 0) ** 2) / bin;
  }
  const changes = bands.map(({ weight, re: sum, power }) => {
    const inPhase = sum / weight;
    return { inPhase, ratio: 1 / Math.sqrt(power / weight - inPhase ** 2) };
  });
  re[0] = 0;
  for (let bin = 1; bin < LENGTH; bin += 1) {
    const nearest = Math.max(LOWEST, Math.min(HIGHEST, numberOf(bin)));
    const { inPhase, ratio } = changes[nearest - LOWEST] ?? { inPhase: 0, ratio: 1 };
    re[bin] = ((re[bin] ?? 0) - inPhase) * ratio;
    im[bin] = (im[bin] ?? 0) * ratio;
  }
}
