/** Source: audio glossary of Simon Fraser University, which prints +4 dBu as 1.228 V. */
import { describe, test } from 'vitest';
import { dbu, dbvOf, levelAt, simulate, voltsOf } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB, SIX_DECIMALS, THREE_DECIMALS } from './tolerance.ts';

describe('DB-2, SFU audio glossary', () => {
  test('voltsOf() +4 dBu = 0.774597 · 10^(4/20) = 1.227653 V, printed 1.228', () => {
    expectNear(voltsOf(dbu(4)), 1.227653, SIX_DECIMALS);
    expectNear(voltsOf(dbu(4)), 1.228, THREE_DECIMALS);
  });

  test('dbvOf() +4 dBu = 20 log 1.227653 = +1.7815 dBV', () => {
    expectNear(dbvOf(dbu(4)), 1.7815, LINEAR_DB);
  });

  test('levelAt() a line at -9 dBu with 13 dB of trim leaves the strip at 1.227653 V', () => {
    const board = { 'desk.ch1.trim': 13 };
    const solution = simulate(setUp({ levels: [-9], fullScaleDbu: 0, board }));
    const level = levelAt(solution, 'desk.ch1.mute') ?? dbu(-999);
    expectNear(voltsOf(level), 1.227653, SIX_DECIMALS);
    expectNear(dbvOf(level), 1.7815, LINEAR_DB);
  });
});
