import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { controls, jacks, ownerOf, type Rig } from '../../simulator/index.ts';
import { ownerGroups, type SheetItem, sheetOf } from '../../src/components/desk/sheet.ts';
import { readCourse } from '../../src/course/index.ts';
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

const rigs = [...readCourse().rigs.values()];

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
