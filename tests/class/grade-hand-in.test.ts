import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../simulator/index.ts';
import { Grader, gradeHandIn } from '../../src/class/grade-hand-in.ts';
import { type HandIn, handInText, parseHandIn } from '../../src/class/hand-in.ts';
import { ASSIGNMENT, COURSE, handInOf } from './a-class.ts';

const GRADER = new Grader('assignment.json', ASSIGNMENT, COURSE);
const gradeText = (text: string) => GRADER.grade('h.json', parseHandIn('h.json', text));
const ALL = ASSIGNMENT.items.map(({ id }) => id);

describe('gradeHandIn()', () => {
  test('all right: 10 of 10 points', () => {
    const graded = gradeHandIn(ASSIGNMENT, COURSE, handInOf('ada-1', ALL));
    expect(graded.items.map(({ share }) => share)).toEqual([1, 1, 1, 1]);
    expect(graded).toMatchObject({ share: 1, passed: true, notes: [] });
  });

  test('weights count: scenario and question right, drills wrong: at least (4 + 2) / 10 = 60 %', () => {
    const graded = gradeHandIn(ASSIGNMENT, COURSE, handInOf('ada-1', ['out', 'insert']));
    const [, , alike, own] = graded.items;
    expect(graded.share).toBeCloseTo(0.6 + 0.1 * (alike?.share ?? 0) + 0.3 * (own?.share ?? 0), 12);
    expect(graded.passed).toBe(true);
  });

  test('parts are marked by their weights: of the start of one-each the checks that pass already', () => {
    const [item] = gradeHandIn(ASSIGNMENT, COURSE, handInOf('ada-1', [])).items;
    const passed = item?.parts.filter((part) => part.passed) ?? [];
    const weights = (parts: readonly { weight: number }[]) =>
      parts.reduce((sum, { weight }) => sum + weight, 0);
    expect(item?.share).toBeCloseTo(weights(passed) / weights(item?.parts ?? []), 12);
    expect(item?.passed).toBe(false);
  });

  test('what is missing is 0, and said', () => {
    const { items, ...rest } = handInOf('ada-1', ALL);
    const graded = gradeHandIn(ASSIGNMENT, COURSE, { ...rest, items: items.slice(1) });
    expect(graded.items[0]).toMatchObject({ share: 0, noMark: { code: 'no-answer' } });
    expect(graded.share).toBeCloseTo(0.6, 12);
  });

  test.each([
    ['a sentence', 'The answer to out: expected'],
    [{ kind: 'board', board: { 'desk.nowhere.fader': 0 } }, 'desk.nowhere.fader'],
    [{ kind: 'option', option: 'x' }, 'expected the answer "board"'],
    [{ kind: 'board', board: { 'desk.ch1.fader': 900 } }, 'desk.ch1.fader'],
  ])('an answer that cannot be read is 0 with a reason, case %#', (answer, reason) => {
    const handIn = handInOf('ada-1', ALL);
    const items = handIn.items.map((item) => (item.id === 'out' ? { ...item, answer } : item));
    const graded = gradeHandIn(ASSIGNMENT, COURSE, { ...handIn, items });
    expect(graded.items[0]).toMatchObject({
      share: 0,
      passed: false,
      noMark: { code: 'unreadable' },
    });
    expect(JSON.stringify(graded.items[0]?.noMark)).toContain(JSON.stringify(reason).slice(1, -1));
    expect(graded.share).toBeCloseTo(0.6, 12);
  });

  test('a locked control that was moved fails its task, whatever is heard', () => {
    const handIn = handInOf('ada-1', ALL);
    const items = handIn.items.map((item) => {
      if (item.id !== 'out') return item;
      const { board } = item.answer as { board: Record<string, unknown> };
      return {
        ...item,
        answer: { kind: 'board', board: { ...board, 'rack.comp.threshold': -33 } },
      };
    });
    const [out] = gradeHandIn(ASSIGNMENT, COURSE, { ...handIn, items }).items;
    expect(out?.parts.every(({ passed }) => passed)).toBe(true);
    expect(out).toMatchObject({ share: 0, passed: false, notes: [{ code: 'moved-lock' }] });
  });

  test('what does not fit is noted, and changes no mark', () => {
    const handIn = handInOf('ada-1', ALL);
    const items = handIn.items.map((item) => ({
      ...item,
      ...(item.id === 'out' ? { revision: 7, attempts: 9, hints: 2 } : {}),
      ...(item.id === 'own-one' ? { seed: 'easier' } : {}),
    }));
    const extra = { id: 'extra', attempts: 0, hints: 0, spentMs: 0, interactions: [] };
    const graded = gradeHandIn(ASSIGNMENT, COURSE, {
      ...handIn,
      course: '0'.repeat(16),
      simulator: 99,
      assignment: { ...handIn.assignment, digest: 'f'.repeat(16) },
      startedAt: handIn.handedInAt + 1,
      items: [...items, extra],
    });
    expect(graded.share).toBe(1);
    expect(graded.notes.map(({ code }) => code)).toEqual([
      'other-wording',
      'other-course',
      'other-simulator',
      'unknown-items',
      'times',
    ]);
    const [out, , , own] = graded.items;
    expect(out?.notes).toEqual([
      { code: 'worked-revision', worked: 7, marked: 1 },
      { code: 'attempts', most: 3, made: 9 },
      { code: 'hints', shown: 2 },
    ]);
    expect(own?.notes).toMatchObject([{ code: 'other-seed', worked: 'easier', given: own?.seed }]);
  });

  test('claimed and computed stand side by side', () => {
    const handIn = handInOf('ada-1', []);
    const items = handIn.items.map((item) => ({ ...item, claimed: 1 }));
    const graded = gradeHandIn(ASSIGNMENT, COURSE, { ...handIn, items });
    expect(graded.claimed).toBe(1);
    expect(graded.share).toBeLessThan(0.6);
    expect(graded.passed).toBe(false);
  });
});

describe('a forged hand-in', () => {
  const honest = handInOf('ada-1', ['insert']);
  const honestShare = GRADER.grade('h', honest).share;
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const count = fc.nat(1_000_000);
  const words = fc.string({ maxLength: 100 });
  const interaction = fc.record({
    id: fc.constantFrom('out', 'insert', 'x_Y-9'),
    kind: fc.constant('scenario'),
    started: count,
    answered: count,
    latencyMs: count,
    attempt: count,
    hints: count,
    weight: fc.nat(1000),
    response: words,
    checks: fc.array(
      fc.record({
        id: fc.constantFrom('alto-once', 'bass-level'),
        pass: fc.boolean(),
        expected: words,
        observed: words,
      }),
      { maxLength: 3 },
    ),
    score: share,
  });
  const forgedItem = fc.record(
    {
      revision: fc.integer({ min: 1, max: 1_000_000 }),
      seed: fc.stringMatching(/^[a-z0-9]{1,12}$/),
      claimed: share,
      attempts: count,
      hints: count,
      spentMs: count,
      interactions: fc.array(interaction, { maxLength: 3 }),
    },
    { requiredKeys: [] },
  );
  const forgery = fc.record({
    items: fc.array(forgedItem, { minLength: 4, maxLength: 4 }),
    head: fc.record(
      {
        course: fc.stringMatching(/^[0-9a-f]{16}$/),
        simulator: fc.integer({ min: 1, max: 1_000_000 }),
        name: fc.string({ minLength: 1, maxLength: 120 }),
        startedAt: count,
        handedInAt: count,
      },
      { requiredKeys: [] },
    ),
    digest: fc.stringMatching(/^[0-9a-f]{16}$/),
  });

  test('with any numbers in every field has the mark of its answers', () => {
    fc.assert(
      fc.property(forgery, ({ items, head, digest }) => {
        const forged: HandIn = {
          ...honest,
          ...head,
          assignment: { ...honest.assignment, digest },
          items: honest.items.map((item, at) => ({ ...item, ...items[at] })),
        };
        const graded = gradeText(handInText(forged));
        expect(graded.share).toBe(honestShare);
        expect(graded.items.map(({ passed }) => passed)).toEqual([false, true, false, false]);
      }),
      { numRuns: 60 },
    );
  });

  /** Every place in a piece of data. */
  const placesIn = (data: unknown): (string | number)[][] =>
    typeof data !== 'object' || data === null
      ? [[]]
      : [
          [],
          ...Object.entries(data).flatMap(([key, inner]) =>
            placesIn(inner).map((place) => [Array.isArray(data) ? Number(key) : key, ...place]),
          ),
        ];
  const replaced = (
    data: unknown,
    [step, ...rest]: readonly (string | number)[],
    by: unknown,
  ): unknown => {
    if (step === undefined) return by;
    if (Array.isArray(data))
      return data.map((inner, at) => (at === step ? replaced(inner, rest, by) : inner));
    return {
      ...(data as object),
      [step]: replaced((data as Record<string, unknown>)[step], rest, by),
    };
  };

  /** A hand-in with something else at a place is marked; nothing when it is refused in words. */
  const gradedWith = (place: readonly (string | number)[], value: unknown) => {
    try {
      return gradeText(JSON.stringify(replaced(JSON.parse(handInText(honest)), place, value)));
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      return undefined;
    }
  };
  const places = placesIn(JSON.parse(handInText(honest))).filter(
    (place) => !place.includes('learner'),
  );

  test('with anything anywhere but in its answers is refused, or has no more than they are worth', () => {
    const elsewhere = places.filter((place) => !place.includes('answer'));
    fc.assert(
      fc.property(fc.constantFrom(...elsewhere), fc.jsonValue({ maxDepth: 3 }), (place, value) => {
        expect(gradedWith(place, value)?.share ?? 0).toBeLessThanOrEqual(honestShare);
      }),
      { numRuns: 300 },
    );
  });

  test('with anything in an answer is refused, or has another mark for this item alone', () => {
    const honestItems = GRADER.grade('h', honest).items;
    const inAnswers = places.filter((place) => place.includes('answer'));
    fc.assert(
      fc.property(fc.constantFrom(...inAnswers), fc.jsonValue({ maxDepth: 3 }), (place, value) => {
        const items = gradedWith(place, value)?.items ?? honestItems;
        const others = (list: typeof items) => list.filter((_, at) => at !== place[1]);
        expect(others(items)).toEqual(others(honestItems));
      }),
      { numRuns: 200 },
    );
  });

  test.each([
    ['__proto__', '{"__proto__": {"passed": true}, '],
    ['an unknown key', '{"passed": true, '],
    ['a key twice', '{"version": 1, '],
  ])('with %s is refused', (_what, beginning) => {
    expect(() => gradeText(handInText(honest).replace('{', beginning))).toThrow(InputError);
  });

  test('with a name of 100,000 characters is refused', () => {
    expect(() => gradeText(handInText({ ...honest, name: 'x'.repeat(100_000) }))).toThrow(
      'at most 120 characters',
    );
  });
});
