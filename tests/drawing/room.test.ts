import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boxOwner,
  controls,
  feedOf,
  lineInsOf,
  lineOutsOf,
  ownerOf,
  pickAt,
  pluginAt,
  type Rig,
  type Setup,
  simulate,
  valueAt,
  withValues,
} from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { ROOM_FOR, shortened } from '../../src/drawing/names.ts';
import { drawRoom } from '../../src/drawing/room.ts';
import type { RoomDrawing } from '../../src/drawing/room-drawing.ts';
import { arbitrarySetup, placesAndLegs, RUNS } from '../simulator/arbitrary-setup.ts';
import { bayRoom } from '../simulator/bay-room.ts';
import { addressesOf, crowdedPairs, handlesOf, liesOn, ownWires, pointsOf } from './geometry.ts';

const { rigs, bench } = readCourse();
const ALL = { box: true, rack: true, folded: [] };
const roomOf = (setup: Setup) => drawRoom(setup, layOut(setup.rig), ALL);
const benchRigs = bench.map(({ rig }) => rigs.get(rig) as Rig);
const netLoft = rigs.get('net-loft') as Rig;
const split = rigs.get('split-desk') as Rig;

/** Room for the names of two columns side by side: 12 letters of the text face, 0.56 of their size on average. */
const NAME = (label: string) => shortened(label, ROOM_FOR.column).length * 0.56 * 13;
/** The least that wires beside one another are apart, and how wide a finger is (WCAG 2.2, SC 2.5.8). */
const APART = 10;
const FINGER = 24;

/** The box of a room as a drawing of its own. */
const boxOf = ({ desk, box }: RoomDrawing) => ({
  ...desk,
  columns: box.map(({ column }) => column),
  rails: [],
});
const railAt = ({ desk }: RoomDrawing, owner: string) =>
  desk.rails.filter((rail) => rail.owner === owner).flatMap(({ wires }) => wires);

/** The properties that every drawing of a room has. Each gives what breaks it. */
const PROPERTIES: Readonly<
  Record<string, (room: RoomDrawing, setup: Setup) => readonly unknown[]>
> = {
  'everything lies inside': (room) => {
    const { width, height, top } = room.desk;
    const columns = [...room.desk.columns, ...boxOf(room).columns];
    const points = [
      ...pointsOf({ ...room.desk, columns }).map(({ point }) => point),
      ...room.box.flatMap(({ goal, plugins }) => [goal.end, ...plugins.map(({ at }) => at)]),
      ...room.cords.flatMap(({ wire }) => wire.points),
      ...room.devices.flatMap(({ wires }) => wires.flatMap(({ points: some }) => some)),
      ...room.home.flatMap(({ points: some }) => some),
    ];
    return points.filter(({ x, y }) => !(x >= 0 && x <= width && y >= top && y <= height));
  },

  'every control of the box is at a mark of its owner': (room, { rig }) => {
    const drawn = [
      ...addressesOf(boxOf(room)),
      ...room.box.flatMap(({ goal, plugins, column }) => [
        goal.address,
        ...plugins.map(({ address }) => address),
        ...(column.input ? [column.input] : []),
      ]),
    ];
    const expected = [...controls(rig).keys()]
      .filter((address) => address.startsWith('box.'))
      .map((address) => pluginAt(rig, address)?.address ?? address);
    return JSON.stringify([...drawn].sort()) === JSON.stringify([...new Set(expected)].sort())
      ? []
      : [{ drawn, expected }];
  },

  [`different controls of the box are at least ${FINGER} apart`]: (room) =>
    crowdedPairs(handlesOf(boxOf(room)), FINGER),

  'every wire carries what stands at a place of the circuit': (room, setup) => {
    const places = new Set(placesAndLegs(simulate(setup).circuit));
    const { desk, cords, devices, home } = room;
    return [...desk.columns, ...desk.rails, ...boxOf(room).columns, ...devices]
      .flatMap(({ wires }) => wires)
      .concat(
        cords.map(({ wire }) => wire),
        home,
      )
      .filter(({ place }) => !places.has(place))
      .map(({ place }) => place);
  },

  'a channel comes down to a dot on each rail that it is assigned to, and to no other': (
    room,
    setup,
  ) =>
    room.box.flatMap(({ column, goal }) => {
      const to = pickAt(setup, goal.address) ?? '';
      const lines = lineOutsOf(to).map((line) => `converter.${line}`);
      const goals =
        lines.length > 0
          ? lines
          : setup.rig.box.buses.map(({ id }) => id).includes(to)
            ? [boxOwner(to)]
            : [];
      const lies = goals.every((owner, index) => {
        const dot = goal.dots[index];
        const own = ownWires(column).some((wire) => dot && liesOn(dot.at, wire));
        return dot && own && railAt(room, owner).some((wire) => liesOn(dot.at, wire));
      });
      return lies && goal.dots.length === goals.length ? [] : [{ to, goal }];
    }),

  'the wire of a channel runs on from its start to its end, but for the slot of its fader': ({
    box,
  }) =>
    box.flatMap(({ column, goal }) => {
      const pieces = ownWires(column);
      const gaps = column.faders.map(({ address, from, to }) => ({ address, from, to }));
      const breaks = pieces.slice(1).filter(({ place, points: [start] }, index) => {
        const end = pieces[index]?.points.at(-1);
        const gap = gaps.find(({ address }) => address === place);
        const joins = end?.y === start?.y || (gap && end?.y === gap.from && start?.y === gap.to);
        return !joins || end?.x !== start?.x;
      });
      const last = pieces.at(-1)?.points.at(-1);
      return breaks.length === 0 && last?.x === goal.end.x && last.y === goal.end.y
        ? []
        : [{ owner: column.owner, breaks }];
    }),

  'a strip hangs from each rail that feeds it, straight down into its wire': (room, setup) =>
    layOut(setup.rig).columns.flatMap(({ input, x, wires }): unknown[] => {
      if (!input) return [];
      const ins = [...controls(setup.rig).values()].filter(
        ({ kind, address }) =>
          kind === 'cord' && (address === input || address.startsWith(`${input}.`)),
      );
      const feeds = ins.flatMap(({ address }) => feedOf(setup, address)?.output ?? []);
      const railed = feeds.filter((jack) => /^(converter|rack)\./.test(jack));
      const cord = room.cords.find((one) => one.input === input);
      if (!cord) return railed;
      const end = cord.wire.points.at(-1);
      const isJoined = wires.some(
        ({ points: [start] }) => start && start.x === end?.x && start.y === end?.y,
      );
      const owners = railed.map((jack) =>
        jack.startsWith('rack.') ? `${ownerOf(jack)}.out` : jack,
      );
      const isOnRails = owners.every((owner) =>
        cord.dots.some(({ at }) => railAt(room, owner).some((wire) => liesOn(at, wire))),
      );
      const isOnCord = cord.dots.every(({ at }) => liesOn(at, cord.wire));
      return isJoined && isOnRails && isOnCord && end?.x === x && owners.length > 0 ? [] : [cord];
    }),

  'no cord runs along a wire of the box, unless both come to the same rails': ({ cords, box }) =>
    cords.flatMap(({ input, dots }) => {
      const heights = dots.map(({ at }) => at.y);
      return box
        .filter(({ column, goal }) => {
          const isThere = dots.some(({ at }) => Math.abs(column.x - at.x) < APART);
          const goals = goal.dots.map(({ at }) => at.y);
          const isAlike = JSON.stringify(goals) === JSON.stringify(heights);
          return isThere && goal.end.y > Math.min(...heights) && !isAlike;
        })
        .map(({ column }) => `${input} along ${column.owner}`);
    }),

  'from the foot of each bus that a capture track records a wire runs home to it': (room, setup) =>
    boxOf(room).columns.flatMap(({ kind, input, wires }) => {
      if (kind !== 'capture' || !input) return [];
      const jacks = lineInsOf(pickAt(setup, input) ?? '').map((line) => `converter.${line}`);
      const owners = jacks.flatMap((jack) => {
        const output = feedOf(setup, jack)?.output;
        return output === undefined ? [] : [ownerOf(output)];
      });
      const feet = room.desk.columns.filter(({ owner, foot }) => foot && owners.includes(owner));
      const joined = feet.filter(({ owner, foot }) =>
        room.home.some(({ place, points }) => {
          const [start, end] = [points[0], points.at(-1)];
          const leaves = start && foot && Math.abs(start.y - foot.y) < APART;
          const [own] = wires;
          return ownerOf(place) === owner && leaves && end && own && liesOn(end, own);
        }),
      );
      return joined.length === feet.length ? [] : [{ input, feet }];
    }),

  'an aux that feeds a device runs on to it, and what the device gives to strips comes from its rail':
    (room, setup) =>
      room.devices.flatMap(({ owner, x, wires, input }) => {
        const fed = setup.rig.desk.auxes.filter(({ id }) =>
          [...controls(setup.rig).values()].some(
            ({ kind, address }) =>
              kind === 'cord' &&
              ownerOf(address) === owner &&
              feedOf(setup, address)?.output === `desk.${id}.out`,
          ),
        );
        const isFed = fed.every(({ id }) => {
          const rail = railAt(room, `desk.${id}`).at(-1)?.points.at(-1);
          const wire = wires.find(({ place }) => place === `desk.${id}.out`)?.points[0];
          return rail?.x === wire?.x && rail?.y === wire?.y;
        });
        const isNamed = (input === undefined) === fed.length > 0;
        const back = railAt(room, `${owner}.out`).at(-1)?.points.at(-1);
        const up = wires.find(({ place }) => place === `${owner}.out`)?.points.at(-1);
        const isBack = back?.x === up?.x && back?.y === up?.y && (!up || up.x === x);
        return isFed && isNamed && isBack ? [] : [owner];
      }),
};

describe.each(Object.keys(PROPERTIES))('drawRoom(): %s', (property) => {
  const broken = (setup: Setup) => PROPERTIES[property]?.(roomOf(setup), setup);

  test.each(benchRigs)('in the room $id', (rig) => {
    expect(broken({ rig, board: {} })).toEqual([]);
  });

  test('in any room', () => {
    fc.assert(
      fc.property(arbitrarySetup(), (setup) => {
        expect(broken(setup)).toEqual([]);
      }),
      RUNS,
    );
  });
});

test('drawRoom() leaves the desk where it is, and columns of the box where they are on any board', () => {
  fc.assert(
    fc.property(arbitrarySetup(), (setup) => {
      const room = roomOf(setup);
      const places = (columns: readonly { readonly owner: string; readonly x: number }[]) =>
        columns.map(({ owner, x }) => [owner, x]);
      const desk = layOut(setup.rig);
      expect(room.desk.columns.map(({ wires }) => wires)).toEqual(
        desk.columns.map(({ wires }) => wires),
      );
      const atFirst = roomOf({ rig: setup.rig, board: {} });
      expect(places(boxOf(room).columns)).toEqual(places(boxOf(atFirst).columns));
    }),
    RUNS,
  );
});

test('drawRoom() with all folded is the desk alone', () => {
  const desk = layOut(netLoft);
  const room = drawRoom({ rig: netLoft, board: {} }, desk, { box: false, rack: false, folded: [] });
  expect(room).toEqual({ desk, box: [], cords: [], devices: [], home: [] });
});

test.each(benchRigs)('drawRoom() leaves room for the names of the box of $id', (rig) => {
  const columns = boxOf(roomOf({ rig, board: {} })).columns.toSorted((a, b) => a.x - b.x);
  const crowded = columns.slice(1).filter(({ x, label }, index) => {
    const before = columns[index];
    return before && (NAME(before.label) + NAME(label)) / 2 > x - before.x + 2;
  });
  expect(crowded.map(({ label }) => label)).toEqual([]);
});

test('drawRoom() a track on the output of its own number, on the strip of that number, is one upright line', () => {
  const room = roomOf({ rig: netLoft, board: {} });
  const cello = room.box.find(({ column }) => column.owner === 'box.cello');
  const cord = room.cords.find(({ input }) => input === 'desk.ch3.in');
  expect(cord?.dots.map(({ at }) => at)).toEqual([cello?.goal.end]);
  expect(new Set(cord?.wire.points.map(({ x }) => x))).toEqual(new Set([cello?.column.x]));
});

test('drawRoom() a doubled output has two dots on one rail, and one cord', () => {
  const board = withValues(netLoft, {}, { 'box.alto.to': 'out3' });
  const room = roomOf({ rig: netLoft, board });
  const height = room.desk.rails.find(({ owner }) => owner === 'converter.out3')?.y;
  const dots = room.box.flatMap(({ goal }) => goal.dots).filter(({ at }) => at.y === height);
  expect(new Set(dots.map(({ at }) => at.x)).size).toBe(2);
  expect(
    room.cords.filter(({ dots: some }) => some.some(({ at }) => at.y === height)),
  ).toHaveLength(1);
});

test('drawRoom() a stereo strip on two outputs hangs from both, its sides named; on one device from its rail', () => {
  const rig = rigs.get('teaching-desk') as Rig;
  const cordOf = (room: RoomDrawing, input: string) =>
    room.cords.find((cord) => cord.input === input);
  const piano = cordOf(roomOf({ rig, board: {} }), 'desk.ch7.in');
  expect(piano?.dots.map(({ side }) => side)).toEqual(['l', 'r']);
  const plate = cordOf(roomOf({ rig: netLoft, board: {} }), 'desk.ret1.in');
  expect(plate?.dots.map(({ side }) => side)).toEqual([undefined]);
});

test('drawRoom() a strip that is fed by a normal alone hangs by a wire that says so', () => {
  const rig = bayRoom();
  const board = { 'desk.b.in': 'converter.out5' };
  const room = roomOf({ rig, board });
  const byNormal = (input: string) =>
    room.cords.find((cord) => cord.input === input)?.wire.isNormal;
  expect([byNormal('desk.a.in'), byNormal('desk.b.in')]).toEqual([true, false]);
});

test('drawRoom() what no rail feeds keeps the name of what does', () => {
  const room = roomOf({ rig: split, board: {} });
  expect(valueAt({ rig: split, board: {} }, 'desk.ret3.in.l')).toBe('desk.sub5.out');
  const named = room.desk.columns.filter(({ input }) => input).map(({ owner }) => owner);
  expect(named).toEqual(['desk.ret3', 'desk.ret4']);
});
