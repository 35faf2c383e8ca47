import { describe, expect, test } from 'vitest';
import { type Board, grade, type Scenario } from '../../simulator/index.ts';
import { listed } from '../../src/text/index.ts';
import { course, glossary, tasksIn } from './the-course.ts';

function failedOn(scenario: Scenario, board: Board): string[] {
  const { results, movedLocks } = grade(scenario, board);
  const failed = results.filter(({ holds }) => !holds).map(({ check }) => check.id);
  return [...failed, ...movedLocks.map((address) => `the lock on ${address}`)].sort();
}

describe.each(tasksIn('scenario', course.scenarios))('$file', ({ task: scenario }) => {
  const { start, proofs, checks, concept } = scenario;

  test('its start fails', () => {
    expect(failedOn(scenario, start)).not.toEqual([]);
  });

  for (const { name, board, fails } of proofs) {
    const claim =
      fails.length === 0 ? 'passes' : `fails ${listed(fails)}, and none of its other checks`;
    test(`“${name}” ${claim}`, () => {
      expect(failedOn(scenario, board)).toEqual([...fails].sort());
    });
  }

  test('every check is failed by its start or by some mistake', () => {
    const failed = [...failedOn(scenario, start), ...proofs.flatMap(({ fails }) => fails)];
    expect(checks.map(({ id }) => id).filter((id) => !failed.includes(id))).toEqual([]);
  });

  test('its concept is a word of the glossary', () => {
    expect(glossary.map(({ id }) => id)).toContain(concept);
  });
});
