/** Red, green and blue of linear light, each from 0 to 1. */
type Light = readonly [number, number, number];

/** Kinds of colour vision that a palette is held against. */
export type Vision = 'usual' | 'protanopia' | 'deuteranopia' | 'tritanopia';

/**
 * What is left of linear light, as rows of a matrix.
 * Source: Machado, Oliveira, Fernandes 2009, table 1, severity 1.0.
 */
const VISION: Record<Vision, readonly (readonly [number, number, number])[]> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Linear light of a colour written `#rrggbb`. Source: IEC 61966-2-1. */
function lightOf(hex: string): Light {
  const channel = (start: number): number => {
    const value = Number.parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

const luminanceOf = ([red, green, blue]: Light): number =>
  0.2126 * red + 0.7152 * green + 0.0722 * blue;

/** Contrast ratio of two colours, from 1 to 21. Source: WCAG 2.2, "contrast ratio". */
export function contrast(one: string, other: string): number {
  const [dark = 0, bright = 0] = [one, other]
    .map((hex) => luminanceOf(lightOf(hex)))
    .sort((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
}

/** Distance of two colours as somebody sees them: ΔE*ab of CIE 1976, where 2.3 is just visible. */
export function distance(one: string, other: string, vision: Vision): number {
  const [a, b] = [one, other].map((hex) => labOf(seenBy(vision, lightOf(hex)))) as [Light, Light];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function seenBy(vision: Vision, light: Light): Light {
  const [red, green, blue] = VISION[vision].map((row) => {
    const sum = row[0] * light[0] + row[1] * light[1] + row[2] * light[2];
    return Math.min(1, Math.max(0, sum));
  });
  return [red ?? 0, green ?? 0, blue ?? 0];
}

/** CIE L*a*b* of linear sRGB light under D65. Source: ISO/CIE 11664-4. */
function labOf([red, green, blue]: Light): Light {
  const cube = (t: number): number => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const x = cube((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / 0.95047);
  const y = cube(0.2126729 * red + 0.7151522 * green + 0.072175 * blue);
  const z = cube((0.0193339 * red + 0.119192 * green + 0.9503041 * blue) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
