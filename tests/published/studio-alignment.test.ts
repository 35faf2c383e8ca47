/** Common practice, no source: a studio that aligns −18 dBFS to +4 dBu. The volts are computed. */
import { describe, test } from 'vitest';
import { dbu, levelAt, simulate, voltsOf } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

const FULL_SCALE = 22;
const FOUR_DECIMALS = 0.00005;

const inStrip = (levelDbfs: number) =>
  levelAt(simulate(setUp({ levels: [levelDbfs], fullScaleDbu: FULL_SCALE })), 'desk.ch1.in');

describe('DIG-4, common practice, no source', () => {
  test('levelAt() -18 dBFS comes into the strip at -18 + 22 = +4 dBu', () => {
    expectNear(inStrip(-18), 4, LINEAR_DB);
  });

  test('levelAt() 0 dBFS comes in at +22 dBu = 0.774597 · 10^(22/20) = 9.7516 V', () => {
    expectNear(inStrip(0), 22, LINEAR_DB);
    expectNear(voltsOf(inStrip(0) ?? dbu(-999)), 9.7516, FOUR_DECIMALS);
  });
});
