/**
 * Levels as the desk shows them, in each unit. Sources: Rec. ITU-R BS.645-2 (1992) §1 for 0 dBu; a university audio
 * glossary (SFU) prints 1.228 V for +4 dBu; EBU R 68-2000, read in a secondary copy, for −18 dBFS.
 */
import { expect, test } from 'vitest';
import { dbu } from '../../simulator/index.ts';
import { type LevelUnit, levelText } from '../../src/text/index.ts';

/** With a line-up of −18 dBFS at 0 dBu. */
const R68 = dbu(18);

test.each<[id: string, level: number, unit: LevelUnit, text: string]>([
  ['DB-1', 0, 'V', '774.6 mV'],
  ['DB-2', 4, 'V', '1.228 V'],
  ['DB-2', 4, 'dBV', '+1.7815 dBV'],
  ['DB-3', -7.7815, 'dBV', '−10.0000 dBV'],
  ['DB-3', -7.7815, 'V', '316.2 mV'],
  ['DIG-1', 0, 'dBFS', '−18.0000 dBFS'],
  ['DIG-1', 18, 'dBFS', '0.0000 dBFS'],
  ['DIG-1', 18, 'V', '6.153 V'],
])('%s levelText(%f dBu) in %s is %s', (_, level, unit, text) => {
  expect(levelText(level, 4, { unit, fullScale: R68 })).toBe(text);
});
