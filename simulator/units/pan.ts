import type { Ratio } from './level.ts';

/**
 * How a pan control divides one signal between left and right.
 *
 * - `equal-power`: the power of both sides together stays the same; −3.01 dB at the centre.
 * - `compromise`: the geometric mean of the other two; −4.52 dB at the centre.
 * - `linear`: the voltages of both sides add up to the same; −6.02 dB at the centre.
 */
export const PAN_LAWS = ['equal-power', 'compromise', 'linear'] as const;
export type PanLaw = (typeof PAN_LAWS)[number];

/** Voltage ratios to the left and to the right. */
export interface PanRatios {
  readonly left: Ratio;
  readonly right: Ratio;
}

/**
 * Ratios to both sides of a mono signal.
 *
 * Source of `equal-power`: W3C Web Audio API, StereoPannerNode, x = (p + 1) / 2, cos(xπ/2), sin(xπ/2).
 *
 * @param position −1 is left, 0 the centre, 1 right. @throws RangeError outside of that.
 */
export function panMono(law: PanLaw, position: number): PanRatios {
  const x = (within(position) + 1) / 2;
  const left = sideRatio(law, 1 - x);
  const right = sideRatio(law, x);
  return { left: left as Ratio, right: right as Ratio };
}

/** Ratio to one side, for a control turned by `share` (0 to 1) towards it. The ends are exact. */
function sideRatio(law: PanLaw, share: number): number {
  if (share === 0 || share === 1) return share;
  const equalPower = Math.sin((share * Math.PI) / 2);
  if (law === 'equal-power') return equalPower;
  return law === 'linear' ? share : Math.sqrt(share * equalPower);
}

/** Where each side of a stereo signal goes: `leftToRight` is the ratio of the left input in the right output. */
export interface StereoPanRatios {
  readonly leftToLeft: Ratio;
  readonly leftToRight: Ratio;
  readonly rightToLeft: Ratio;
  readonly rightToRight: Ratio;
}

/**
 * Ratios of a stereo panner, which folds the far side into the near one and loses nothing.
 *
 * At the centre both sides pass as they are. Source: W3C Web Audio API, StereoPannerNode with two channels.
 *
 * @param position −1 is left, 0 the centre, 1 right. @throws RangeError outside of that.
 */
export function panStereo(position: number): StereoPanRatios {
  const x = within(position) <= 0 ? position + 1 : position;
  const { left, right } = panMono('equal-power', 2 * x - 1);
  const [pass, fold] = [1 as Ratio, 0 as Ratio];
  return position <= 0
    ? { leftToLeft: pass, leftToRight: fold, rightToLeft: left, rightToRight: right }
    : { leftToLeft: left, leftToRight: right, rightToLeft: fold, rightToRight: pass };
}

/**
 * Ratios of a balance control, which turns the far side down and leaves the near one alone.
 * Common practice, no source; the law of the falling side is a quarter cosine.
 *
 * @param position −1 is left, 0 the centre (both sides at unity), 1 right. @throws RangeError outside of that.
 */
export function balance(position: number): PanRatios {
  const turn = within(position);
  const far = Math.abs(turn) === 1 ? 0 : Math.cos((turn * Math.PI) / 2);
  return { left: (turn > 0 ? far : 1) as Ratio, right: (turn < 0 ? far : 1) as Ratio };
}

/**
 * Ratios of a mono switch that is on: both sides get the mean of the two, so that what stands in the middle keeps
 * its level, and what differs between them falls away. Common practice, no source.
 */
export function monoSwitch(): StereoPanRatios {
  const half = 0.5 as Ratio;
  return { leftToLeft: half, leftToRight: half, rightToLeft: half, rightToRight: half };
}

function within(position: number): number {
  if (!(position >= -1 && position <= 1)) {
    throw new RangeError(`A pan position must lie between -1 and 1, but got ${position}.`);
  }
  return position;
}
