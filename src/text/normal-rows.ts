import type { BayPoint } from '../../simulator/index.ts';

/** What the points of a row of the bay do while nothing is plugged, and what breaks that. */
export const normalWords = (kind: BayPoint['kind']): string => NORMALS[kind];

const NORMALS: Readonly<Record<BayPoint['kind'], string>> = {
  full: 'normalled, and a plug in either jack breaks it',
  half: 'half-normalled: a plug in the lower jack breaks it, one in the upper only taps it',
  open: 'open, joined by cords alone',
};
