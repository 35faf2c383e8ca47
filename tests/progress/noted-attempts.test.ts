import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { NotedAttempts } from '../../src/progress/noted-attempts.ts';

const NAME = { id: 'task-a', kind: 'patch', revision: 1, concept: 'send', unit: 'sends' };
const attempt = (at: number) => ({
  name: NAME,
  made: { at, score: 0.5, passed: false, isAided: true },
});

/** Storage of a tab, which holds one value. */
function storage(value: string | null = null) {
  let held = value;
  return {
    getItem: () => held,
    setItem: (_: string, text: string) => {
      held = text;
    },
  };
}

test('what was noted is there for the next page, until it is kept', () => {
  const tab = storage();
  const page = new NotedAttempts(tab);
  page.add(attempt(1));
  page.add(attempt(2));
  const next = new NotedAttempts(tab);
  expect(next.all()).toEqual([attempt(1), attempt(2)]);
  next.remove(attempt(1));
  expect(new NotedAttempts(tab).all()).toEqual([attempt(2)]);
});

test('what cannot be read is no attempt, and is in the way of none', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      const page = new NotedAttempts(storage(text));
      const before = page.all().length;
      page.add(attempt(1));
      expect(page.all()).toHaveLength(before + 1);
    }),
  );
});

test('where the tab keeps nothing, nothing is noted and nothing breaks', () => {
  const full = {
    getItem: () => null,
    setItem: () => {
      throw new Error('full');
    },
  };
  for (const tab of [undefined, full]) {
    const page = new NotedAttempts(tab);
    page.add(attempt(1));
    expect(page.all()).toEqual([]);
  }
});
