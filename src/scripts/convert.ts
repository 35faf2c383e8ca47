import {
  type Dbu,
  dbfsOf,
  dbu,
  dbuOfDbfs,
  dbuOfDbv,
  dbuOfVolts,
  dbvOf,
  voltsOf,
} from '../../simulator/index.ts';
import { readNumber } from '../text/read-number.ts';

/** How a level is typed: a word for the field, and the ways from and to dBu. */
interface Unit {
  readonly toDbu: (value: number, fullScale: Dbu) => Dbu;
  readonly fromDbu: (level: Dbu, fullScale: Dbu) => number;
}

/** The fields of the converter by the names that they have in the page. */
export const UNITS = {
  dbu: { toDbu: (value) => dbu(value), fromDbu: (level) => level },
  dbv: { toDbu: (value) => dbuOfDbv(value), fromDbu: (level) => dbvOf(level) },
  dbfs: {
    toDbu: (value, fullScale) => dbuOfDbfs(value as Parameters<typeof dbuOfDbfs>[0], fullScale),
    fromDbu: (level, fullScale) => dbfsOf(level, fullScale),
  },
  volts: { toDbu: (value) => dbuOfVolts(value), fromDbu: (level) => voltsOf(level) },
} as const satisfies Record<string, Unit>;
export type UnitName = keyof typeof UNITS;

/**
 * What was typed in one unit, in all of them.
 *
 * @param fullScale which level is 0 dBFS. @returns nothing when it cannot be: no number, or less than 0 V.
 */
export function convert(
  from: UnitName,
  text: string,
  fullScale: Dbu,
): Readonly<Record<UnitName, number>> | undefined {
  const value = readNumber(text);
  if (value === undefined || (from === 'volts' && value < 0)) return undefined;
  const level = UNITS[from].toDbu(value, fullScale);
  return {
    dbu: UNITS.dbu.fromDbu(level),
    dbv: UNITS.dbv.fromDbu(level),
    dbfs: UNITS.dbfs.fromDbu(level, fullScale),
    volts: UNITS.volts.fromDbu(level),
  };
}
