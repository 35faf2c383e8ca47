import { type Dbu, dbuOfDbv, dbuOfVolts, type Rig, voltsOf } from '../../simulator/index.ts';
import { signed } from './signed.ts';

/** The units that a level can be read in. */
export const LEVEL_UNITS = ['dBu', 'dBV', 'dBFS', 'V'] as const;
export type LevelUnit = (typeof LEVEL_UNITS)[number];

/** What levels are read in: a unit, and for dBFS the alignment of the converter. */
export interface LevelScale {
  readonly unit: LevelUnit;
  /** 0 dBFS, in dBu. */
  readonly fullScale: Dbu;
}

/** The scale of a unit in a room: dBFS goes by the alignment of its converter. */
export const scaleIn = (rig: Rig, unit: LevelUnit): LevelScale => ({
  unit,
  fullScale: rig.converter.fullScaleDbu as Dbu,
});

/** Levels in dBu, as they stand where nothing else was chosen. */
export const IN_DBU: LevelScale = { unit: 'dBu', fullScale: 0 as Dbu };

/** The level that a scale counts from, in dBu: 0 dBu, 0 dBV, 0 dBFS, 1 V. */
export function zeroOf({ unit, fullScale }: LevelScale): Dbu {
  switch (unit) {
    case 'dBu':
      return 0 as Dbu;
    case 'dBV':
      return dbuOfDbv(0);
    case 'V':
      return dbuOfVolts(1);
    case 'dBFS':
      return fullScale;
  }
}

/** A level that is not silence with its unit: `−2.0 dBu`, `−24.0 dBFS`, `615.3 mV`. */
export const inUnit = (level: number, scale: LevelScale, digits = 1): string =>
  scale.unit === 'V'
    ? voltsText(voltsOf(level as Dbu))
    : `${signed(level - zeroOf(scale), digits)} ${scale.unit}`;

const PREFIXES = [
  [1, 'V'],
  [1e-3, 'mV'],
  [1e-6, 'µV'],
  [1e-9, 'nV'],
] as const;

/** A level as the mark of an axis, in few letters: `−20`, `+4`, `100 mV`. Only volts have their unit with them. */
export const markText = (level: number, scale: LevelScale): string =>
  scale.unit === 'V'
    ? voltsText(voltsOf(level as Dbu), 2).replace('.0 ', ' ')
    : signed(level - zeroOf(scale), 0);

/** A voltage above 0 with so many figures; with four, as tables of levels print them: `1.228 V`, `316.2 mV`. */
function voltsText(volts: number, figures = 4): string {
  // Rounded first: 0.99999 V reads as 1.000 V, not as 1000 mV.
  const rounded = Number(volts.toPrecision(figures));
  const [size, name] = PREFIXES.find(([unit]) => rounded >= unit) ?? [1e-9, 'nV'];
  const value = rounded / size;
  const whole = Math.max(1, Math.floor(Math.log10(value)) + 1);
  return `${value.toFixed(Math.max(0, figures - whole))} ${name}`;
}
