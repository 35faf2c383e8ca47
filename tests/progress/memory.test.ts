import 'fake-indexeddb/auto';
import { deleteDB, openDB } from 'idb';
import { afterEach, describe, expect, test } from 'vitest';
import { InputError } from '../../simulator/index.ts';
import { backupText, openBackup } from '../../src/progress/backup.ts';
import { DATABASE } from '../../src/progress/database.ts';
import { Memory } from '../../src/progress/memory.ts';
import { total } from '../../src/progress/task-record.ts';

const DAY = 86_400_000;
const NAME = { id: 'task-a', kind: 'patch', revision: 1, concept: 'send', unit: 'sends' };
const OTHER = { ...NAME, id: 'task-b' };
const PASSED = { score: 1, passed: true, isAided: false };
const FAILED = { score: 0.25, passed: false, isAided: false };

const tabs: Memory[] = [];
let names = 0;
let now = 1000 * DAY;

/** A tab of the same browser. */
async function openTab(): Promise<Memory> {
  const memory = await Memory.open({
    clock: () => now,
    newName: () => {
      names += 1;
      return `name${names}`;
    },
    channel: new BroadcastChannel('progress-test'),
  });
  tabs.push(memory);
  return memory;
}

/** Puts something into the database behind the memory's back. */
async function putBehind(store: string, key: string, data: unknown): Promise<void> {
  const database = await openDB(DATABASE);
  await database.put(store, data, key);
  database.close();
}

afterEach(async () => {
  for (const tab of tabs.splice(0)) tab.close();
  await deleteDB(DATABASE);
  now = 1000 * DAY;
});

describe('a memory', () => {
  test('keeps attempts, hints, the best score and the last', async () => {
    const memory = await openTab();
    await memory.hinted(NAME);
    await memory.attempted(NAME, { ...FAILED, score: 0.75 });
    now += 5;
    await memory.attempted(NAME, FAILED);
    const record = await memory.task('task-a');
    expect(record).toMatchObject({ best: 0.75, last: { score: 0.25, at: now } });
    expect([total(record?.attempts ?? {}), total(record?.hints ?? {})]).toEqual([2, 1]);
  });

  test('counts one that was noted when it was made, and counts it once', async () => {
    const memory = await openTab();
    const made = now - 5;
    await memory.attempted(NAME, PASSED, made);
    expect(await memory.attempted(NAME, PASSED, made)).toEqual({ isFirstPass: false });
    const record = await memory.task(NAME.id);
    expect(total(record?.attempts ?? {})).toBe(1);
    expect(record?.passedAt).toBe(made);
    expect(record?.last?.at).toBe(made);
  });

  test('tells the first pass of all, once', async () => {
    const memory = await openTab();
    expect(await memory.attempted(NAME, FAILED)).toEqual({ isFirstPass: false });
    expect(await memory.attempted(NAME, PASSED)).toEqual({ isFirstPass: true });
    expect(await memory.attempted(NAME, PASSED)).toEqual({ isFirstPass: false });
    expect(await memory.attempted(OTHER, PASSED)).toEqual({ isFirstPass: false });
  });

  test('a pass of another task of the concept moves its review on', async () => {
    const memory = await openTab();
    await memory.attempted(NAME, PASSED);
    now += DAY;
    await memory.attempted(OTHER, PASSED);
    const { records } = await memory.contents();
    expect(records.reviews).toMatchObject([{ concept: 'send', stage: 1, dueAt: now + 3 * DAY }]);
  });

  test('two tabs that write at once lose nothing of either', async () => {
    const [one, other] = [await openTab(), await openTab()];
    await Promise.all([
      one.attempted(NAME, FAILED),
      other.attempted(NAME, PASSED),
      one.hinted(NAME),
      other.hinted(NAME),
      one.keepDraft(NAME, { text: '"one"', isFinished: false }, undefined),
      other.keepDraft(NAME, { text: '"other"', isFinished: false }, undefined),
    ]);
    const record = await one.task('task-a');
    expect([total(record?.attempts ?? {}), total(record?.hints ?? {})]).toEqual([2, 2]);
    expect(record?.best).toBe(1);
    expect(record?.drafts.map(({ text }) => text).sort()).toEqual(['"one"', '"other"']);
  });

  test('another tab hears of a change', async () => {
    const [one, other] = [await openTab(), await openTab()];
    const heard = new Promise<void>((resolve) => {
      other.onChange(() => resolve());
    });
    await one.hinted(NAME);
    await heard;
    expect(total((await other.task('task-a'))?.hints ?? {})).toBe(1);
  });

  test('a record that does not fit is set aside, and the rest opens', async () => {
    const memory = await openTab();
    await memory.hinted(OTHER);
    const broken = { version: 1, id: 'task-a', attempts: 'many' };
    await putBehind('tasks', 'task-a', broken);
    expect(await memory.task('task-a')).toBeUndefined();
    const { records, aside } = await memory.contents();
    expect(records.tasks.map(({ id }) => id)).toEqual(['task-b']);
    expect(aside).toMatchObject([{ store: 'tasks', name: 'task-a', data: broken }]);
    expect(aside[0]?.problems.length).toBeGreaterThan(0);
  });

  test('a record under the name of another is set aside', async () => {
    const memory = await openTab();
    await memory.hinted(OTHER);
    await putBehind('tasks', 'task-a', await memory.task('task-b'));
    const { aside } = await memory.contents();
    expect(aside.map(({ problems }) => problems)).toEqual([
      ['task-a at id: expected task-a, but found task-b.'],
    ]);
  });

  test('what was set aside and fits by now is taken back in, once', async () => {
    const memory = await openTab();
    await memory.hinted(NAME);
    const record = await memory.task('task-a');
    await memory.reset(['task-a']);
    await putBehind('tasks', 'task-a', { ...record, extra: true });
    await memory.task('task-a');
    const database = await openDB(DATABASE);
    const [key] = await database.getAllKeys('aside');
    // As a page to come would read it, which knows the entry.
    await database.put('aside', { ...(await database.get('aside', key ?? 0)), data: record }, key);
    database.close();
    const { records, aside } = await memory.contents();
    expect(records.tasks.map(({ id }) => id)).toEqual(['task-a']);
    expect(aside).toEqual([]);
  });

  test('a draft that does not fit its task is set aside, and stays there', async () => {
    const memory = await openTab();
    const draft = { text: '"x"', isFinished: false };
    const { drafts } = await memory.keepDraft(NAME, draft, undefined);
    const [first] = drafts;
    if (!first) throw new Error('Expected a draft, but found none.');
    const error = new InputError('draft', [{ place: '', expected: 'a board', found: '"x"' }]);
    await memory.refuseDraft(NAME, first, error);
    await memory.contents();
    const { records, aside } = await memory.contents();
    expect(records.tasks).toMatchObject([{ id: 'task-a', drafts: [] }]);
    expect(aside).toMatchObject([{ name: 'task-a', data: { draft: { text: '"x"' } } }]);
    await memory.removeAside(aside[0]?.number ?? -1);
    expect((await memory.contents()).aside).toEqual([]);
  });

  test('a draft that is too long is refused, and what was kept stays', async () => {
    const memory = await openTab();
    await memory.hinted(NAME);
    const long = { text: 'x'.repeat(256 * 1024 + 1), isFinished: false };
    await expect(memory.keepDraft(NAME, long, undefined)).rejects.toThrow(InputError);
    expect(await memory.task('task-a')).toMatchObject({ drafts: [] });
  });

  test('a reset can be undone, also after more was done', async () => {
    const memory = await openTab();
    await memory.attempted(NAME, PASSED);
    await memory.attempted(OTHER, FAILED);
    const forgotten = await memory.reset(['task-a']);
    const { records } = await memory.contents();
    expect(records.tasks.map(({ id }) => id)).toEqual(['task-b']);
    expect(records.reviews).toEqual([]);
    await memory.attempted(NAME, FAILED);
    await memory.take({ records: forgotten, unusable: [] });
    const back = await memory.task('task-a');
    expect(total(back?.attempts ?? {})).toBe(2);
    expect(back?.passedAt).toBe(now);
    expect((await memory.contents()).records.reviews.length).toBe(1);
  });

  test('a concept stays in review while another passed task of it is left', async () => {
    const memory = await openTab();
    await memory.attempted(NAME, PASSED);
    await memory.attempted(OTHER, PASSED);
    await memory.reset(['task-a']);
    expect((await memory.contents()).records.reviews.length).toBe(1);
  });

  test('everything can be exported, forgotten, and imported twice', async () => {
    const memory = await openTab();
    await memory.attempted(NAME, PASSED);
    await memory.keepBench('net-loft', '{"rig":"net-loft","board":{}}', undefined);
    await memory.noteBackup();
    const { records, savedAt } = await memory.contents();
    expect(savedAt).toBe(now);
    const text = backupText(records, now);
    await memory.reset('everything');
    expect((await memory.contents()).records).toEqual({ tasks: [], reviews: [], benches: [] });
    for (let time = 0; time < 2; time += 1) await memory.take(openBackup('b.json', text));
    expect((await memory.contents()).records).toEqual(records);
  });

  test('what cannot be used of a backup is set aside under its name', async () => {
    const memory = await openTab();
    const error = new InputError('task x', [{ place: '', expected: 'a', found: 'b' }]);
    const records = { tasks: [], reviews: [], benches: [] };
    await memory.take({ records, unusable: [{ store: 'tasks', data: { id: 'x' }, error }] });
    expect((await memory.contents()).aside).toMatchObject([{ name: 'task x', data: { id: 'x' } }]);
  });

  test('books that cannot be read are begun again', async () => {
    const memory = await openTab();
    await putBehind('bookkeeping', 'books', { writer: 7 });
    await memory.hinted(NAME);
    expect(total((await memory.task('task-a'))?.hints ?? {})).toBe(1);
  });
});
