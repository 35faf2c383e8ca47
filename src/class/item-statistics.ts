/**
 * What the answers of a class say of the items of an assignment. Variances are those of a population:
 * the class is all there is, it is no sample of another one.
 *
 * A row holds the scores of one learner, an item each, 0 to 1, in the same order in every row.
 */
export type Scores = readonly (readonly number[])[];

/** With fewer learners than this, chance decides more than the items do, and nothing is shown. */
export const FEWEST_LEARNERS = 20;

/** A variance below this is what rounding makes of none. */
const NO_SPREAD = 1e-12;

/** Mean score of an item, the p of the handbooks: 0 when nobody solved it, 1 when all did. */
export const difficulty = (scores: Scores, item: number): number =>
  mean(scores.map((row) => scoreAt(row, item)));

/**
 * Correlation of an item with the sum of all others (the corrected point-biserial): whether those who do
 * well elsewhere do well here. Nothing when all scored the same, on the item or on the rest.
 */
export function discrimination(scores: Scores, item: number): number | undefined {
  const own = scores.map((row) => scoreAt(row, item));
  const rest = scores.map((row) => sum(row) - scoreAt(row, item));
  return correlation(own, rest);
}

/**
 * KR-20, or Cronbach's alpha where items can be scored in part, of which it is a case: how far the items
 * measure one thing. Nothing with fewer than two items, or when all have the same total.
 *
 * Source: G. F. Kuder, M. W. Richardson, Psychometrika 2 (1937), formula 20.
 */
export function reliability(scores: Scores): number | undefined {
  const items = scores[0]?.length ?? 0;
  const ofTotals = variance(scores.map(sum));
  if (items < 2 || ofTotals < NO_SPREAD) return undefined;
  const ofItems = Array.from({ length: items }, (_, item) =>
    variance(scores.map((row) => scoreAt(row, item))),
  );
  return (items / (items - 1)) * (1 - sum(ofItems) / ofTotals);
}

/**
 * By how much more of the upper group solved an item than of the lower one, −1 to 1.
 *
 * @param upper scores of those who did best on the whole. @param lower of those who did worst.
 */
export const upperLowerIndex = (upper: readonly number[], lower: readonly number[]): number =>
  mean(upper) - mean(lower);

/** Pearson's correlation; nothing when one side does not vary. */
function correlation(one: readonly number[], other: readonly number[]): number | undefined {
  const spread = Math.sqrt(variance(one) * variance(other));
  if (spread < NO_SPREAD) return undefined;
  const [centre, otherCentre] = [mean(one), mean(other)];
  const products = one.map((value, at) => (value - centre) * ((other[at] ?? 0) - otherCentre));
  return mean(products) / spread;
}

function variance(values: readonly number[]): number {
  const centre = mean(values);
  return mean(values.map((value) => (value - centre) ** 2));
}

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : sum(values) / values.length;

function scoreAt(row: readonly number[], item: number): number {
  const score = row[item];
  if (score === undefined) {
    throw new RangeError(`Expected a score for item ${item}, found a row of ${row.length}.`);
  }
  return score;
}
