/** Source: EBU R 68-2000, read in a secondary copy: alignment level is −18 dBFS. */
import { describe, test } from 'vitest';
import { dbfs, dbfsOf, dbu, dbuOfDbfs, levelAt, simulate, voltsOf } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB, THREE_DECIMALS } from './tolerance.ts';

const FULL_SCALE = 18;

describe('DIG-1, EBU R 68', () => {
  test('levelAt() with a line-up of 0 dBu, -18 dBFS leaves the converter at 0 dBu', () => {
    const solution = simulate(setUp({ levels: [-18], fullScaleDbu: FULL_SCALE }));
    expectNear(levelAt(solution, 'converter.out1'), 0, LINEAR_DB);
  });

  test('levelAt() 0 dBFS leaves it at +18 dBu = 6.153 V', () => {
    const solution = simulate(setUp({ levels: [0], fullScaleDbu: FULL_SCALE }));
    const level = levelAt(solution, 'converter.out1');
    expectNear(level, 18, LINEAR_DB);
    expectNear(voltsOf(level ?? dbu(-999)), 6.153, THREE_DECIMALS);
  });

  test('dbuOfDbfs() and dbfsOf() undo one another: -18 dBFS, 0 dBu', () => {
    expectNear(dbuOfDbfs(dbfs(-18), dbu(FULL_SCALE)), 0, LINEAR_DB);
    expectNear(dbfsOf(dbu(0), dbu(FULL_SCALE)), -18, LINEAR_DB);
  });
});
