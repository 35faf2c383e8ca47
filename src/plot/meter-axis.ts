import { type Dbu, dbfs, dbfsOf, METER_MARKS, meterShare } from '../../simulator/index.ts';

/** Slope of the scale at full scale, as a share of its length for each dB: IEC 60268-18, −10 to 0 dBFS. */
const SLOPE_AT_TOP = (1 - meterShare(dbfs(-10))) / 10;

/** How far the axis goes on above the highest clip level, in dB, so that one sees what clips. */
const ROOM_ABOVE = 6;

/** An axis for meters: where 0 dBFS stands, and the highest level on it. Both in dBu. */
export interface MeterAxis {
  readonly fullScale: Dbu;
  readonly highest: Dbu;
}

/**
 * An axis that full scale and all these clip levels stand on, with some room above. As far as dBFS goes it is the
 * scale of IEC 60268-18; from there it goes on by the same slope.
 */
export const meterAxis = (fullScale: Dbu, clips: readonly Dbu[]): MeterAxis => ({
  fullScale,
  highest: (Math.max(fullScale, ...clips) + ROOM_ABOVE) as Dbu,
});

/** How far along the axis a level stands, 0 to 1. Silence and what lies below the scale is 0. */
export const shareOnMeter = ({ fullScale, highest }: MeterAxis, level: Dbu): number =>
  Math.min(1, lengthTo(fullScale, level) / lengthTo(fullScale, highest));

/** The marks of IEC 60268-18 as levels in dBu, lowest first. */
export const marksOnMeter = ({ fullScale }: MeterAxis): Dbu[] =>
  METER_MARKS.map((mark) => (mark + fullScale) as Dbu);

function lengthTo(fullScale: Dbu, level: Dbu): number {
  const over = level - fullScale;
  return over > 0 ? 1 + SLOPE_AT_TOP * over : meterShare(dbfsOf(level, fullScale));
}
