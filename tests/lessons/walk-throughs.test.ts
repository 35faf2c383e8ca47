import { describe, expect, test } from 'vitest';
import { judge, simulate } from '../../simulator/index.ts';
import { claimSentence } from '../../src/text/index.ts';
import { course, tasksIn } from './the-course.ts';

describe.each(tasksIn('walk-through', course.walkThroughs))('$file', ({ task: { rig, steps } }) => {
  for (const { id, board, heard } of steps) {
    const setup = { rig, board };
    for (const claim of heard) {
      test(`${id}: ${claimSentence(rig, claim)}`, () => {
        expect(judge(claim, { setup, solution: simulate(setup) }).holds).toBe(true);
      });
    }

    test(`${id}: it says something that is heard`, () => {
      expect(heard.length).toBeGreaterThan(0);
    });
  }
});
