import type { BenchRecord } from './bench-record.ts';
import type { Review } from './review.ts';
import type { Counts, Draft, TaskRecord } from './task-record.ts';

/**
 * What two records of a task say together: of what was counted the larger count of each writer, the best
 * score, the newest attempt, the first pass, the drafts that {@link keptDrafts} keeps. Nothing that either
 * counted is lost and nothing counts twice, so that it is commutative, associative and idempotent.
 *
 * @throws RangeError when they are records of two tasks.
 */
export function mergeTasks(one: TaskRecord, other: TaskRecord): TaskRecord {
  if (one.id !== other.id) {
    throw new RangeError(`Expected two records of one task, but got ${one.id} and ${other.id}.`);
  }
  const best = maxOf([one.best, other.best]);
  const last = newest([one.last, other.last]);
  const passedAt = minOf([one.passedAt, other.passedAt]);
  const { version, id, kind, revision, concept, unit } =
    nameRank(one) < nameRank(other) ? other : one;
  return {
    version,
    id,
    kind,
    revision,
    concept,
    unit,
    attempts: largerCounts(one.attempts, other.attempts),
    hints: largerCounts(one.hints, other.hints),
    ...(best === undefined ? {} : { best }),
    ...(last === undefined ? {} : { last }),
    ...(passedAt === undefined ? {} : { passedAt }),
    solutionShown: one.solutionShown || other.solutionShown,
    drafts: keptDrafts([...one.drafts, ...other.drafts]),
  };
}

/** What two reviews of a concept say together: the one that changed last. @throws RangeError for two concepts. */
export function mergeReviews(one: Review, other: Review): Review {
  if (one.concept !== other.concept) {
    throw new RangeError(
      `Expected two of one concept, but got ${one.concept} and ${other.concept}.`,
    );
  }
  return newest([one, other]) ?? one;
}

/** What two records of a room say together. @throws RangeError for two rooms. */
export function mergeBenches(one: BenchRecord, other: BenchRecord): BenchRecord {
  if (one.room !== other.room) {
    throw new RangeError(`Expected two of one room, but got ${one.room} and ${other.room}.`);
  }
  return { ...one, drafts: keptDrafts([...one.drafts, ...other.drafts]) };
}

/** Of drafts those that are kept: the two newest that are unfinished, and a finished one that is newer than both. */
export function keptDrafts(drafts: readonly Draft[]): Draft[] {
  const byText = Map.groupBy(drafts, ({ text, revision, isFinished, seed }) =>
    JSON.stringify([text, revision, isFinished, seed]),
  );
  const newestFirst = [...byText.values()]
    .flatMap((alike) => newest(alike) ?? [])
    .sort((a, b) => (isNewer(a, b) ? -1 : 1));
  const unfinished = newestFirst.filter(({ isFinished }) => !isFinished).slice(0, 2);
  return [...newestFirst.slice(0, 1).filter(({ isFinished }) => isFinished), ...unfinished];
}

interface Dated {
  readonly at: number;
}

/** Of two of the same moment one has to win, whichever comes first: the one whose text is later in order. */
const isNewer = (one: Dated, other: Dated): boolean =>
  one.at === other.at ? sorted(one) > sorted(other) : one.at > other.at;

const newest = <T extends Dated>(all: readonly (T | undefined)[]): T | undefined =>
  all.reduce((best, next) => (best && !(next && isNewer(next, best)) ? best : next), undefined);

/** Its entries as text, by name, so that the order in which they were written says nothing. */
const sorted = (value: object): string => JSON.stringify(Object.entries(value).sort());

/** Of two names of a task the one of the later revision holds. */
const nameRank = ({ revision, kind, concept, unit }: TaskRecord): string =>
  `${String(revision).padStart(16, '0')} ${kind} ${concept} ${unit}`;

function largerCounts(one: Counts, other: Counts): Counts {
  const writers = [...new Set([...Object.keys(one), ...Object.keys(other)])].sort();
  return Object.fromEntries(
    writers.map((writer) => [writer, Math.max(one[writer] ?? 0, other[writer] ?? 0)]),
  );
}

const present = (all: readonly (number | undefined)[]): number[] =>
  all.filter((one) => one !== undefined);
const maxOf = (all: readonly (number | undefined)[]) =>
  present(all).length > 0 ? Math.max(...present(all)) : undefined;
const minOf = (all: readonly (number | undefined)[]) =>
  present(all).length > 0 ? Math.min(...present(all)) : undefined;
