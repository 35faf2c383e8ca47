declare const unit: unique symbol;

/** Absolute level, in dB relative to {@link DBU_REFERENCE_VOLTS}. Silence is `-Infinity`. */
export type Dbu = number & { readonly [unit]: 'dBu' };

/** Absolute level, in dB relative to 1 V RMS. Silence is `-Infinity`. */
export type Dbv = number & { readonly [unit]: 'dBV' };

/** Absolute level in the box, in dB relative to a full-scale sine. Silence is `-Infinity`. */
export type Dbfs = number & { readonly [unit]: 'dBFS' };

/** Gain or loss, in dB. Unity is 0; a closed path is `-Infinity`. */
export type Db = number & { readonly [unit]: 'dB' };

/** Voltage, in volts RMS. */
export type Volts = number & { readonly [unit]: 'V' };

/** Voltage ratio. Unity is 1, a closed path is 0, an inverted one is negative. */
export type Ratio = number & { readonly [unit]: 'ratio' };

/** 0 dBu in volts RMS: √0.6 V, which is 1 mW into 600 Ω. Source: ITU-R BS.645-2 §1 prints 0.775 V. */
export const DBU_REFERENCE_VOLTS = Math.sqrt(0.6) as Volts;

/** Silence, as an absolute level in dBu. */
export const SILENCE = -Infinity as Dbu;

/** A closed path, as a gain in dB. */
export const CLOSED = -Infinity as Db;

/** Unity, as a gain in dB. */
export const UNITY = 0 as Db;

/** Checks that a number is a level or gain: finite or `-Infinity`. @throws RangeError on NaN and `Infinity`. */
function finiteOrSilent(value: number, what: string): number {
  if (Number.isNaN(value) || value === Infinity) {
    throw new RangeError(`${what} must be finite or -Infinity, but got ${value}.`);
  }
  return value;
}

/** A number as an absolute level in dBu. @throws RangeError unless it is finite or `-Infinity`. */
export const dbu = (value: number): Dbu => finiteOrSilent(value, 'A level in dBu') as Dbu;

/** A number as a level in dBFS. @throws RangeError unless it is finite or `-Infinity`. */
export const dbfs = (value: number): Dbfs => finiteOrSilent(value, 'A level in dBFS') as Dbfs;

/** A number as a gain in dB. @throws RangeError unless it is finite or `-Infinity`. */
export const db = (value: number): Db => finiteOrSilent(value, 'A gain in dB') as Db;

/** The level after a gain. A closed path leaves silence. */
export const amplify = (level: Dbu, gain: Db): Dbu => (level + gain) as Dbu;

/** The gain that leads from one level to another, in dB. From silence to silence it is 0. */
export const gainBetween = (from: Dbu, to: Dbu): Db =>
  (from === SILENCE && to === SILENCE ? 0 : to - from) as Db;

/** Voltage ratio of a gain in dB; a closed path is 0. */
export const ratioOf = (gain: Db): Ratio => (10 ** (gain / 20)) as Ratio;

/** Gain in dB of a voltage ratio, whatever its sign; 0 is a closed path. */
export const gainOf = (ratio: number): Db => (20 * Math.log10(Math.abs(ratio))) as Db;

/** Power of a level, relative to that of 0 dBu; silence is 0. */
export const powerOf = (level: Dbu): number => 10 ** (level / 10);

/** Level in dBu of a power relative to that of 0 dBu; no power is silence. */
export const levelOfPower = (power: number): Dbu => (10 * Math.log10(power)) as Dbu;

/** Volts RMS of a level in dBu. */
export const voltsOf = (level: Dbu): Volts => (DBU_REFERENCE_VOLTS * 10 ** (level / 20)) as Volts;

/** Level in dBu of a voltage in volts RMS; 0 V is silence. @throws RangeError on negative volts. */
export function dbuOfVolts(volts: number): Dbu {
  if (!(volts >= 0)) throw new RangeError(`A voltage must be 0 V or more, but got ${volts}.`);
  return (20 * Math.log10(volts / DBU_REFERENCE_VOLTS)) as Dbu;
}

/** A level in dBu, said in dBV. */
export const dbvOf = (level: Dbu): Dbv => (20 * Math.log10(voltsOf(level))) as Dbv;

/** A level in dBV, said in dBu. */
export const dbuOfDbv = (level: number): Dbu => dbuOfVolts(10 ** (level / 20));

/** Level at a converter's analog side of a level in the box, where `fullScale` dBu is 0 dBFS. */
export const dbuOfDbfs = (level: Dbfs, fullScale: Dbu): Dbu => (level + fullScale) as Dbu;

/** Level in the box of a level at a converter's analog side, where `fullScale` dBu is 0 dBFS. */
export const dbfsOf = (level: Dbu, fullScale: Dbu): Dbfs => (level - fullScale) as Dbfs;
