import { describe, expect, test } from 'vitest';
import { MOST_IN_QUEUE, reviewQueue } from '../../src/progress/review-queue.ts';
import { item, kept, OUTLINE, review, tried } from './small-outline.ts';

const NOW = 1000;
const queue = (...given: Parameters<typeof kept>) =>
  reviewQueue(OUTLINE, kept(...given), NOW).map(({ item: { id } }) => id);

describe('reviewQueue()', () => {
  test('what is not due is not asked, and of nothing there is nothing', () => {
    expect(queue([], [])).toEqual([]);
    expect(
      queue([tried('loop-a', 5)], [review('loop', NOW + 1), review('send', undefined)]),
    ).toEqual([]);
  });

  test('confusable concepts that are due alternate, the one that has waited longest first', () => {
    const reviews = [review('send', 900), review('insert', 800)];
    expect(queue([tried('send-a', 5), tried('insert-a', 6)], reviews)).toEqual([
      'insert-b',
      'send-b',
      'insert-c',
      'send-a',
    ]);
  });

  test('another task before the same one, and one on another rig before those', () => {
    expect(queue([tried('insert-b', 7)], [review('insert', 800)])).toEqual([
      'insert-a',
      'insert-c',
    ]);
    expect(queue([tried('insert-c', 7)], [review('insert', 800)])).toEqual([
      'insert-b',
      'insert-a',
    ]);
  });

  test('a concept that has lapsed is asked by a drill as well, of the first level not passed yet', () => {
    const lapsed = { ...review('insert', 800), hasLapsed: true };
    expect(queue([tried('insert-c', 7)], [lapsed])).toEqual(['insert-b', 'drill-insert-1']);
    const passed = { ...tried('insert-a', 6), id: 'drill-insert-1' };
    expect(queue([tried('insert-c', 7), passed], [lapsed])).toEqual(['insert-b', 'drill-insert-2']);
  });

  test('the same task comes back where there is no other', () => {
    expect(queue([tried('loop-a', 7)], [review('loop', 800)])).toEqual(['loop-a']);
  });

  test('a concept that was passed and is not due stands beside the one it is mistaken for', () => {
    const found = reviewQueue(
      OUTLINE,
      kept(
        [tried('pre-a', 7), tried('post-a', 8)],
        [review('pre-fader', 800), review('post-fader', NOW + 500)],
      ),
      NOW,
    );
    expect(found.map(({ item: { id }, why }) => [id, why])).toEqual([
      ['pre-a', { code: 'due', dueAt: 800 }],
      ['post-a', { code: 'beside', concept: 'pre-fader' }],
    ]);
  });

  test('whether it asks on another rig is told', () => {
    const found = reviewQueue(OUTLINE, kept([tried('insert-a', 7)], [review('insert', 800)]), NOW);
    expect(found.map(({ item: { id }, isOnAnotherRig }) => [id, isOnAnotherRig])).toEqual([
      ['insert-b', true],
      ['insert-c', false],
    ]);
  });

  test('the same state gives the same queue, in whatever order it was read', () => {
    const tasks = [tried('send-a', 5), tried('insert-a', 6), tried('pre-a', 7)];
    const reviews = [review('send', 900), review('insert', 900), review('pre-fader', 800)];
    expect(queue(tasks, reviews)).toEqual(queue(tasks.toReversed(), reviews.toReversed()));
  });

  test('a review ends after 12 tasks', () => {
    const concepts = Array.from({ length: 9 }, (_, index) => `c${index}`);
    const outline = {
      ...OUTLINE,
      items: concepts.flatMap((one) => [item(`${one}-a`, one), item(`${one}-b`, one)]),
    };
    const all = kept(
      [],
      concepts.map((one) => review(one, 500)),
    );
    expect(reviewQueue(outline, all, NOW).length).toBe(MOST_IN_QUEUE);
    expect(MOST_IN_QUEUE).toBe(12);
  });
});
