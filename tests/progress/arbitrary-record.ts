import * as fc from 'fast-check';
import type { Review } from '../../src/progress/review.ts';
import { type Draft, RECORD_VERSION, type TaskRecord } from '../../src/progress/task-record.ts';

/** Few of each, so that records that are merged meet in all ways. */
const writer = fc.constantFrom('w1', 'w2', 'w3');
const at = fc.integer({ min: 1, max: 6 });
const counts = fc.dictionary(writer, fc.integer({ min: 0, max: 9 }));
const score = fc.constantFrom(0, 0.25, 0.5, 1);

export const arbitraryDraft: fc.Arbitrary<Draft> = fc.record({
  text: fc.constantFrom('{"a":1}', '{"a":2}', '{"a":3}', '{"a":4}'),
  at,
  by: fc.constantFrom('tab1', 'tab2'),
  revision: fc.constantFrom(1, 2),
  isFinished: fc.boolean(),
});

/** A record of the task `task-a` without drafts. */
export const arbitraryTask: fc.Arbitrary<TaskRecord> = fc
  .record(
    {
      version: fc.constant(RECORD_VERSION),
      id: fc.constant('task-a'),
      kind: fc.constantFrom('patch', 'choose'),
      revision: fc.constantFrom(1, 2),
      concept: fc.constantFrom('send', 'insert'),
      unit: fc.constantFrom('insert-or-send', 'elsewhere'),
      attempts: counts,
      hints: counts,
      best: score,
      last: fc.record({ at, score, passed: fc.boolean(), isAided: fc.boolean() }),
      passedAt: at,
      solutionShown: fc.boolean(),
      drafts: fc.constant<Draft[]>([]),
    },
    {
      requiredKeys: [
        'version',
        'id',
        'kind',
        'revision',
        'concept',
        'unit',
        'attempts',
        'hints',
        'solutionShown',
        'drafts',
      ],
    },
  )
  .map((record) => record as TaskRecord);

export const arbitraryReview: fc.Arbitrary<Review> = fc
  .record(
    {
      version: fc.constant(RECORD_VERSION),
      concept: fc.constant('send'),
      stage: fc.integer({ min: 0, max: 4 }),
      dueAt: at,
      hasLapsed: fc.boolean(),
      at,
    },
    { requiredKeys: ['version', 'concept', 'stage', 'hasLapsed', 'at'] },
  )
  .map((review) => review as Review);
