import { type Board, controlAt, numberAt, withValues } from '../board/board.ts';
import type { Claim, ClaimOf } from '../grade/check.ts';
import type { Task } from '../grade/grade.ts';
import { placeNamed } from '../grade/hearing.ts';
import { holds } from '../grade/holds.ts';
import type { Address } from '../rig/address.ts';
import { levelOf } from '../solve/levels.ts';
import { simulate } from '../solve/simulate.ts';
import type { Solution } from '../solve/solution.ts';

/** How often the gains are set anew by what is heard then. Levels that only add in dB need one round. */
const ROUNDS = 4;
/** How often the bands are gone through in one round. */
const PASSES = 400;
/** A band is aimed at this share of its width within either end, so that what is found can be rounded. */
const MARGIN = 0.2;
/** In dB: values that move by less in one pass have come as near as they can. */
const SETTLED = 1e-3;
/** Steps in dB that a gain is rounded to, if the levels allow it. */
const STEPS = [1, 0.5, 0.1];

/** The levels at the ends of a band in dBu, and how far each gain moves what lies in it: dB by dB. */
interface Band {
  readonly level: number;
  readonly least: number;
  readonly most: number;
  readonly slopes: readonly number[];
}

interface Reach {
  readonly standing: number;
  readonly min: number;
  readonly max: number;
}

/**
 * Finds values of some gains with which all levels are as a task asks, and nothing else of it fails.
 *
 * Near where it stands each level is a sum of gains in dB, so the values that will do are those that lie
 * between pairs of planes. They are found by going from plane to plane (Kaczmarz), and are then listened to.
 *
 * @param gains addresses of gains that stand open on the board.
 * @returns the board, with round values; nothing when there are none, or none were found.
 */
export function tune(task: Task, board: Board, gains: readonly Address[]): Board | undefined {
  const { rig, checks } = task;
  const claims = checks.map(({ claim }) => claim);
  const isLevel = ({ kind }: Claim) => kind === 'reaches';
  const byCost = [...claims.filter(isLevel), ...claims.filter((claim) => !isLevel(claim))];
  let tuned = board;
  for (let round = 0; round <= ROUNDS; round += 1) {
    const solution = simulate({ rig, board: tuned });
    const hearing = { setup: { rig, board: tuned }, solution };
    const failing = byCost.find((claim) => !holds(claim, hearing));
    if (!failing) return tuned;
    // What depends on no level of its own is not mended by one.
    if (failing.kind !== 'reaches' || gains.length === 0 || round === ROUNDS) return undefined;
    const bands = bandsOf(task, claims, tuned, solution, gains);
    if (!bands?.every(isInReach)) return undefined;
    const reaches = gains.map((address): Reach => {
      const control = controlAt(rig, address);
      const standing = numberAt({ rig, board: tuned }, address);
      return control.kind === 'gain'
        ? { standing, min: Math.max(control.min, LEAST_USEFUL), max: control.max }
        : { standing, min: standing, max: standing };
    });
    const values = between(bands, reaches);
    if (!values) return undefined;
    const next = Object.fromEntries(gains.map((address, index) => [address, values[index] ?? 0]));
    tuned = withValues(rig, board, next);
  }
  return undefined;
}

/** What is lower than this, in dB, nobody means to be heard. */
const LEAST_USEFUL = -60;

/** The bands of levels that are asked for; nothing when something is silent that should be heard. */
function bandsOf(
  { rig }: Task,
  claims: readonly Claim[],
  board: Board,
  now: Solution,
  gains: readonly Address[],
): Band[] | undefined {
  const asked = claims.filter((claim): claim is ClaimOf<'reaches'> => claim.kind === 'reaches');
  const levelsIn = (solution: Solution) =>
    asked.map(({ source, output }) => levelOf(solution, source, placeNamed(rig, output)));
  const levels = levelsIn(now);
  if (levels.some((level) => level === undefined || level === -Infinity)) return undefined;
  const moved = gains.map((address) => {
    const value = numberAt({ rig, board }, address);
    const control = controlAt(rig, address);
    const by = control.kind === 'gain' && value + 1 > control.max ? -1 : 1;
    const solution = simulate({ rig, board: withValues(rig, board, { [address]: value + by }) });
    return { by, levels: levelsIn(solution) };
  });
  return asked.map(({ minDbu, maxDbu }, index) => {
    const level = levels[index] ?? 0;
    const slopes = moved.map(({ by, levels: after }) => ((after[index] ?? level) - level) / by);
    return { level, least: minDbu, most: maxDbu, slopes };
  });
}

/** Whether a level is within its band, or some gain moves it. */
const isInReach = ({ level, least, most, slopes }: Band): boolean =>
  (level >= least && level <= most) || slopes.some((slope) => Math.abs(slope) > LEAST_SLOPE);

/** What moves a level by less, in dB for each dB, does not bring it anywhere. */
const LEAST_SLOPE = 1e-6;

/** Values of the gains at which every level lies in its band, if all goes on as near where they stand. */
function between(bands: readonly Band[], reaches: readonly Reach[]): number[] | undefined {
  const values = reaches.map(({ standing }) => standing);
  const levelWith = ({ level, slopes }: Band, at: readonly number[]): number =>
    slopes.reduce(
      (sum, slope, index) => sum + slope * ((at[index] ?? 0) - (reaches[index]?.standing ?? 0)),
      level,
    );
  const fits = (at: readonly number[], margin: number): boolean =>
    bands.every((band) => {
      const inside = (band.most - band.least) * margin;
      const level = levelWith(band, at);
      return level >= band.least + inside - 1e-9 && level <= band.most - inside + 1e-9;
    });
  for (let pass = 0; pass < PASSES && !fits(values, MARGIN * 0.9); pass += 1) {
    const before = [...values];
    for (const band of bands) project(band, values, levelWith(band, values));
    reaches.forEach(({ min, max }, index) => {
      values[index] = Math.min(max, Math.max(min, values[index] ?? 0));
    });
    // Bands that have nothing in common send the values round and round.
    if (values.every((value, index) => Math.abs(value - (before[index] ?? 0)) < SETTLED)) break;
  }
  const rounded = STEPS.map((step) => values.map((value) => tidy(Math.round(value / step) * step)));
  const found = rounded.find((at) => fits(at, 0.02) && isWithin(at, reaches));
  return found ?? values.map((value) => tidy(Math.round(value * 100) / 100));
}

/** Moves values the shortest way into a band, aimed a little within its ends. */
function project({ least, most, slopes }: Band, values: number[], level: number): void {
  const inside = (most - least) * MARGIN;
  const off = Math.max(0, least + inside - level) - Math.max(0, level - (most - inside));
  const norm = slopes.reduce((sum, slope) => sum + slope * slope, 0);
  if (off === 0 || norm < 1e-9) return;
  slopes.forEach((slope, index) => {
    values[index] = (values[index] ?? 0) + (off * slope) / norm;
  });
}

const isWithin = (at: readonly number[], reaches: readonly Reach[]): boolean =>
  reaches.every(({ min, max }, index) => (at[index] ?? 0) >= min && (at[index] ?? 0) <= max);

/** Without the dust of binary fractions, and without a negative zero. */
const tidy = (value: number): number => Math.round(value * 100) / 100 + 0;
