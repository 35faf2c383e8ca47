/** Source: SMPTE RP 155, read in a secondary copy: −20 dBFS is +4 dBu, with a table of volts. */
import { describe, test } from 'vitest';
import { dbu, levelAt, simulate, voltsOf } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

const FULL_SCALE = 24;
/** The table is made with 0.775 V for 0 dBu, which is 0.052 % more than √0.6 V. */
const SHARE_OF_A_VOLT = 0.0006;

const atConverter = (levelDbfs: number) =>
  levelAt(simulate(setUp({ levels: [levelDbfs], fullScaleDbu: FULL_SCALE })), 'converter.out1');

describe('DIG-2, SMPTE RP 155', () => {
  test('levelAt() -20 dBFS leaves the converter at +4 dBu', () => {
    expectNear(atConverter(-20), 4, LINEAR_DB);
  });

  test('levelAt() 0 dBFS leaves it at +24 dBu', () => {
    expectNear(atConverter(0), 24, LINEAR_DB);
  });
});

describe('DIG-3, SMPTE RP 155, table of volts', () => {
  test.each([
    { level: 0, volts: 12.283 },
    { level: -1, volts: 10.947 },
    { level: -2, volts: 9.757 },
    { level: -3, volts: 8.696 },
    { level: -4, volts: 7.75 },
    { level: -5, volts: 6.907 },
    { level: -6, volts: 6.156 },
  ])('voltsOf() $level dBFS is $volts V', ({ level, volts }) => {
    expectNear(voltsOf(atConverter(level) ?? dbu(-999)), volts, volts * SHARE_OF_A_VOLT);
  });
});
