/** A spectrum, or a signal with an imaginary part: two arrays of one length. */
export interface ComplexArray {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * Discrete Fourier transform in place, radix 2: X[k] = Σ x[n] e^(−2πikn/N). The length is a power of two.
 * Source: Cooley and Tukey, *An algorithm for the machine calculation of complex Fourier series*, 1965.
 */
export function transform({ re, im }: ComplexArray): void {
  const length = re.length;
  for (let index = 1, reversed = 0; index < length; index += 1) {
    let bit = length >> 1;
    for (; reversed & bit; bit >>= 1) reversed ^= bit;
    reversed ^= bit;
    if (index < reversed) {
      swap(re, index, reversed);
      swap(im, index, reversed);
    }
  }
  for (let size = 2; size <= length; size *= 2) {
    const half = size / 2;
    for (let pair = 0; pair < half; pair += 1) {
      const angle = (-2 * Math.PI * pair) / size;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      for (let even = pair; even < length; even += size) {
        const odd = even + half;
        const oddRe = at(re, odd) * cos - at(im, odd) * sin;
        const oddIm = at(re, odd) * sin + at(im, odd) * cos;
        re[odd] = at(re, even) - oddRe;
        im[odd] = at(im, even) - oddIm;
        re[even] = at(re, even) + oddRe;
        im[even] = at(im, even) + oddIm;
      }
    }
  }
}

/** The transform back, in place: exchanging both parts before and after turns one into the other. */
export function transformBack({ re, im }: ComplexArray): void {
  transform({ re: im, im: re });
  for (let index = 0; index < re.length; index += 1) {
    re[index] = at(re, index) / re.length;
    im[index] = at(im, index) / im.length;
  }
}

const at = (array: Float64Array, index: number): number => array[index] ?? 0;

function swap(array: Float64Array, one: number, other: number): void {
  const kept = at(array, one);
  array[one] = at(array, other);
  array[other] = kept;
}
