import {
  type Address,
  BOX_MAIN,
  type BoxChannel,
  boxOwner,
  type Capture,
  converterPlace,
  isOn,
  LEGS,
  lineOutsOf,
  type Owner,
  type Plugin,
  part,
  pickAt,
  pluginAddress,
  type Setup,
  takesSends,
} from '../../simulator/index.ts';
import { bareColumn } from './bare-column.ts';
import { riser } from './bus-column.ts';
import type { AssignCrossing, Column, Point, SendCrossing, WireLine, WireRole } from './drawing.ts';
import type { BoxColumn, GoalMark, RailDot } from './room-drawing.ts';
import type { RoomRows } from './room-rows.ts';
import { endOfRow } from './rows.ts';
import { runDown } from './run.ts';
import { AFTER_SIDE } from './strip-column.ts';

/** How far above the start of its wire the names of a column of the box begin. */
const NAMES = 48;
/** How far below its names the wire of a capture track begins: where what it records comes home. */
export const HOME_END = NAMES * 1.5;
/** How far below its wire a column ends that goes nowhere. */
const NOWHERE = 22;

/** The last place of a plug-in, which is what it gives on. */
const LAST_PLACE: Readonly<Record<Plugin['kind'], string>> = {
  gain: 'gain',
  compressor: 'makeup',
  equaliser: 'equalise',
  delay: 'level',
  reverb: 'level',
};

/** A track or a bus of the box: its wire in signal order, down to the rails that it is assigned to. */
export function channelColumn(
  setup: Setup,
  rows: RoomRows,
  channel: BoxChannel,
  kind: 'track' | 'box-bus',
  label: string,
  x: number,
): BoxColumn {
  const { owner, plugins } = channel;
  const born = part(owner, kind === 'track' ? 'source' : 'sum');
  const { pieces, last } = throughPlugins(setup, rows, channel, born, kind, x);
  const bottom = rows.stages[0]?.top ?? rows.start;
  const run = runDown(owner, kind, rows.stages, { place: last, y: bottom }, rows.main, x);
  const goal = goalOf(setup, rows, owner, x);
  const sends = sendsOf(rows, channel, x);
  const column: Column = {
    ...bareColumn(owner, kind, x),
    ...run,
    top: rows.start - NAMES,
    label,
    wires: [
      ...(kind === 'box-bus'
        ? [riser(owner, kind, x, rows.buses.get(owner) ?? rows.main, rows.start)]
        : []),
      ...(sends.length > 0 ? [{ ...afterWire(rows, owner, x), sends }] : []),
      ...pieces,
      ...run.wires,
      wire(goalPlace(setup, owner), kind, [{ x, y: rows.main }, goal.end]),
    ],
    sends,
    assigns: [mainFeed(rows, owner, x)],
  };
  const marks = plugins.map((plugin, index) => ({
    address: pluginAddress(channel, plugin),
    label: plugin.label,
    at: { x, y: rows.plugins[index] ?? rows.start },
  }));
  return { column, plugins: marks, goal };
}

/** The main mix of the box: its rail rises at its left, and it runs down to the pair that it leaves by. */
export function boxMainColumn(setup: Setup, rows: RoomRows, x: number): BoxColumn {
  const [fader] = rows.stages;
  const from = { place: part(BOX_MAIN, 'sum'), y: rows.start };
  const goal = goalOf(setup, rows, BOX_MAIN, x);
  const run = runDown(BOX_MAIN, 'box-main', fader ? [fader] : [], from, goal.end.y, x);
  const column: Column = {
    ...bareColumn(BOX_MAIN, 'box-main', x),
    ...run,
    top: rows.start - NAMES,
    label: 'Box main mix',
    wires: [riser(BOX_MAIN, 'box-main', x, rows.main, rows.start), ...run.wires],
  };
  return { column, plugins: [], goal };
}

/** A capture track: what it records runs straight down to where it is played back. */
export function captureColumn(
  setup: Setup,
  rows: RoomRows,
  { id, label }: Capture,
  x: number,
): BoxColumn {
  const owner = boxOwner(id);
  const goal = goalOf(setup, rows, owner, x);
  const place = part(owner, 'in');
  const column: Column = {
    ...bareColumn(owner, 'capture', x),
    top: rows.start - NAMES,
    label,
    input: place,
    wires: [wire(place, 'capture', [{ x, y: rows.start - NAMES + HOME_END }, goal.end])],
  };
  return { column, plugins: [], goal };
}

/** The pieces of wire through the plug-ins, and the place whose level comes to the fader. */
function throughPlugins(
  setup: Setup,
  rows: RoomRows,
  channel: BoxChannel,
  born: Address,
  role: WireRole,
  x: number,
): { readonly pieces: readonly WireLine[]; readonly last: Address } {
  const pieces: WireLine[] = [];
  let from = rows.start;
  let last = born;
  channel.plugins.forEach((plugin, index) => {
    const at = pluginAddress(channel, plugin);
    const y = rows.plugins[index] ?? from;
    pieces.push(
      wire(last, role, [
        { x, y: from },
        { x, y },
      ]),
    );
    from = y;
    // One that is off is passed by: its places stay, with nothing in them.
    if (isOn(setup, part(at, 'on'))) last = part(at, LAST_PLACE[plugin.kind]);
  });
  const bottom = rows.stages[0]?.top ?? from;
  return {
    pieces: [
      ...pieces,
      wire(last, role, [
        { x, y: from },
        { x, y: bottom },
      ]),
    ],
    last,
  };
}

/** Where a channel, the main mix or a capture track is assigned, as far as its rails are drawn. */
function goalOf(setup: Setup, rows: RoomRows, owner: Owner, x: number): GoalMark {
  const address = part(owner, 'to');
  const to = pickAt(setup, address) ?? '';
  const lines = lineOutsOf(to).map((line) => rows.lines.get(converterPlace(line)));
  const heights = lines.length > 0 ? lines : [rows.buses.get(boxOwner(to))];
  const dots = heights.flatMap((y, index): RailDot[] =>
    y === undefined ? [] : [{ at: { x, y }, side: heights.length === 2 ? LEGS[index] : undefined }],
  );
  const lowest = dots.map(({ at: { y } }) => y);
  const end = lines.length > 0 ? Math.max(...lowest) : rows.main + (dots.length > 0 ? 0 : NOWHERE);
  return { address, dots, end: { x, y: end } };
}

/** What a channel gives to where it is assigned; to one output it leaves before its pan. */
function goalPlace(setup: Setup, owner: Owner): Address {
  if (setup.rig.box.compensates) return part(owner, 'to');
  const lines = lineOutsOf(pickAt(setup, part(owner, 'to')) ?? '');
  return part(owner, lines.length === 1 ? 'mute' : 'pan');
}

function sendsOf(rows: RoomRows, { owner, buses }: BoxChannel, x: number): SendCrossing[] {
  return buses.filter(takesSends).map(({ id, tap }): SendCrossing => {
    const address = part(owner, id);
    const y = rows.sends.get(boxOwner(id)) ?? rows.start;
    return {
      address,
      tapSwitch: tap === 'switchable' ? part(address, 'tap') : undefined,
      fixedTap: tap === 'switchable' ? undefined : tap,
      before: { x, y },
      after: { x: x - AFTER_SIDE, y },
    };
  });
}

/** The thin wire that comes back up from below the mute into the band of the rails that take sends. */
function afterWire(rows: RoomRows, owner: Owner, x: number): WireLine {
  const mute = rows.stages.find(({ stage }) => stage === 'mute');
  const y = mute ? endOfRow(mute) : rows.band.bottom;
  const side = x - AFTER_SIDE;
  return wire(part(owner, 'mute'), 'after', [
    { x, y },
    { x: side, y },
    { x: side, y: rows.band.top },
  ]);
}

const mainFeed = (rows: RoomRows, owner: Owner, x: number): AssignCrossing => ({
  address: part(owner, 'main'),
  bus: 'main',
  at: { x, y: rows.main },
});

const wire = (place: Address, role: WireRole, points: readonly Point[]): WireLine => ({
  place,
  role,
  points,
});
