/** A ratio of decibels without sign, for how far something moves or may be off: `10 dB`, `0.1 dB`. */
export const amountText = (amount: number): string => `${Number(Math.abs(amount).toFixed(2))} dB`;

/** A frequency as one reads it, with three figures: `63 Hz`, `500 Hz`, `1.26 kHz`. */
export const frequencyText = (frequency: number): string =>
  frequency < 1000
    ? `${Number(frequency.toPrecision(3))} Hz`
    : `${Number((frequency / 1000).toPrecision(3))} kHz`;
