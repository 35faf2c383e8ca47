import { expect, test } from 'vitest';
import type { Claim } from '../../../simulator/grade/check.ts';
import { fewestMoves } from '../../../simulator/puzzle/par.ts';
import { smallRoom } from '../small-room.ts';

test.each<Claim>([
  { kind: 'headroom', minDb: 6 },
  { kind: 'above-noise', source: 'viola', output: 'tape', minDb: 60 },
  { kind: 'no-finding' },
])('fewestMoves() refuses a check of which it is not known what mends it: $kind', (claim) => {
  const check = { id: 'one', weight: 1, claim };
  const task = { rig: smallRoom(), start: {}, open: ['desk.**'], checks: [check] };
  expect(() => fewestMoves(task, 2)).toThrow(RangeError);
});
