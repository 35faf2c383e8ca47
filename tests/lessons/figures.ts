/** A number of decibels as it stands in a text, or a number with a sign: a setting. */
export interface Figure {
  /** As written, with one blank before the unit: `−9 dBu`. */
  readonly text: string;
  readonly value: number;
  readonly decimals: number;
  readonly unit: string | undefined;
}

const FIGURE =
  /(?<![\p{L}\d.,–])([+−-]?)(\d+(?:\.(\d+))?)(?:[\s\u00a0\u202f-]*(dBu|dBV|dBFS|dBA|dB|decibels?)\b)?/gu;

/** The figures in a text: all that have a sign or a unit of decibels. Counts and years are none. */
export function figuresIn(text: string): Figure[] {
  return [...text.matchAll(FIGURE)].flatMap(([, sign = '', digits = '', decimals = '', unit]) => {
    if (sign === '' && unit === undefined) return [];
    return [
      {
        text: [`${sign}${digits}`, unit].filter(Boolean).join(' '),
        value: Number(`${sign === '' || sign === '+' ? '' : '-'}${digits}`),
        decimals: decimals.length,
        unit,
      },
    ];
  });
}
