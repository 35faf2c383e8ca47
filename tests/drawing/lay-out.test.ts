import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CONTROL_ROOM,
  controls,
  DESK_MAIN,
  deskOwner,
  type Owner,
  part,
  type Rig,
} from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import type { Column, Drawing } from '../../src/drawing/drawing.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { arbitraryView, RUNS } from './arbitrary-desk.ts';
import {
  addressesOf,
  crowdedPairs,
  gapsOf,
  handlesOf,
  liesOn,
  ownWires,
  passesBehind,
  pointsOf,
} from './geometry.ts';

/** The narrowest that a target for a finger may be (WCAG 2.2, SC 2.5.8). */
const LEAST_APART = 24;

const { rigs } = readCourse();
const netLoft = rigs.get('net-loft') as Rig;
const inLine = rigs.get('in-line-desk') as Rig;
const split = rigs.get('split-desk') as Rig;

/** All of a desk in the order of its drawing: the second path of an in-line strip beside its first. */
const deskOwners = ({ desk: { strips, auxes, subgroups, controlRoom } }: Rig): Owner[] => [
  ...strips
    .filter(({ inline }) => inline === undefined)
    .flatMap((strip) => [strip, ...strips.filter(({ inline }) => inline === strip.id)])
    .map(({ id }) => deskOwner(id)),
  ...[...auxes, ...subgroups].map(({ id }) => deskOwner(id)),
  DESK_MAIN,
  ...(controlRoom ? [CONTROL_ROOM] : []),
];

/** What is drawn of what is asked for: an in-line strip whole. */
const wholeStrips = (rig: Rig, show: readonly Owner[]): Owner[] => {
  const { strips } = rig.desk;
  const firstOf = (id: string) => strips.find((strip) => strip.id === id)?.inline ?? id;
  const isAsked = (id: string) =>
    strips.some((other) => firstOf(other.id) === firstOf(id) && show.includes(deskOwner(other.id)));
  const asked = strips.filter(({ id }) => isAsked(id)).map(({ id }) => deskOwner(id));
  return [...new Set([...show, ...asked])];
};

/** All that a drawing has to hold as a control: what is set on its owners, but for cords and for buses not drawn. */
function expectedControls(rig: Rig, show: readonly Owner[]): string[] {
  const ids = (kin: readonly { readonly id: string }[]) => kin.map(({ id }) => id);
  const buses = [...ids(rig.desk.auxes), ...ids(rig.desk.subgroups), 'main'];
  return [...controls(rig).values()]
    .filter(({ owner, kind }) => show.includes(owner) && kind !== 'cord')
    .map(({ address }) => address)
    .filter((address) => {
      const goal = address.split('.')[2] ?? '';
      return !buses.includes(goal) || show.includes(deskOwner(goal));
    });
}

const stripTypeOf = (rig: Rig, owner: Owner) => {
  const strip = rig.desk.strips.find(({ id }) => deskOwner(id) === owner);
  return rig.desk.stripTypes.find(({ id }) => id === strip?.type);
};

const columnsOf = ({ columns }: Drawing, kind: Column['kind']) =>
  columns.filter((column) => column.kind === kind);

/** The properties that every drawing of a desk has. Each gives what breaks it. */
const PROPERTIES: Readonly<
  Record<string, (drawing: Drawing, rig: Rig, show: readonly Owner[]) => readonly unknown[]>
> = {
  'everything lies inside': ({ width, height, ...drawing }) =>
    pointsOf({ width, height, ...drawing }).filter(
      ({ point: { x, y } }) => !(x >= 0 && x <= width && y >= 0 && y <= height),
    ),

  [`different controls are at least ${LEAST_APART} apart`]: (drawing) =>
    crowdedPairs(handlesOf(drawing), LEAST_APART),

  'the two places of a send are apart': ({ columns }) =>
    columns
      .flatMap(({ sends }) => sends)
      .filter(
        ({ before, after }) => Math.hypot(before.x - after.x, before.y - after.y) < LEAST_APART,
      ),

  'every control of what is drawn is drawn once, and no other': (drawing, rig, show) => {
    const drawn = addressesOf(drawing).sort();
    const expected = expectedControls(rig, show).sort();
    return JSON.stringify(drawn) === JSON.stringify(expected) ? [] : [{ drawn, expected }];
  },

  'what is listed is drawn once, in the order of the desk, and nothing else': (
    drawing,
    rig,
    show,
  ) => {
    const drawn = [...drawing.columns, ...drawing.rails].map(({ owner }) => owner);
    const listed = deskOwners(rig).filter((owner) => show.includes(owner));
    const inOrder = listed.filter((owner) => drawn.includes(owner));
    const strange = drawn.filter((owner) => !show.includes(owner));
    const columns = drawing.columns.map(({ owner }) => owner);
    const rails = drawing.rails.map(({ owner }) => owner);
    return [
      ...strange,
      ...listed.filter((owner) => !drawn.includes(owner)),
      ...[columns, rails].flatMap((part) => {
        const ordered = inOrder.filter((owner) => part.includes(owner));
        return JSON.stringify(ordered) === JSON.stringify(part) ? [] : [part];
      }),
    ];
  },

  'a wire joins end to end, but for the gaps of inserts and faders': ({ columns }) =>
    columns.flatMap((column) => {
      const pieces = ownWires(column);
      const gaps = gapsOf(column);
      return pieces.slice(1).flatMap(({ place, points: [start] }, index) => {
        const end = pieces[index]?.points.at(-1);
        const gap = gaps.find((one) => one.place === place);
        const [from, to] = gap ? [gap.top, gap.bottom] : [end?.y, end?.y];
        const joins =
          end?.y === from && start?.y === to && (kindOfRise(column, index) || end?.x === start?.x);
        return joins ? [] : [{ place, end, start, gap }];
      });
    }),

  'the wire of a strip runs from the top to the last rail that it meets, through all of its gaps': (
    drawing,
    rig,
  ) =>
    columnsOf(drawing, 'strip').flatMap((column) => {
      const pieces = ownWires(column);
      const bottom = Math.max(...pieces.flatMap(({ points }) => points.map(({ y }) => y)));
      const last = pieces.at(-1)?.points.at(-1);
      const buses = stripTypeOf(rig, column.owner)?.assigns ?? ['main'];
      const meetsMain = buses.includes('main');
      const isBusMet = ({ owner }: { readonly owner: Owner }) =>
        meetsMain ? owner === DESK_MAIN : buses.some((id) => deskOwner(id) === owner);
      const main = drawing.rails.findLast(isBusMet);
      const isGapThere = gapsOf(column).every(({ place }) =>
        pieces.some((piece) => piece.place === place),
      );
      return last?.y === bottom && (!main || last.y === main.y) && isGapThere ? [] : [column.owner];
    }),

  'wires run down, and a bus rises from its rail before': ({ columns }) =>
    columns.flatMap((column) => {
      const [first, ...others] = ownWires(column);
      const down = kindOfRise(column, 0) ? others : [first, ...others];
      return down.filter((piece) => {
        const [start, end] = piece?.points ?? [];
        return !start || !end || end.y < start.y;
      });
    }),

  'a bus rises from where its rail ends': ({ columns, rails }) =>
    columns
      .filter(({ kind }) => kind === 'subgroup' || kind === 'main')
      .filter((column) => {
        const start = ownWires(column)[0]?.points[0];
        const end = rails
          .find(({ owner }) => owner === column.owner)
          ?.wires.at(-1)
          ?.points.at(-1);
        return !start || !end || start.x !== end.x || start.y !== end.y;
      }),

  'stages stand in signal order from top to bottom, each on its wire or in its gap': (
    drawing,
    rig,
  ) =>
    columnsOf(drawing, 'strip').flatMap(({ owner, stages, x }) => {
      const heights = stages.map(({ at }) => at.y);
      const inOrder = heights.every((y, index) => index === 0 || y > (heights[index - 1] ?? y));
      const isSame =
        JSON.stringify(stages.map(({ stage }) => stage)) ===
        JSON.stringify(stripTypeOf(rig, owner)?.stages);
      return inOrder && isSame && stages.every(({ at }) => at.x === x) ? [] : [{ owner, stages }];
    }),

  'a send before the fader lies on the wire that leaves its tap, one after it on the wire that returns':
    ({ columns }, rig) =>
      columns.flatMap(({ owner, sends, wires }) => {
        const taps = stripTypeOf(rig, owner)?.taps;
        return sends.filter(({ before, after }) => {
          const isOn = (role: string, place: string, point: typeof before) =>
            wires.some((wire) => wire.role === role && wire.place === place && liesOn(point, wire));
          return !(
            isOn('strip', `${owner}.${taps?.pre}`, before) &&
            isOn('after', `${owner}.${taps?.post}`, after)
          );
        });
      }),

  'the wire that returns leaves the strip on the wire below its tap': ({ columns }, rig) =>
    columns.flatMap(({ owner, wires }) => {
      const after = wires.find(
        ({ role, place }) => role === 'after' && place.startsWith(`${owner}.`),
      );
      const [start] = after?.points ?? [];
      const place = `${owner}.${stripTypeOf(rig, owner)?.taps.post}`;
      const isOn = wires.some(
        (wire) => wire.role === 'strip' && wire.place === place && start && liesOn(start, wire),
      );
      return after && !isOn ? [owner] : [];
    }),

  'a send, an assign and a rail cross where they should': ({ columns, rails }) =>
    columns.flatMap(({ sends, assigns }) =>
      [
        ...sends.flatMap(({ address, before, after }) => [
          { address, at: before },
          { address, at: after },
        ]),
        ...assigns,
      ].filter(({ address, at }) => {
        const rail = rails.find(({ owner }) => owner === deskOwner(address.split('.')[2] ?? ''));
        return !rail?.wires.some((wire) => liesOn(at, wire));
      }),
    ),

  'no wire runs behind the device of an insert': ({ columns, rails }) => {
    const wires = [...columns, ...rails].flatMap((one) => one.wires);
    return columns.flatMap(({ owner, inserts }) =>
      inserts.flatMap(({ device }) =>
        wires
          .filter((wire) => passesBehind(wire, device))
          .map(({ role, place }) => `${role} ${place} behind the device of ${owner}`),
      ),
    );
  },

  'a direct output leaves the wire below its stage': ({ columns }, rig) =>
    columnsOf({ columns } as Drawing, 'strip').flatMap(({ owner, wires, sideJacks }) => {
      const stage = stripTypeOf(rig, owner)?.directOut;
      const isRight =
        sideJacks.length === (stage ? 1 : 0) &&
        sideJacks.every(({ at }) =>
          wires.some(
            (wire) =>
              wire.role === 'strip' && wire.place === `${owner}.${stage}` && liesOn(at, wire),
          ),
        );
      return isRight ? [] : [owner];
    }),

  'the switch of a second path is led up to from below the fader of the first, and the swap stands between both':
    ({ columns }, rig) =>
      rig.desk.strips.flatMap(({ id, inline }) => {
        const find = (strip: string | undefined) =>
          columns.find(({ owner }) => owner === deskOwner(strip ?? ''));
        const [first, second] = [find(inline), find(id)];
        if (!first || !second) return [];
        const tap = `${first.owner}.${stripTypeOf(rig, first.owner)?.taps.post}`;
        const rise = second.wires.find(({ place, role }) => place === tap && role === 'after');
        const start = rise?.points[0];
        const leaves = first.wires.some(
          (wire) => wire.role === 'strip' && wire.place === tap && start && liesOn(start, wire),
        );
        const swap = second.toggles.find(({ address }) => address === `${first.owner}.swap`);
        const isBetween = swap && swap.at.x > first.x && swap.at.x < second.x;
        const arrives = rise?.points.at(-1) === second.pathSwitch?.first;
        const [fader, other] = [first.faders[0], second.faders[0]];
        const isCrossed =
          fader?.partner?.address === other?.address &&
          other?.partner?.address === fader?.address &&
          fader?.partner?.x === other?.x &&
          fader?.from !== fader?.top;
        return leaves && arrives && isBetween && isCrossed ? [] : [{ id, inline }];
      }),

  'a bus ends on the main rail, or in a foot above the rails of subgroups': ({
    columns,
    rails,
  }) => {
    const main = rails.find(({ role }) => role === 'main');
    const firstRail = Math.min(
      ...rails.filter(({ role }) => role === 'subgroup').map(({ y }) => y),
    );
    return columns
      .filter(({ kind }) => kind === 'subgroup')
      .filter((column) => {
        const end = ownWires(column).at(-1)?.points.at(-1);
        if (column.foot) return !(end && end.y === column.foot.y && end.y < firstRail);
        return main !== undefined && end?.y !== main.y;
      })
      .map(({ owner }) => owner);
  },

  'a fader is long enough to be drawn on': ({ columns }) =>
    columns.flatMap(({ faders }) => faders).filter(({ top, bottom }) => bottom - top < 100),
};

/** The first piece of a bus starts beside its column and comes over to it. */
const kindOfRise = ({ kind }: Column, index: number) =>
  (kind === 'subgroup' || kind === 'main') && index === 0;

const broken = (property: string, rig: Rig, show?: readonly Owner[]) =>
  PROPERTIES[property]?.(layOut(rig, show), rig, wholeStrips(rig, show ?? deskOwners(rig)));

describe.each(Object.keys(PROPERTIES))('layOut(): %s', (property) => {
  test.each([...rigs.values()])('on the rig $id', (rig) => {
    expect(broken(property, rig)).toEqual([]);
  });

  test('on any desk, and any part of it', () => {
    fc.assert(
      fc.property(arbitraryView, ({ rig, show }) => {
        expect(broken(property, rig, show)).toEqual([]);
      }),
      RUNS,
    );
  });
});

test('layOut() draws the same rig the same, and to show all is to say nothing', () => {
  fc.assert(
    fc.property(arbitraryView, ({ rig, show }) => {
      expect(layOut(rig, show)).toEqual(layOut(structuredClone(rig), show));
      expect(layOut(rig, deskOwners(rig))).toEqual(layOut(rig));
    }),
    RUNS,
  );
});

test('layOut() does not ask in which order owners are listed', () => {
  fc.assert(
    fc.property(arbitraryView, ({ rig, show = deskOwners(rig) }) => {
      expect(layOut(rig, show.toReversed())).toEqual(layOut(rig, show));
    }),
    RUNS,
  );
});

test('layOut() keeps stages at their heights, whichever strips are drawn', () => {
  const heights = ({ columns }: Drawing, owner: Owner) =>
    columns.find((column) => column.owner === owner)?.stages.map(({ at }) => at.y);
  const [strip = '', ...others] = deskOwners(netLoft);
  const rest = others.filter((owner) => !/\.(ch|ret)/.test(owner));
  expect(heights(layOut(netLoft, [strip, ...rest]), strip)).toEqual(
    heights(layOut(netLoft), strip),
  );
});

test('layOut() of one path of an in-line strip draws both', () => {
  const owners = (show: string[]) => layOut(inLine, show).columns.map(({ owner }) => owner);
  expect(owners(['desk.two3'])).toEqual(['desk.ch3', 'desk.two3']);
  expect(owners(['desk.ch3'])).toEqual(['desk.ch3', 'desk.two3']);
});

test('layOut() shows only the sends and assigns that a strip has: 2 of 6 auxes, 2 of 8 subgroups and main', () => {
  const strip = layOut(split).columns.find(({ owner }) => owner === 'desk.ret1');
  expect(strip?.sends.map(({ address }) => address)).toEqual(['desk.ret1.aux1', 'desk.ret1.aux2']);
  expect(strip?.assigns.map(({ address }) => address)).toEqual(
    ['sub7', 'sub8', 'main'].map((bus) => part('desk.ret1', bus)),
  );
});
