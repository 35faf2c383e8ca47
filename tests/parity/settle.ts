import { levelElsewhere } from './comparison.ts';
import { solveWithMathjs } from './engines.ts';
import type { Network, Part } from './network.ts';
import { networkToMatrix } from './setup-to-matrix.ts';
import { type Elsewhere, solveElsewhere } from './solve-elsewhere.ts';

export type Compressor = Part & { readonly kind: 'compressor' };

/** A network with its compressors at rest. */
export interface Settled {
  readonly elsewhere: Elsewhere;
  /** In dB, 0 or less. */
  readonly gains: ReadonlyMap<Compressor, number>;
}

const MOST_ROUNDS = 120;
/** A gain this near to what its compressor makes of the level that comes of it is at rest, in dB. */
const AT_REST = 1e-10;

/**
 * Solves a network again and again, until no compressor moves. Inside a loop a gain acts on the level that it comes
 * from, so each goes as far as the slope of its last two steps says (Newton's method, one unknown at a time).
 *
 * @returns nothing where they do not come to rest, or a loop cannot be judged.
 */
export function settle(network: Network): Settled | undefined {
  const compressors = network.parts.filter((part) => part.kind === 'compressor');
  let gains = new Map<Compressor, number>(compressors.map((part) => [part, 0]));
  let before: { gains: typeof gains; wanted: Map<Compressor, number> } | undefined;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const elsewhere = solveElsewhere(networkToMatrix(network, 1000, gains), solveWithMathjs);
    if (!elsewhere) return undefined;
    const wanted = new Map(
      compressors.map((part) => {
        const level = levelElsewhere(elsewhere, part.from);
        // What grows while nothing is turned down is unstable, though a compressor might hold it.
        return [part, level === undefined ? (gains.get(part) ?? 0) : reductionAt(part, level)];
      }),
    );
    const isAtRest = compressors.every(
      (part) => Math.abs((wanted.get(part) ?? 0) - (gains.get(part) ?? 0)) <= AT_REST,
    );
    if (isAtRest) return { elsewhere, gains };
    const last = before;
    before = { gains, wanted };
    gains = new Map(
      compressors.map((part) => {
        const [gain, goal] = [gains.get(part) ?? 0, wanted.get(part) ?? 0];
        const moved = gain - (last?.gains.get(part) ?? gain);
        const slope = moved === 0 ? 0 : (goal - (last?.wanted.get(part) ?? goal)) / moved;
        return [part, gain + (goal - gain) / (1 - Math.min(0, slope))];
      }),
    );
  }
  return undefined;
}

/**
 * Gain of a compressor at a level, from the piecewise curve of Giannoulis, Massberg and Reiss (2012):
 * x; x + (1/R − 1)(x − T + W/2)²/(2W) within the knee; T + (x − T)/R.
 */
function reductionAt({ threshold: t, ratio: r, knee: w }: Compressor, x: number): number {
  if (x === -Infinity || x - t <= -w / 2) return 0;
  if (x - t < w / 2) return ((1 / r - 1) * (x - t + w / 2) ** 2) / (2 * w);
  return t + (x - t) / r - x;
}
