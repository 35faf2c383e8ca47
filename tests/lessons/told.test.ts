import { expect, test } from 'vitest';
import { boardOf, findings, passes, paths, simulate } from '../../simulator/index.ts';
import { toldFindingText } from '../../src/components/lesson/told-finding.ts';
import { wayText } from '../../src/components/lesson/way.ts';
import { findingSentence, pathStory } from '../../src/text/index.ts';
import { course } from './the-course.ts';

const netLoft = course.rigs.get('net-loft');
if (!netLoft) throw new Error('Expected the rig net-loft.');

const TWICE = { 'desk.ch3.sub1': true };
const setup = { rig: netLoft, board: boardOf('a test', netLoft, TWICE) };

test('wayText() tells the one way that passes a place', () => {
  const way = { source: 'cello', output: 'capture', through: 'desk.sub1', board: TWICE };
  const all = paths(simulate(setup), 'cello', 'out.capture');
  const stories = all.filter((one) => passes(one, 'desk.sub1')).map((one) => pathStory(setup, one));
  expect([wayText(netLoft, way)]).toEqual(stories);
});

test('toldFindingText() tells the finding that a setup has', () => {
  const [first, ...others] = findings(setup, simulate(setup));
  expect(others).toEqual([]);
  if (first?.code !== 'arrives-twice') throw new Error('Expected the cello to arrive twice.');
  expect(toldFindingText(netLoft, { code: first.code, board: TWICE })).toBe(
    findingSentence(netLoft, first),
  );
});
