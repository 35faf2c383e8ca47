import type { CourseItem, CourseOutline } from '../../src/progress/course-item.ts';
import type { Kept } from '../../src/progress/knowledge.ts';
import type { Review } from '../../src/progress/review.ts';
import { newRecord, RECORD_VERSION, type TaskRecord } from '../../src/progress/task-record.ts';

export const item = (id: string, concept: string, rig = 'net-loft'): CourseItem => ({
  id,
  kind: 'patch',
  revision: 1,
  concept,
  unit: `on-${concept}`,
  title: `Title of ${id}`,
  rig,
  href: `/lessons/on-${concept}/#${id}`,
});

/** Two confusable pairs and one concept that nobody mistakes. */
export const OUTLINE: CourseOutline = {
  items: [
    item('insert-a', 'insert'),
    item('insert-b', 'insert', 'split-desk'),
    item('insert-c', 'insert'),
    item('send-a', 'send'),
    item('send-b', 'send'),
    item('pre-a', 'pre-fader'),
    item('post-a', 'post-fader'),
    item('loop-a', 'loop'),
  ],
  practice: [
    { ...item('drill-insert-1', 'insert'), kind: 'drill', unit: 'drills' },
    { ...item('drill-insert-2', 'insert'), kind: 'drill', unit: 'drills' },
  ],
  units: ['insert', 'send', 'pre-fader', 'post-fader', 'loop'].map((concept) => ({
    id: `on-${concept}`,
    title: `On ${concept}`,
    href: `/lessons/on-${concept}/`,
    proof: concept === 'insert' ? ['insert-b', 'insert-c'] : [],
  })),
  concepts: [
    { id: 'insert', term: 'insert' },
    { id: 'send', term: 'send' },
    { id: 'loop', term: 'feedback loop' },
  ],
  confusable: [
    ['insert', 'send'],
    ['pre-fader', 'post-fader'],
  ],
};

/** A record of an item that was tried last at a moment. */
export function tried(id: string, at: number, passed = true): TaskRecord {
  const name = OUTLINE.items.find((one) => one.id === id) ?? item(id, 'gone');
  return {
    ...newRecord(name),
    attempts: { w: 1 },
    last: { at, score: passed ? 1 : 0.5, passed, isAided: false },
    ...(passed ? { passedAt: at, best: 1 } : { best: 0.5 }),
  };
}

export const review = (concept: string, dueAt: number | undefined): Review => ({
  version: RECORD_VERSION,
  concept,
  stage: dueAt === undefined ? 4 : 1,
  hasLapsed: false,
  at: 1,
  ...(dueAt === undefined ? {} : { dueAt }),
});

export const kept = (tasks: readonly TaskRecord[], reviews: readonly Review[]): Kept => ({
  tasks: new Map(tasks.map((one) => [one.id, one])),
  reviews: new Map(reviews.map((one) => [one.concept, one])),
});
