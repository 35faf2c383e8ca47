import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jacks, type Rig } from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import { type BayField, CELL, GAP, layBay, ROW, SOCKET } from '../../src/drawing/bay-field.ts';
import { arbitrarySetup, RUNS } from '../simulator/arbitrary-setup.ts';

/** WCAG 2.2, SC 2.5.8: a target is at least so wide. */
const FINGER = 24;
const rig = readCourse().rigs.get('bay-room') as Rig;

/** What breaks each law of the layout. */
const LAWS: Readonly<Record<string, (field: BayField, of: Rig) => readonly unknown[]>> = {
  'every jack of the room has one socket': ({ sockets }, of) => {
    const { outputs, inputs } = jacks(of);
    const all = [...outputs, ...inputs];
    return all.length === sockets.size ? all.filter((jack) => !sockets.has(jack)) : [sockets.size];
  },
  'sockets are wide enough for a finger, and apart': ({ sockets }) => {
    const places = [...sockets.values()];
    return places.filter((one, index) =>
      places
        .slice(index + 1)
        .some(({ x, y }) => Math.abs(x - one.x) < FINGER && Math.abs(y - one.y) < FINGER),
    );
  },
  'everything lies inside': ({ sockets, width, height }) =>
    [...sockets.values()].filter(({ x, y }) => x < 0 || x > width || y < 0 || y > height),
  'the jacks of a point stand above one another': ({ rows, sockets }) =>
    rows.flatMap(({ cells }) =>
      cells.filter(({ top, bottom }) => {
        const [upper, lower] = [sockets.get(top ?? ''), sockets.get(bottom ?? '')];
        return upper && lower && (upper.x !== lower.x || lower.y - upper.y !== SOCKET + GAP);
      }),
    ),
};

describe.each(Object.keys(LAWS))('layBay(): %s', (law) => {
  test('in the room with a patchbay, and in any room', () => {
    expect(LAWS[law]?.(layBay(rig), rig)).toEqual([]);
    fc.assert(
      fc.property(arbitrarySetup(), ({ rig: any }) => {
        expect(LAWS[law]?.(layBay(any), any)).toEqual([]);
      }),
      RUNS,
    );
  });
});

test('layBay() keeps the order of the rows, and puts what is not on the bay into the last', () => {
  const { rows, sockets } = layBay(rig);
  expect(rows.map(({ label }) => label)).toEqual([
    ...(rig.bay?.rows.map(({ label }) => label) ?? []),
    'Not on the bay',
  ]);
  // Point 3 of the second row: two cells and a half from the left, one row down.
  const third = rig.bay?.rows[1]?.points[2]?.top ?? '';
  expect(sockets.get(third)?.x).toBe(2.5 * CELL);
  expect(Math.floor((sockets.get(third)?.y ?? 0) / ROW)).toBe(1);
});
