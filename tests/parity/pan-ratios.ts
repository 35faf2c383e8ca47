import type { PanLaw } from './setup-file.ts';

/** Ratios of a pan by its documented law, −1 to 1: the W3C's cosine and sine, a straight line, or their geometric mean. */
export function panRatios(law: PanLaw, position: number): readonly [left: number, right: number] {
  const angle = ((position + 1) * Math.PI) / 4;
  const sides = [
    [Math.cos(angle), (1 - position) / 2],
    [Math.sin(angle), (1 + position) / 2],
  ] as const;
  const [left, right] = sides.map(([round, straight]) => {
    if (straight === 0 || straight === 1) return straight;
    if (law === 'equal-power') return round;
    return law === 'linear' ? straight : Math.sqrt(round * straight);
  });
  return [left ?? 0, right ?? 0];
}

/** Ratios of a balance: the far side falls by a quarter of a cosine, the near one stays. */
export function balanceRatios(position: number): readonly [left: number, right: number] {
  const far = Math.abs(position) === 1 ? 0 : Math.cos((Math.abs(position) * Math.PI) / 2);
  return [position > 0 ? far : 1, position < 0 ? far : 1];
}

/** What each input of a stereo panner gives to each output, by the W3C's StereoPannerNode. */
export function foldRatios(position: number): {
  readonly fromLeft: readonly [left: number, right: number];
  readonly fromRight: readonly [left: number, right: number];
} {
  const inner = panRatios('equal-power', position <= 0 ? 2 * position + 1 : 2 * position - 1);
  return position <= 0
    ? { fromLeft: [1, 0], fromRight: inner }
    : { fromLeft: inner, fromRight: [0, 1] };
}
