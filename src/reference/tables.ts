import { alignment, fader, levels, ratios } from './level-tables.ts';
import { normals } from './normal-table.ts';
import type { ReferenceTable } from './reference-table.ts';
import { combs, equals, loads, pans, unequal } from './sum-tables.ts';

/** All tables of the reference, in the order of its page. */
export const TABLES: readonly ReferenceTable[] = [
  levels,
  alignment,
  ratios,
  equals,
  unequal,
  combs,
  pans,
  normals,
  loads,
  fader,
];
