import { expect, test } from 'vitest';
import { faultsOf } from './components.ts';
import { parseLesson } from './lesson.ts';

const read = (text: string) => parseLesson('lessons/lessons/one.mdx', text);
const faultsIn = (text: string) => read(text).components.flatMap(faultsOf);

test('parseLesson() reads head, pieces, words, links and components with their attributes', () => {
  const lesson = read(`---
title: One
---

## A *first* part

A <Term id="send">send</Term> at −3 to [here](#a) and <a href="https://example.org">there</a>.

<Level source="cello" output="capture" board={{ 'desk.ch3.fader': -10, on: [true, '-inf'] }} />
`);
  expect(lesson).toMatchObject({ slug: 'one', frontmatter: { title: 'One' }, code: [] });
  expect(lesson.pieces.map(({ kind }) => kind)).toEqual(['heading', 'words', 'component']);
  expect(lesson.prose).toEqual(['A first part', 'A send at −3 to here and there.']);
  expect(lesson.links).toEqual(['#a', 'https://example.org']);
  expect(lesson.components).toEqual([
    { name: 'Term', line: 7, props: { id: 'send' } },
    {
      name: 'Level',
      line: 9,
      props: {
        source: 'cello',
        output: 'capture',
        board: { 'desk.ch3.fader': -10, on: [true, '-inf'] },
      },
    },
  ]);
});

test('parseLesson() finds code, and takes no attribute that has to be computed', () => {
  expect(read('import a from "a"\n\nFour is {2 + 2}.').code).toEqual([
    'import a from "a"',
    '2 + 2',
  ]);
  expect(() => read('<Level board={{ a: 2 + 2 }} />')).toThrow(/written out.*2 \+ 2/);
  expect(() => read('<Level {...all} />')).toThrow(/spread in <Level>/);
});

test.each([
  ['<Stage id="a" />', /no component of that name/],
  ['<Task />', /id is missing/],
  ['<Task id="a" open />', /takes no open/],
  ['<Term id="no-such-word">a</Term>', /no no-such-word/],
  ['<Level source="cello" output="nowhere" />', /nowhere/],
  ['<Level source="nobody" output="capture" />', /nobody/],
  ['<Level source="cello" output="capture" board={{ "desk.ch3.fader": 99 }} />', /99/],
  ['<Level source="cello" output="capture" board={{ "desk.ret1.aux3": 9 }} />', /unstable/],
  ['<Way source="cello" output="rack.plate.in" />', /one way of cello to rack.plate.in.*are 0/],
  [
    '<Way source="cello" output="capture" board={{ "desk.ch3.sub1": true }} />',
    /one way of cello to capture, but there are 2/,
  ],
  ['<Finding code="stray-feed" />', /a finding stray-feed, but the setup has nothing/],
  ['<Picture caption="a" follow="cello" show={["desk.ch99"]} />', /cannot show desk.ch99/],
  [
    '<Picture caption="a" follow="cello" show={["desk.ch3"]} board={{ "desk.ch4.mute": true }} />',
    /moves desk.ch4.mute, and does not show it/,
  ],
])('faultsOf() refuses %s', (text, said) => {
  expect(faultsIn(text).join('\n')).toMatch(said);
});
