import { expect, test } from 'vitest';
import { runStages, type StageResult } from './run-stages.ts';

const cwd = process.cwd();
const outcomes = (results: readonly StageResult[]) =>
  Object.fromEntries(results.map(({ name, outcome }) => [name, outcome]));

test('runStages() runs all stages, whatever fails, but none that builds on a failure', async () => {
  const shown: string[] = [];
  const results = await runStages(
    [
      { name: 'on-broken', command: 'node -e ""', after: ['broken'] },
      { name: 'on-that', command: 'node -e ""', after: ['on-broken'] },
      { name: 'broken', command: 'node -e "process.exit(3)"' },
      { name: 'sound', command: 'node -e "console.log(7)"' },
    ],
    { cwd, onEnd: ({ name }) => shown.push(name) },
  );
  expect(outcomes(results)).toEqual({
    broken: 'failed',
    sound: 'passed',
    'on-broken': 'not run',
    'on-that': 'not run',
  });
  expect(results.find(({ name }) => name === 'sound')?.output).toBe('7');
  expect(shown).toEqual(results.map(({ name }) => name));
});

test('runStages() runs a stage that wants to be alone with nothing beside it', async () => {
  const wait = 'node -e "console.log(Date.now()); setTimeout(() => console.log(Date.now()), 150)"';
  const results = await runStages(
    [
      { name: 'first', command: wait },
      { name: 'alone', command: wait, alone: true },
      { name: 'last', command: wait },
    ],
    { cwd, onEnd: () => undefined, places: 2 },
  );
  const times = new Map(
    results.map(({ name, output }) => [name, output.split('\n').map(Number)] as const),
  );
  const [start = 0, end = 0] = times.get('alone') ?? [];
  for (const name of ['first', 'last']) {
    const [otherStart = 0, otherEnd = 0] = times.get(name) ?? [];
    expect(otherEnd <= start || end <= otherStart, name).toBe(true);
  }
});

test('runStages() rejects a list in which a stage waits for one that is not there', async () => {
  const stages = [{ name: 'lost', command: 'node -e ""', after: ['nothing'] }];
  await expect(runStages(stages, { cwd, onEnd: () => undefined })).rejects.toThrow('lost');
});
