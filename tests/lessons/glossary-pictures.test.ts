import { describe, expect, test } from 'vitest';
import { boardOf, levelOf, outputPlace, part, simulate } from '../../simulator/index.ts';
import { faultsOf } from './components.ts';
import { course, GLOSSARY, glossary } from './the-course.ts';

const pictured = glossary.flatMap(({ id, picture }) => (picture ? [{ id, picture }] : []));

describe(`pictures of ${GLOSSARY}`, () => {
  test.each(pictured)('$id: names exist, the board fits, what is moved is shown', ({ picture }) => {
    const component = { name: 'Picture', props: { ...picture }, line: 0 };
    expect(faultsOf(component)).toEqual([]);
  });
});

/** What stands at a place of a picture, of the source that it follows, in dBu. */
function levelIn(word: string, place: string): number | undefined {
  const picture = pictured.find(({ id }) => id === word)?.picture;
  const rig = course.rigs.get(picture?.rig ?? 'net-loft');
  if (!picture || !rig) throw new Error(`Expected a picture of ${word}.`);
  const solution = simulate({ rig, board: boardOf(word, rig, picture.board) });
  return levelOf(solution, picture.follow, place);
}

const CAPTURE = outputPlace('capture');

// What the captions say, of the same boards.
test('ghost: the cello is silent at her fader, and not at the capture', () => {
  expect(levelIn('ghost', 'desk.ch3.fader')).toBe(-Infinity);
  expect(levelIn('ghost', CAPTURE)).toBeGreaterThan(-20);
});

test('loop: it has a level, since what comes round is softer', () => {
  expect(levelIn('loop', CAPTURE)).toBeGreaterThan(-20);
});

test('mute: gone after the fader, not before it', () => {
  expect(levelIn('mute', part('desk.aux3', 'out'))).toBe(-Infinity);
  expect(levelIn('mute', part('desk.aux1', 'out'))).toBeGreaterThan(-20);
  expect(levelIn('mute', CAPTURE)).toBe(-Infinity);
});

test('headphone-mix: both auxes get what the fader does not decide', () => {
  expect(levelIn('headphone-mix', outputPlace('headphones-a'))).toBeCloseTo(0, 6);
  expect(levelIn('headphone-mix', outputPlace('headphones-b'))).toBeCloseTo(-3, 6);
});
