import { expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { LOW_LEVEL } from '../../../../simulator/trace/findings/finding.ts';
import { found } from './found.ts';

/** The viola sent to the reverb by so many decibels: 4 dBu + send. */
const sent = (send: number): Board => ({ 'desk.a.wash': send });

test('a reverb fed with 4 − 40.5 = −36.5 dBu, which is below −36 dBu', () => {
  const [one, ...more] = found('low-level', sent(-40.5));
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: 'fault',
    place: 'rack.hall.in',
    mendAt: 'desk.a.wash',
    follow: 'viola',
  });
  expect(one?.level).toBeCloseTo(-36.5, 9);
});

test('not with 4 − 39.5 = −35.5 dBu, and not in silence', () => {
  expect(LOW_LEVEL).toBe(-36);
  expect(found('low-level', sent(-39.5))).toEqual([]);
  expect(found('low-level', sent(-Infinity))).toEqual([]);
});

test('what follows from a low level is not told again', () => {
  const board = { ...sent(-60), 'desk.a.main': false, 'desk.b.mute': true };
  expect(found('low-level', board).map(({ place }) => place)).toEqual(['rack.hall.in']);
});
