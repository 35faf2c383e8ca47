import { readFileSync } from 'node:fs';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { type Assignment, parseAssignment } from '../../src/class/assignment.ts';
import { type Gradebook, gradeClass } from '../../src/class/gradebook.ts';
import { gradebookCsv } from '../../src/class/gradebook-csv.ts';
import { analyse } from '../../src/class/item-analysis.ts';
import { difficulty, discrimination, reliability } from '../../src/class/item-statistics.ts';
import { itemTable } from '../../src/class/item-table.ts';
import { pointersIn } from '../../src/class/pointers.ts';
import { reMarks } from '../../src/class/re-mark.ts';
import { ASSIGNMENT, COURSE, filesOf, finished, handInOf } from './a-class.ts';

const bookOf = (
  files: Parameters<typeof gradeClass>[3],
  assignment: Assignment = ASSIGNMENT,
): Gradebook => finished(gradeClass('assignment.json', assignment, COURSE, files));

describe('gradeClass()', () => {
  test('each file ends in a row, among the superseded, or aside', () => {
    const first = handInOf('bo', []);
    const second = { ...handInOf('bo', ['insert']), handedInAt: first.handedInAt + 5 };
    const other = { ...handInOf('cy', []), assignment: { id: 'week-two', digest: 'a'.repeat(16) } };
    const files = [
      ...filesOf([first]),
      {
        name: 'all.zip',
        bytes: zipSync({ 'a/bo-2.json': filesOf([second])[0]?.bytes ?? ([] as never) }),
      },
      ...filesOf([handInOf('ada', ['out']), other]),
      { name: '../../etc/passwd', bytes: new TextEncoder().encode('root') },
    ];
    const { rows, superseded, aside } = bookOf(files);
    expect(rows.map(({ learner, file }) => [learner, file])).toEqual([
      ['ada', 'ada.json'],
      ['bo', 'bo-2.json'],
    ]);
    expect(superseded.map(({ file }) => file)).toEqual(['bo.json']);
    expect(aside.map(({ name }) => name)).toEqual(['cy.json', 'passwd']);
    expect(aside[0]?.reason).toContain('a hand-in of week-three');
  });

  test('one step after each file tells how far it is: 1 of 3, 2 of 3, 3 of 3', () => {
    const run = gradeClass(
      'a',
      ASSIGNMENT,
      COURSE,
      filesOf(['a', 'b', 'c'].map((at) => handInOf(at, []))),
    );
    expect([...run]).toEqual([1, 2, 3].map((done) => ({ done, of: 3 })));
  });

  test('a book is plain data, so that it can leave a worker', () => {
    const book = bookOf(filesOf([handInOf('ada', ['out'])]));
    expect(structuredClone(book)).toEqual(book);
  });

  test('no file changes the row of another learner', () => {
    const alone = bookOf(filesOf([handInOf('ada', ['out'])]));
    const among = bookOf([
      ...filesOf([{ ...handInOf('bo', []), name: '=cmd', handedInAt: 9e15 - 1e15 }]),
      { name: 'x.json', bytes: new TextEncoder().encode('{"learner": "ada"}') },
      ...filesOf([handInOf('ada', ['out'])]),
    ]);
    expect(among.rows[0]).toEqual(alone.rows[0]);
  });
});

test('a name of a million characters is set aside, and the rest is marked', () => {
  const long = { ...handInOf('bo', []), name: 'x'.repeat(1_000_000) };
  const { rows, aside } = bookOf(filesOf([long, handInOf('ada', [])]));
  expect(rows.map(({ learner }) => learner)).toEqual(['ada']);
  expect(aside).toMatchObject([{ name: 'bo.json' }]);
  expect(aside[0]?.reason).toContain('at most 262144 bytes');
});

describe('itemTable()', () => {
  test('counts learners by item and by part: two of three have the question right', () => {
    const book = bookOf(
      filesOf([handInOf('a', ['insert']), handInOf('b', []), handInOf('c', ['insert'])]),
    );
    const [out, insert] = itemTable(book);
    expect(insert).toMatchObject({ passed: 2, learners: 3, parts: [{ passed: 2, learners: 3 }] });
    expect(insert?.share).toBeCloseTo(2 / 3, 12);
    expect(out?.passed).toBe(0);
    expect(out?.parts.map(({ id }) => id)).toContain('bass-alone');
  });
});

describe('analyse()', () => {
  const learners = (count: number) =>
    Array.from({ length: count }, (_, at) =>
      handInOf(`learner-${at}`, [
        ...(at % 2 === 0 ? ['insert'] : []),
        ...(at % 3 === 0 ? ['out', 'alike'] : []),
        ...(at % 7 < 4 ? ['own-one'] : []),
      ]),
    );

  test('is hidden below 20 learners, with the reason', () => {
    expect(analyse(bookOf(filesOf(learners(19))))).toEqual({ learners: 19, fewest: 20 });
  });

  test('from 20 on it is what the statistics say of the shares', () => {
    const book = bookOf(filesOf(learners(20)));
    const scores = book.rows.map(({ items }) => items.map(({ share }) => share));
    const analysis = analyse(book);
    if (!('items' in analysis)) throw new Error('Expected an analysis of 20 learners.');
    expect(analysis.reliability).toBe(reliability(scores));
    expect(analysis.items.map((item) => item.difficulty)).toEqual(
      scores[0]?.map((_, at) => difficulty(scores, at)),
    );
    expect(analysis.items.map((item) => item.discrimination)).toEqual(
      scores[0]?.map((_, at) => discrimination(scores, at)),
    );
    // Ten of twenty chose the first wrong option.
    expect(analysis.items[1]).toMatchObject({
      difficulty: 0.5,
      commonMiss: { code: 'option', count: 10 },
      spentMs: 60_000,
    });
    expect(analysis.items[0]?.commonMiss).toMatchObject({ code: 'part', count: 13 });
  });
});

describe('pointersIn()', () => {
  const event = (at: number) => ({ at, item: 'out', what: 'control.set', of: 'desk.ch1.fader' });
  const log = Array.from({ length: 10 }, (_, at) => event(at * 731));

  test('nothing is pointed out of those who worked by themselves', () => {
    expect(
      pointersIn(bookOf(filesOf([handInOf('ada', ['out']), handInOf('bo', ['out'])]))),
    ).toEqual([]);
  });

  test('the same log, to the millisecond', () => {
    const files = filesOf([
      { ...handInOf('ada', []), events: log },
      { ...handInOf('bo', []), events: log },
      { ...handInOf('cy', []), events: log.map((one) => ({ ...one, at: one.at + 1 })) },
      { ...handInOf('di', []), events: log.slice(0, 3) },
      { ...handInOf('ed', []), events: log.slice(0, 3) },
    ]);
    expect(pointersIn(bookOf(files))).toEqual([{ code: 'same-log', learners: ['ada', 'bo'] }]);
  });

  test('the same wrong answer to drills that are not the same; not the room as one finds it', () => {
    const answering = (learner: string, board: Record<string, unknown>) => {
      const handIn = handInOf(learner, []);
      const answer = { kind: 'board', board };
      const items = handIn.items.map((item) =>
        item.id === 'own-one' ? { ...item, answer } : item,
      );
      return { ...handIn, items };
    };
    const files = filesOf([
      answering('bo', { 'desk.ch1.fader': -3 }),
      answering('cy', { 'desk.ch1.fader': -3 }),
      answering('di', {}),
      answering('ed', {}),
    ]);
    expect(pointersIn(bookOf(files))).toEqual([
      { code: 'same-answer', item: 'own-one', learners: ['bo', 'cy'] },
    ]);
  });

  test('one code with two names', () => {
    const first = { ...handInOf('ada', []), name: 'Tenor' };
    const second = { ...first, name: 'Alto', handedInAt: first.handedInAt + 1 };
    expect(pointersIn(bookOf(filesOf([first, second])))).toEqual([
      { code: 'names', learner: 'ada', names: ['Alto', 'Tenor'] },
    ]);
  });
});

describe('reMarks()', () => {
  test('a corrected assignment: who has other marks now, old beside new', () => {
    const files = filesOf([
      handInOf('ada', ['out']),
      handInOf('bo', ['out', 'insert', 'alike', 'own-one']),
    ]);
    const before = bookOf(files);
    const [out, ...others] = ASSIGNMENT.items;
    if (!out) throw new Error('Expected an item.');
    const corrected = { ...ASSIGNMENT, items: [{ ...out, weight: 90 }, ...others] };
    const after = bookOf(files, corrected);
    const marks = reMarks(before, after);
    expect(marks.map(({ learner, items }) => [learner, items])).toEqual([['ada', []]]);
    expect(marks[0]?.before.share).toBe(before.rows[0]?.share);
    expect(marks[0]?.after.share).toBeCloseTo(
      (90 + ((10 - 4) * ((before.rows[0]?.share ?? 0) * 10 - 4)) / 6) / 96,
      12,
    );
    expect(reMarks(before, before)).toEqual([]);
  });

  test('an item that is no longer asked is named', () => {
    const files = filesOf([handInOf('ada', ['out'])]);
    const corrected = { ...ASSIGNMENT, items: ASSIGNMENT.items.slice(1) };
    const [mark] = reMarks(bookOf(files), bookOf(files, corrected));
    expect(mark?.items).toEqual([{ id: 'out', before: 1, after: undefined }]);
  });
});

describe('gradebookCsv()', () => {
  const book = bookOf(
    filesOf([{ ...handInOf('ada', ['out']), name: '=HYPERLINK("x")' }, handInOf('bo', [])]),
  );
  const linesOf = (depth: Parameters<typeof gradebookCsv>[1]) =>
    gradebookCsv(book, depth).trimEnd().split('\r\n');

  test('a line for each learner, for each of their items, for each of their checks', () => {
    const checks = book.rows.flatMap(({ items }) => items.flatMap(({ parts }) => parts)).length;
    expect(linesOf('learner').length).toBe(1 + 2);
    expect(linesOf('item').length).toBe(1 + 2 * 4);
    expect(linesOf('check').length).toBe(1 + checks);
  });

  test('a name that would be a formula is disarmed', () => {
    expect(linesOf('learner')[1]).toContain(`"'=HYPERLINK(""x"")"`);
  });
});

test('a hand-in of version 1 still grades', () => {
  const read = (name: string) => readFileSync(`tests/class/stored/${name}`);
  const assignment = parseAssignment('assignment-1.json', read('assignment-1.json').toString());
  const book = bookOf([{ name: 'hand-in-1.json', bytes: read('hand-in-1.json') }], assignment);
  expect(book.aside).toEqual([]);
  expect(book.rows[0]).toMatchObject({ learner: 'ada-1', name: 'Ada', claimed: 1, share: 0.75 });
});
