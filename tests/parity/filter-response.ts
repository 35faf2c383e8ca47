import { type Complex, complex, divide } from 'mathjs';
import type { Filter } from './network.ts';

const SAMPLE_RATE = 48_000;

/**
 * Response of a filter at a frequency: H(z) = (b₀ + b₁z⁻¹ + b₂z⁻²) / (a₀ + a₁z⁻¹ + a₂z⁻²).
 * Coefficients by “Filters Characteristics” of BiquadFilterNode, W3C Web Audio API; S = 1 for shelves.
 */
export function filterResponse(filter: Filter, frequency: number): Complex {
  const [b, a] = coefficients(filter);
  const w = (2 * Math.PI * frequency) / SAMPLE_RATE;
  const at = ([c0, c1, c2]: Triple): Complex =>
    complex(c0 + c1 * Math.cos(w) + c2 * Math.cos(2 * w), -c1 * Math.sin(w) - c2 * Math.sin(2 * w));
  return divide(at(b), at(a)) as Complex;
}

type Triple = readonly [number, number, number];

function coefficients({ type, frequency, q, gain }: Filter): readonly [b: Triple, a: Triple] {
  const w0 = (2 * Math.PI * frequency) / SAMPLE_RATE;
  const cos = Math.cos(w0);
  const sin = Math.sin(w0);
  const big = 10 ** (gain / 40);
  const alphaQ = sin / (2 * q);
  const alphaQdB = sin / (2 * 10 ** (q / 20));
  const alphaS = (sin / 2) * Math.sqrt((big + 1 / big) * (1 / 1 - 1) + 2);
  const edge = 2 * alphaS * Math.sqrt(big);
  switch (type) {
    case 'highpass':
      return [
        [(1 + cos) / 2, -(1 + cos), (1 + cos) / 2],
        [1 + alphaQdB, -2 * cos, 1 - alphaQdB],
      ];
    case 'peaking':
      return [
        [1 + alphaQ * big, -2 * cos, 1 - alphaQ * big],
        [1 + alphaQ / big, -2 * cos, 1 - alphaQ / big],
      ];
    case 'lowshelf':
      return [
        [
          big * (big + 1 - (big - 1) * cos + edge),
          2 * big * (big - 1 - (big + 1) * cos),
          big * (big + 1 - (big - 1) * cos - edge),
        ],
        [
          big + 1 + (big - 1) * cos + edge,
          -2 * (big - 1 + (big + 1) * cos),
          big + 1 + (big - 1) * cos - edge,
        ],
      ];
    case 'highshelf':
      return [
        [
          big * (big + 1 + (big - 1) * cos + edge),
          -2 * big * (big - 1 + (big + 1) * cos),
          big * (big + 1 + (big - 1) * cos - edge),
        ],
        [
          big + 1 - (big - 1) * cos + edge,
          2 * (big - 1 - (big + 1) * cos),
          big + 1 - (big - 1) * cos - edge,
        ],
      ];
  }
}
