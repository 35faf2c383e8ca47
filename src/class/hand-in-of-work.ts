import { SIMULATOR_VERSION } from '../../simulator/index.ts';
import { type Assignment, assignmentDigest } from './assignment.ts';
import { withRecordThatFits } from './fit.ts';
import { HAND_IN, type HandIn } from './hand-in.ts';
import { MOST_BYTES } from './open-files.ts';
import type { Work, WorkItem } from './work.ts';

/** A character of a file has up to so many bytes where it is not plain. Names and words hardly have any. */
const MOST_CHARACTERS = MOST_BYTES / 2;

/**
 * What a learner hands in: of each item the best answer of those that were checked, or else the answer as it stands.
 *
 * @param course version of the course. @param at the moment.
 */
export function handInOfWork(
  work: Work,
  assignment: Assignment,
  course: string,
  at: number,
): HandIn {
  const { learner, name, startedAt, events } = work;
  const known = new Set(assignment.items.map(({ id }) => id));
  const whole: HandIn = {
    format: HAND_IN.format,
    version: HAND_IN.version,
    assignment: { id: assignment.id, digest: assignmentDigest(assignment) },
    course,
    simulator: SIMULATOR_VERSION,
    learner,
    ...(name.trim() === '' ? {} : { name: name.trim() }),
    startedAt,
    handedInAt: Math.max(at, startedAt),
    items: work.items.filter(({ id }) => known.has(id)).map(handed),
    events: events.filter(({ item }) => known.has(item)),
  };
  return withRecordThatFits(whole, MOST_CHARACTERS);
}

function handed(item: WorkItem): HandIn['items'][number] {
  const { id, revision, seed, best, attempts, hints, spentMs, interactions } = item;
  const answer = best?.answer ?? item.answer;
  return {
    id,
    ...(revision === undefined ? {} : { revision }),
    ...(seed === undefined ? {} : { seed }),
    ...(answer === undefined ? {} : { answer }),
    ...(best === undefined ? {} : { claimed: best.score }),
    attempts,
    hints,
    spentMs: Math.round(spentMs),
    interactions: [...interactions],
  };
}
