/** Source: AES17, read in a secondary copy: 0 dBFS is the RMS level of a sine that just reaches full scale. */
import { describe, test } from 'vitest';
import { dbfs, dbu, dbuOfDbfs, headroomAt, levelAt, simulate } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

const FULL_SCALE = 21;
const FRAMES = 4800;
/** RMS level of a wave of one period with peaks of 1, in dB relative to that of a sine with the same peaks. */
const rmsDbfs = (wave: (turn: number) => number): number => {
  let sum = 0;
  for (let frame = 0; frame < FRAMES; frame += 1) sum += wave((frame + 0.5) / FRAMES) ** 2;
  return 10 * Math.log10(sum / FRAMES / 0.5);
};
const sine = (turn: number) => Math.sin(2 * Math.PI * turn);
const square = (turn: number) => (turn < 0.5 ? 1 : -1);

/** A recording at the output of the converter: its peaks stand above its RMS level by its crest. */
const atConverter = (levelDbfs: number, crestDb: number) => {
  const setup = setUp({ levels: [levelDbfs], fullScaleDbu: FULL_SCALE, crestDb });
  const solution = simulate(setup);
  return {
    level: levelAt(solution, 'converter.out1'),
    peak: headroomAt(solution, 'converter.out1'),
  };
};

describe('DIG-6, AES17', () => {
  test('levelAt() a full-scale sine is 0 dBFS, comes out at the alignment, and has no headroom left', () => {
    expectNear(rmsDbfs(sine), 0);
    const { level, peak } = atConverter(0, 0);
    expectNear(level, FULL_SCALE, LINEAR_DB);
    expectNear(peak?.headroom, 0, LINEAR_DB);
  });

  test('dbuOfDbfs() a full-scale square wave is +3.0103 dBFS', () => {
    expectNear(rmsDbfs(square), 3.0103);
    expectNear(dbuOfDbfs(dbfs(rmsDbfs(square)), dbu(FULL_SCALE)), FULL_SCALE + 3.0103);
  });
});
