import { describe, expect, test } from 'vitest';
import { faultId } from '../../../../simulator/puzzle/hunt/fault.ts';
import { type Hunt, hunt } from '../../../../simulator/puzzle/hunt/hunt.ts';
import {
  allSuspects,
  contradictionOf,
  type HuntStep,
  judgeSteps,
  readPlace,
} from '../../../../simulator/puzzle/hunt/judge-steps.ts';
import { scoreHunt } from '../../../../simulator/puzzle/hunt/score.ts';
import { netLoft } from './net-loft-room.ts';

const one = hunt(netLoft(), 1, 'loft');
const guilty = faultId(one.fault);
const innocent = faultId(
  one.faults.find((fault) => !one.suspects.some(({ faults }) => faults.includes(fault))) ??
    one.fault,
);

/** The probes that the best strategy makes in a hunt, until one suspect is left. */
function bestProbes({ places, tests, strategy, suspects, hidden }: Hunt): HuntStep[] {
  let fitting: readonly number[] = suspects.map((_, index) => index);
  const steps: HuntStep[] = [];
  for (let step = strategy.bestFor(fitting); step; step = strategy.bestFor(fitting)) {
    const outcomes = tests[step.test] ?? [];
    fitting = fitting.filter((suspect) => outcomes[suspect] === outcomes[hidden]);
    steps.push({ probe: places[step.test] ?? '' });
  }
  return steps;
}

const worths = (steps: readonly HuntStep[]) =>
  judgeSteps(one, steps).map((step) => (step.kind === 'probe' ? step.worth : step.isRight));

describe('judgeSteps()', () => {
  test('a strip that no suspect is on is outside', () => {
    const stranger = one.complaint.oddities[0]?.track === 'cello' ? 'desk.ch1' : 'desk.ch3';
    expect(worths([{ probe: `${stranger}.fader` }])).toEqual(['outside']);
  });
  test('the output that was complained of is redundant: it was known', () => {
    expect(worths([{ probe: `out.${one.complaint.output}` }])).toEqual(['redundant']);
  });
  test('a reading made twice is redundant the second time', () => {
    const [first] = bestProbes(one);
    expect(first && worths([first, first])).toEqual(['sound', 'redundant']);
  });
  test('what the best strategy does is sound, and leaves one suspect', () => {
    const steps = bestProbes(one);
    const judged = judgeSteps(one, steps);
    expect(new Set(worths(steps))).toEqual(new Set(['sound']));
    expect(judged.at(-1)?.after).toEqual([one.hidden]);
  });
  test('singling out one suspect among many is premature, and the better place is said', () => {
    const lonely = one.tests.findIndex((test) => {
      const first = test.filter((outcome) => outcome === test[0]).length;
      return first === 1 || first === test.length - 1;
    });
    const [judged] = judgeSteps(one, [{ probe: one.places[lonely] ?? '' }]);
    expect(judged).toMatchObject({ worth: 'premature' });
    expect(judged?.kind === 'probe' && judged.better?.left).toBe(
      Math.ceil(one.suspects.length / 2),
    );
  });
  test('suspects only become fewer, and the guilty one always stays', () => {
    let before = allSuspects(one);
    for (const step of judgeSteps(
      one,
      one.places.slice(0, 40).map((place) => ({ probe: place })),
    )) {
      expect(step.before).toEqual(before);
      expect(step.after).toContain(one.hidden);
      before = step.after;
    }
  });
  test('a place or a fault that there is not is refused', () => {
    expect(() => judgeSteps(one, [{ probe: 'desk.ch99.in' }])).toThrow('got desk.ch99.in');
    expect(() => judgeSteps(one, [{ accuse: 'dead desk.ch99.in' }])).toThrow('Expected a fault');
  });
});

describe('contradictionOf()', () => {
  const fault = (id: string) => one.faults.find((other) => faultId(other) === id) ?? one.fault;
  test('what makes another complaint is told so', () => {
    expect(contradictionOf(one, fault(innocent), [])).toEqual({ code: 'other-complaint' });
  });
  test('what a reading speaks against is told by that reading', () => {
    const other = one.suspects.find((_, index) => index !== one.hidden)?.faults[0] ?? one.fault;
    const readings = bestProbes(one).map((step) =>
      readPlace(one, 'probe' in step ? step.probe : ''),
    );
    expect(contradictionOf(one, other, readings)).toMatchObject({ code: 'other-reading' });
    expect(contradictionOf(one, other, [])).toEqual({ code: 'it-fitted' });
  });
});

describe('scoreHunt()', () => {
  test('the best strategy and nothing else is all of it', () => {
    const steps = [...bestProbes(one), { accuse: guilty }];
    expect(scoreHunt(one, steps)).toMatchObject({ isFound: true, wrong: 0, owed: 0, score: 1 });
  });
  test('a guess that was lucky is owed the readings that were spared', () => {
    expect(scoreHunt(one, [{ accuse: guilty }])).toMatchObject({
      isFound: true,
      probes: 0,
      owed: one.best,
      score: one.best / (one.best + 1),
    });
  });
  test('a wrong accusation counts as one reading', () => {
    const steps = [{ accuse: innocent }, ...bestProbes(one), { accuse: guilty }];
    const { score, wrong, probes } = scoreHunt(one, steps);
    expect(wrong).toBe(1);
    expect(score).toBeCloseTo(one.best / Math.max(one.best, probes + 1), 9);
  });
  test('what was not found scores nothing', () => {
    expect(scoreHunt(one, bestProbes(one))).toMatchObject({ isFound: false, score: 0 });
  });
});
