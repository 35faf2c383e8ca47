import {
  type Address,
  BOX_MAIN,
  boxChannels,
  boxOwner,
  converterPlace,
  inputsFedBy,
  lineOutsOf,
  type Owner,
  ownerOf,
  part,
  pickAt,
  type Rig,
  type Setup,
} from '../../simulator/index.ts';
import { boxMainColumn, captureColumn, channelColumn } from './box-column.ts';
import { RISER_SIDE } from './bus-column.ts';
import { cordsOf, railHeight } from './cords.ts';
import type { Column, Drawing, Rail, RowName } from './drawing.ts';
import { waysHome } from './home.ts';
import { across, GUTTER } from './lay-out.ts';
import { ROOM_FOR, shortened, shortOwner } from './names.ts';
import { DEVICE_TOP, layRack } from './rack.ts';
import type { BoxColumn, CordMark, DeviceMark, RoomDrawing } from './room-drawing.ts';
import { layRoomRows, type RoomRows, type Sections } from './room-rows.ts';

/** Room that a column of the box takes, and one that a rail rises to. */
const TRACK = 78;
const BUS = 92;

/**
 * Draws what is around a desk: the box above it, whose outputs are rails that the strips hang from, and the rack
 * beside it, whose devices give back to rails there. The desk stays as it is.
 *
 * Where columns stand depends on the rig alone; what hangs where, and which devices have a rail, on cords.
 */
export function drawRoom(setup: Setup, desk: Drawing, sections: Sections): RoomDrawing {
  const rows = layRoomRows(setup, sections);
  const rack = sections.rack ? layRack(setup, desk) : { ...desk, devices: [] };
  const box = sections.box ? boxColumns(setup, rows, desk) : [];
  const cords = cordsOf(setup, rows.lines, desk.columns, box);
  const hung = new Set(cords.map(({ input }) => input));
  const isAllHung = desk.columns.every(({ input }) => input === undefined || hung.has(input));
  const xs = [...desk.columns, ...box.map(({ column }) => column)].map(({ x }) => x);
  const end = Math.max(GUTTER, ...xs) + TRACK / 2;
  const { devices, back } = giveBack(rows, cords, rack.devices);
  const home = waysHome(setup, desk.columns, box, {
    width: Math.max(rack.width, ...box.map(({ column }) => column.x + BUS / 2)),
    top: rows.top,
    height: desk.height,
  });
  return {
    desk: {
      ...desk,
      ...home.frame,
      // What hangs by a cord has no need of the name of what feeds it.
      columns: desk.columns.map((column) =>
        column.input && hung.has(column.input) ? { ...column, input: undefined } : column,
      ),
      rails: [...railsOf(setup.rig, rows, box, end), ...back, ...rack.rails],
      rows: [...rowNames(rows), ...desk.rows.filter(({ text }) => text !== 'from' || !isAllHung)],
    },
    box,
    cords,
    devices,
    home: home.wires,
  };
}

/** Tracks, each above the strip that its output feeds in the room as one finds it, then buses and capture tracks. */
function boxColumns(setup: Setup, rows: RoomRows, desk: Drawing): BoxColumn[] {
  const { rig } = setup;
  const { tracks, buses, captures } = rig.box;
  const strips = desk.columns.filter(({ kind }) => kind === 'strip');
  const homes = tracks.map(({ id }) => homeOf(rig, strips, boxOwner(id)));
  let x = Math.max((strips[0]?.x ?? GUTTER + TRACK) - TRACK, ...homes.map((home) => home ?? 0));
  const next = (width: number) => {
    x += width;
    return x;
  };
  const taken: number[] = [];
  const isTaken = (home: number) => taken.some((at) => Math.abs(at - home) < TRACK);
  const channels = boxChannels(rig).map((channel, index): BoxColumn => {
    const track = tracks[index];
    const label = (track ?? buses[index - tracks.length])?.label ?? channel.id;
    const home = homes[index];
    if (!track) return channelColumn(setup, rows, channel, 'box-bus', label, next(BUS));
    const at = home === undefined || isTaken(home) ? next(TRACK) : home;
    taken.push(at);
    return channelColumn(setup, rows, channel, 'track', label, at);
  });
  const main = boxMainColumn(setup, rows, next(BUS));
  const captured = captures.map((capture) => captureColumn(setup, rows, capture, next(BUS)));
  return [...channels, main, ...captured];
}

/**
 * Where the strip stands that the output of a track feeds by default; of a stereo track the middle of both.
 * Nothing where none does.
 */
function homeOf(rig: Rig, strips: readonly Column[], owner: Owner): number | undefined {
  const found = { rig, board: {} };
  const fed = lineOutsOf(pickAt(found, part(owner, 'to')) ?? '')
    .flatMap((line) => inputsFedBy(found, converterPlace(line)))
    .map(ownerOf);
  const homes = strips.filter((strip) => fed.includes(strip.owner)).map(({ x }) => x);
  const [first] = homes;
  return first === undefined ? undefined : (first + (homes.at(-1) ?? first)) / 2;
}

/** The rails of the box: its buses up to where they rise, and the outputs of the converter all along. */
function railsOf(rig: Rig, rows: RoomRows, box: readonly BoxColumn[], end: number): Rail[] {
  const riserOf = (owner: Owner) =>
    (box.find(({ column }) => column.owner === owner)?.column.x ?? end) - RISER_SIDE;
  const busRail = (owner: Owner, y: number): Rail => {
    const role = owner === BOX_MAIN ? 'box-main' : 'box-bus';
    const bus = rig.box.buses.find(({ id }) => boxOwner(id) === owner);
    const label = shortened(bus?.label ?? 'Box main', ROOM_FOR.rail);
    return rail(owner, role, label, y, [
      across(part(owner, 'sum'), role, GUTTER, riserOf(owner), y),
    ]);
  };
  const outputs = [...rows.lines].filter(([place]) => place.startsWith('converter.'));
  return [
    ...[...rows.sends, ...rows.buses].map(([owner, y]) => busRail(owner, y)),
    ...outputs.map(([place, y]) =>
      rail(place, 'line', shortOwner(rig, place), y, [across(place, 'line', GUTTER, end, y)]),
    ),
  ];
}

const rail = (
  owner: Owner,
  role: Rail['role'],
  label: string,
  y: number,
  wires: Rail['wires'],
): Rail => ({ owner, role, label, y, wires, end: undefined, master: undefined, solo: undefined });

/** What devices give back to strips: a wire up to a rail of their own, and the rail. Others give nothing back here. */
function giveBack(
  rows: RoomRows,
  cords: readonly CordMark[],
  devices: readonly DeviceMark[],
): { readonly devices: DeviceMark[]; readonly back: Rail[] } {
  const hung = new Set(cords.flatMap(({ dots }) => dots.map(({ at }) => at.y)));
  const back: Rail[] = [];
  const all = devices.map((device) => {
    const place: Address = part(device.owner, 'out');
    const y = railHeight(rows.lines, place);
    if (y === undefined || !hung.has(y)) return device;
    back.push(
      rail(place, 'line', shortened(device.label, ROOM_FOR.rail), y, [
        across(place, 'line', GUTTER, device.x, y),
      ]),
    );
    const points = [
      { x: device.x, y: DEVICE_TOP },
      { x: device.x, y },
    ];
    return { ...device, wires: [...device.wires, { place, role: 'line' as const, points }] };
  });
  return { devices: all, back };
}

function rowNames({ plugins, stages }: RoomRows): RowName[] {
  return [
    ...plugins.slice(0, 1).map((y) => ({ text: 'plug-in', y })),
    ...stages.map(({ stage, top, bottom }) => ({ text: stage, y: (top + bottom) / 2 })),
  ];
}
