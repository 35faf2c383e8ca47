/**
 * How loud a desk is heard. Samples run from −1 to 1; their levels are RMS, relative to 1. All figures here are
 * ours, chosen low: how loud they are in the room nobody can know.
 */

/** Line level, in dBu, and the digital level that it is heard at with the volume all the way up. */
const LINE_LEVEL_DBU = 4;
const LINE_LEVEL_HEARD = -32;

/** No sample ever goes beyond this: −6 dB under full scale. */
export const CEILING = 0.5;

/** Room for peaks between the level of the music and the ceiling, in dB: what the net-loft session needs. */
const PEAK_ROOM = 18;

/** Volume of listening, in dB: its range, and where it stands at first. */
export const VOLUME = { least: -40, most: 0, first: -15 } as const;

/** Voltage ratio from a desk where 1 is 0 dBu to samples, with the volume all the way up. */
export const FULL_VOLUME_RATIO = 10 ** ((LINE_LEVEL_HEARD - LINE_LEVEL_DBU) / 20);

/** Highest level of a leg that the guard lets by, in dBu, so that its peaks stay below the ceiling. */
export const LOUDEST_DBU = 20 * Math.log10(CEILING) - PEAK_ROOM - LINE_LEVEL_HEARD + LINE_LEVEL_DBU;
