/**
 * Computed: what a centred pan takes off each side: 20·log ½, 20·log √½, and the geometric mean of the
 * two. That the law between is the geometric mean of the other two is from memory.
 */
import { describe, test } from 'vitest';
import { levelAt, simulate } from '../../simulator/index.ts';
import { panMono } from '../../simulator/units/pan.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

describe('PAN-4', () => {
  const LAWS = [
    { law: 'linear', centre: -6.0206 },
    // From memory.
    { law: 'compromise', centre: -4.5154 },
    { law: 'equal-power', centre: -3.0103 },
  ] as const;

  test.each(LAWS)('levelAt() each side of a centred strip, $law: $centre dB', ({ law, centre }) => {
    const solution = simulate(setUp({ levels: [-35], panLaw: law }));
    expectNear(levelAt(solution, 'desk.main.out.l'), -11 + centre, LINEAR_DB);
    expectNear(levelAt(solution, 'desk.main.out.r'), -11 + centre, LINEAR_DB);
  });

  test.each(LAWS)(
    'levelAt() each output of a track centred in the box, $law: $centre dB',
    (row) => {
      const board = { 'box.t1.to': 'out1-2' };
      const solution = simulate(setUp({ levels: [-35], panLaw: row.law, board }));
      expectNear(levelAt(solution, 'converter.out1'), -11 + row.centre, LINEAR_DB);
      expectNear(levelAt(solution, 'converter.out2'), -11 + row.centre, LINEAR_DB);
    },
  );

  test.each(LAWS)('panMono() at the centre, $law: $centre dB', ({ law, centre }) => {
    const { left, right } = panMono(law, 0);
    expectNear(20 * Math.log10(left), centre, LINEAR_DB);
    expectNear(20 * Math.log10(right), centre, LINEAR_DB);
  });
});
