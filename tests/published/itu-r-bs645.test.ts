/** Source: Rec. ITU-R BS.645-2 (1992), §1: 0 dBu, printed as 0.775 V. DB-3 is computed from it. */
import { describe, expect, test } from 'vitest';
import {
  DBU_REFERENCE_VOLTS,
  dbu,
  dbuOfDbv,
  dbuOfVolts,
  headroomAt,
  levelAt,
  simulate,
  voltsOf,
} from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB, SIX_DECIMALS, THREE_DECIMALS } from './tolerance.ts';

describe('DB-1, ITU-R BS.645-2 §1', () => {
  test('voltsOf() 0 dBu is √0.6 V = 0.774597 V, printed 0.775', () => {
    expectNear(voltsOf(dbu(0)), 0.774597, SIX_DECIMALS);
    expectNear(voltsOf(dbu(0)), 0.775, THREE_DECIMALS);
    expectNear(DBU_REFERENCE_VOLTS, Math.sqrt(0.6), Number.EPSILON);
  });

  test('dbuOfVolts() 0 V is silence, 0.774597 V is 0 dBu, ten times that is 20 dBu', () => {
    expect(dbuOfVolts(0)).toBe(-Infinity);
    expectNear(dbuOfVolts(0.774597), 0);
    expectNear(dbuOfVolts(7.74597), 20);
  });

  test('levelAt() a track at -17 dBFS out of a converter at +17 dBu stands at 0.774597 V on the desk', () => {
    const solution = simulate(setUp({ levels: [-17], fullScaleDbu: 17 }));
    expectNear(voltsOf(levelAt(solution, 'desk.ch1.in') ?? dbu(-999)), 0.774597, SIX_DECIMALS);
  });
});

describe('DB-3, computed from BS.645-2 §1', () => {
  test('dbuOfDbv() -10 dBV = 10^(-10/20) V = 0.316228 V = -7.7815 dBu', () => {
    expectNear(voltsOf(dbuOfDbv(-10)), 0.316228, SIX_DECIMALS);
    expectNear(dbuOfDbv(-10), -7.7815, LINEAR_DB);
  });

  test('dbuOfDbv() +4 dBu stands 4 + 7.7815 = 11.7815 dB above -10 dBV', () => {
    expectNear(4 - dbuOfDbv(-10), 11.7815, LINEAR_DB);
  });
});

describe('DIG-5, ITU-R BS.645-2 §1 to 3: alignment 0 dBu, measurement −12 dB, permitted maximum +9 dB', () => {
  /** A line-up of −18 dBFS at 0 dBu, as EBU R 68 has it. */
  const FULL_SCALE = 18;
  const sineAt = (levelDbfs: number) => {
    const setup = setUp({ levels: [levelDbfs], fullScaleDbu: FULL_SCALE, crestDb: 0 });
    return simulate(setup);
  };

  test.each([
    { signal: 'alignment', level: 0, volts: 0.774597 },
    { signal: 'measurement', level: -12, volts: 0.19457 },
    { signal: 'permitted maximum', level: 9, volts: 2.18311 },
  ])('levelAt() the $signal signal stands at $level dBu = $volts V', ({ level, volts }) => {
    const found = levelAt(sineAt(level - FULL_SCALE), 'desk.ch1.in');
    expectNear(found, level, LINEAR_DB);
    expectNear(voltsOf(found ?? dbu(-999)), volts, SIX_DECIMALS);
  });

  test('headroomAt() the permitted maximum leaves 18 - 9 = 9 dB at the converter', () => {
    expectNear(headroomAt(sineAt(9 - FULL_SCALE), 'converter.out1')?.headroom, 9, LINEAR_DB);
  });
});
