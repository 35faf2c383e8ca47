import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { controls, jacks, ownerOf, type Rig } from '../../simulator/index.ts';
import { ownerGroups, type SheetItem, sheetOf } from '../../src/components/desk/sheet.ts';
import { readCourse } from '../../src/course/index.ts';
import { boxRoom } from '../simulator/circuit/box-room.ts';
import { arbitraryDesk, RUNS } from './arbitrary-desk.ts';

const nameOf = (item: SheetItem) =>
  item.kind === 'control' ? item.control.address : `jack ${item.jack}`;

const ownersOf = (rig: Rig) => [
  ...new Set([
    ...[...controls(rig).values()].map(({ owner }) => owner),
    ...jacks(rig).outputs.map(ownerOf),
  ]),
];

const linesOf = (rig: Rig) =>
  ownersOf(rig).flatMap((owner) =>
    sheetOf(rig, owner).flatMap(({ items }) =>
      items.map((item) => ({ owner, line: nameOf(item) })),
    ),
  );

const everything = (rig: Rig) =>
  [...controls(rig).keys(), ...jacks(rig).outputs.map((jack) => `jack ${jack}`)].sort();

/** A box with everything that one can have. */
const box = boxRoom({
  tracks: [
    {
      id: 'viola',
      label: 'Viola',
      levelDbfs: -17,
      plugins: [{ id: 'comp', label: 'Compressor', kind: 'compressor' }],
    },
  ],
  buses: [{ id: 'room', label: 'Room', tap: 'switchable' }],
  captures: [{ id: 'mix', label: 'Mix' }],
}).setup.rig;
const { rigs: courseRigs } = readCourse();
const rigs = [...courseRigs.values(), box];

test.each(rigs)(
  'sheetOf() all owners of $id holds each control and each output jack once',
  (rig) => {
    const lines = linesOf(rig).map(({ line }) => line);
    expect(lines.sort()).toEqual(everything(rig));
  },
);

test('sheetOf() all owners of any desk holds each control and each output jack once', () => {
  fc.assert(
    fc.property(arbitraryDesk, (rig) => {
      const lines = linesOf(rig).map(({ line }) => line);
      expect(lines.sort()).toEqual(everything(rig));
    }),
    { ...RUNS, numRuns: 40 },
  );
});

test('sheetOf() an owner holds what is its own, in groups that are not empty', () => {
  for (const rig of rigs) {
    expect(
      linesOf(rig).filter(({ owner, line }) => ownerOf(line.replace('jack ', '')) !== owner),
    ).toEqual([]);
    const groups = ownersOf(rig).flatMap((owner) => sheetOf(rig, owner));
    expect(groups.filter(({ items }) => items.length === 0)).toEqual([]);
  }
});

test.each(rigs)('ownerGroups() of $id leads to each owner that has a control, once', (rig) => {
  const led = ownerGroups(rig).flatMap(({ owners }) => owners.map(({ owner }) => owner));
  const withControls = [...new Set([...controls(rig).values()].map(({ owner }) => owner))];
  expect(led.filter((owner, index) => led.indexOf(owner) !== index)).toEqual([]);
  expect(withControls.filter((owner) => !led.includes(owner))).toEqual([]);
});

test('sheetOf() a track with plug-ins and sends has a group for each, in signal order', () => {
  const groups = sheetOf(box, 'box.viola').map(({ title, items }) => [title, items.map(nameOf)]);
  expect(groups).toEqual([
    [
      'Plug-ins',
      ['on', 'threshold', 'ratio', 'knee', 'makeup'].map((name) => `box.viola.comp.${name}`),
    ],
    ['On the way', ['box.viola.fader', 'box.viola.mute', 'box.viola.pan']],
    ['Sends', ['box.viola.room', 'box.viola.room.tap']],
    ['Goes to', ['box.viola.to', 'box.viola.main']],
  ]);
});

test('sheetOf() a capture track comes in from the converter and goes to it; its input has a cord', () => {
  const groups = (owner: string) =>
    sheetOf(box, owner).map(({ title, items }) => [title, items.map(nameOf)]);
  expect(groups('box.mix')).toEqual([
    ['Comes in', ['box.mix.in']],
    ['Goes to', ['box.mix.to']],
  ]);
  expect(groups('converter.in2')).toEqual([['Comes in', ['converter.in2']]]);
});

const groupsOf = (rigId: string, owner: string) =>
  sheetOf(courseRigs.get(rigId) as Rig, owner).map(({ title, items }) => [
    title,
    items.map((item) => nameOf(item).replace(`${owner}.`, '')),
  ]);

test('sheetOf() the second path of an in-line strip says what feeds it beside its jack', () => {
  expect(groupsOf('in-line-desk', 'desk.two1').slice(0, 3)).toEqual([
    ['Comes in', ['path', 'in']],
    ['On the way', ['polarity', 'fader', 'mute', 'pan']],
    ['Solo', ['solo', 'safe']],
  ]);
});

test('sheetOf() a direct output stands among what a strip goes to', () => {
  const [title, items] = groupsOf('split-desk', 'desk.ch1').at(-1) ?? [];
  expect([title, items?.slice(-2)]).toEqual(['Goes to', ['main', 'jack direct']]);
});

test('sheetOf() the control room has what it hears and its inputs first, then its level, the solo mode, and its jacks', () => {
  expect(groupsOf('in-line-desk', 'desk.control')).toEqual([
    ['Comes in', ['listen', 'two-track.l', 'two-track.r']],
    ['On the way', ['mono', 'level']],
    ['Solo', ['mode']],
    ['Goes to', ['jack out.l', 'jack out.r']],
  ]);
});
