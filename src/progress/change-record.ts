import { keptDrafts } from './merge.ts';
import {
  type Counts,
  type Draft,
  HIGHEST_COUNT,
  type Moment,
  type TaskName,
  type TaskRecord,
} from './task-record.ts';

/** A record of something that one can leave half done. */
interface HasDrafts {
  readonly drafts: Draft[];
}

/** What tells one draft from another. */
export type DraftName = Pick<Draft, 'by' | 'at'>;

/** What came of an attempt. */
export interface Outcome {
  /** From 0 to 1. */
  readonly score: number;
  readonly passed: boolean;
  /** Whether a solution had been shown since the task was begun. */
  readonly isAided: boolean;
}

/** A record by what the course says of its task today. A revision that is older than what is kept changes nothing. */
export const underName = (record: TaskRecord, name: TaskName): TaskRecord =>
  name.revision < record.revision ? record : { ...record, ...name };

/** A record after an attempt. The best attempt without aid counts, however many there are. */
export function withAttempt(
  record: TaskRecord,
  { score, passed, isAided }: Outcome,
  at: Moment,
  writer: string,
): TaskRecord {
  return {
    ...record,
    attempts: countedOn(record.attempts, writer),
    last: { at, score, passed, isAided },
    ...(isAided ? {} : { best: Math.max(score, record.best ?? 0) }),
    ...(passed && !isAided ? { passedAt: record.passedAt ?? at } : {}),
  };
}

/** A record after a hint was asked for. */
export const withHint = (record: TaskRecord, writer: string): TaskRecord => ({
  ...record,
  hints: countedOn(record.hints, writer),
});

/** A record after a solution was shown. */
export const withSolution = (record: TaskRecord): TaskRecord => ({
  ...record,
  solutionShown: true,
});

/**
 * A record with a new draft. It takes the place of what the same tab wrote, and of the draft that the tab
 * had taken up; what another tab wrote meanwhile stays beside it, as long as it is unfinished. So does what was
 * left undone of another seed.
 *
 * @param takenUp the draft that the tab began from, if any.
 */
export function withDraft<R extends HasDrafts>(
  record: R,
  draft: Draft,
  takenUp: DraftName | undefined,
): R {
  const isReplaced = ({ by, at, seed }: Draft) =>
    seed === draft.seed && (by === draft.by || (by === takenUp?.by && at <= takenUp.at));
  const others = record.drafts.filter(
    (one) => !isReplaced(one) && (one.text !== draft.text || one.seed !== draft.seed),
  );
  return { ...record, drafts: keptDrafts([draft, ...others]) };
}

/** A record without a draft that did not fit its task. */
export const withoutDraft = <R extends HasDrafts>(record: R, { by, at }: DraftName): R => ({
  ...record,
  drafts: record.drafts.filter((one) => one.by !== by || one.at !== at),
});

const countedOn = (counts: Counts, writer: string): Counts => ({
  ...counts,
  [writer]: Math.min((counts[writer] ?? 0) + 1, HIGHEST_COUNT),
});
