import { expect, test } from 'vitest';
import { parseScenario } from '../../../simulator/grade/scenario.ts';
import { isPar } from '../../../simulator/puzzle/par.ts';
import { findRig, SCENARIO } from '../grade/tasks.ts';

const scenario = parseScenario('task.yaml', SCENARIO, findRig);

test('isPar() holds of the fewest moves and of fewer, not of more', () => {
  expect(isPar(scenario, 1, 1000)).toBe(true);
  expect(isPar(scenario, 2, 1000)).toBe(false);
});

test('isPar() does not know where the search ends too soon', () => {
  expect(isPar(scenario, 2, 1)).toBeUndefined();
});
