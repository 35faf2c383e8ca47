/**
 * H. T. Friis, "Noise Figures of Radio Receivers", Proceedings of the IRE 32 (1944): the noise factor of a chain
 * is F = F1 + (F2 − 1)/G1 + (F3 − 1)/(G1·G2) + … A public worked example of four stages, with noise figure and
 * gain (2, −2), (1.5, 18), (1, −1), (8, −6) dB, prints F = 2.414 and NF = 3.83 dB; computed 2.413 and 3.826.
 */
import { expect, test } from 'vitest';
import { noiseAt, simulate } from '../../simulator/index.ts';
import { NO_NOISE, setUp } from './rig-builder.ts';
import { expectNear, THREE_DECIMALS } from './tolerance.ts';

const CHAIN = [
  { figure: 2, gain: -2 },
  { figure: 1.5, gain: 18 },
  { figure: 1, gain: -1 },
  { figure: 8, gain: -6 },
];
/** Noise of the source, in dBu: well above what the rest of the bench makes. */
const SOURCE = -100;

test('noiseAt() the end of a chain of four: −100 + 9 + NF 3.826 dB, F 2.413 (NOI-5)', () => {
  const ids = CHAIN.map((_, index) => `stage${index + 1}`);
  const cords = ids.map((id, index) => [
    `rack.${id}.in`,
    index === 0 ? 'converter.out1' : `rack.${ids[index - 1]}.out`,
  ]);
  const solution = simulate(
    setUp({
      levels: [-18],
      fullScaleDbu: 20,
      noise: { converterDbfs: SOURCE - 20, line: NO_NOISE, fader: NO_NOISE, bus: NO_NOISE },
      // What a stage of this noise figure adds at its output: (F − 1)·G times the noise of the source.
      rack: CHAIN.map(({ figure, gain }, index) => ({
        id: ids[index] ?? '',
        kind: 'gain',
        noiseDbu: SOURCE + 10 * Math.log10(10 ** (figure / 10) - 1) + gain,
      })),
      board: {
        'desk.ch1.in': 'none',
        ...Object.fromEntries(cords),
        'out.phones': 'rack.stage4.out',
        ...Object.fromEntries(CHAIN.map(({ gain }, index) => [`rack.${ids[index]}.gain`, gain])),
      },
    }),
  );
  const level = noiseAt(solution, 'out.phones') ?? Number.NaN;
  const noiseFigure = level - (SOURCE - 2 + 18 - 1 - 6);
  expectNear(noiseFigure, 3.826, THREE_DECIMALS);
  expectNear(10 ** (noiseFigure / 10), 2.413, THREE_DECIMALS);
  expect(noiseFigure.toFixed(2)).toBe('3.83');
});
