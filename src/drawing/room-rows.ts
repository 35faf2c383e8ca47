import {
  type Address,
  BOX_MAIN,
  boxOwner,
  converterPlace,
  deskOwner,
  deviceOuts,
  inputsFedBy,
  lineOut,
  type Owner,
  ownerOf,
  part,
  type Rig,
  rackOwner,
  type Setup,
} from '../../simulator/index.ts';
import { FADER, type Row } from './rows.ts';

/** Which sections are drawn: around the desk, and which parts of the desk are not, by name. */
export interface Sections {
  readonly box: boolean;
  readonly rack: boolean;
  readonly folded: readonly string[];
}

/**
 * Heights of what lies above the desk, whose names begin at 0: all of them are negative. They depend on the rig, and on
 * how many devices give back to strips.
 */
export interface RoomRows {
  readonly top: number;
  /** Where the wires of the box start, below the names. */
  readonly start: number;
  readonly plugins: readonly number[];
  /** Rails of the buses that take sends, in the band between plug-ins and fader; by bus. */
  readonly sends: ReadonlyMap<Owner, number>;
  readonly band: { readonly top: number; readonly bottom: number };
  /** Fader, mute and pan. */
  readonly stages: readonly Row[];
  /** Rails of what channels are assigned to, the main mix last; by bus. */
  readonly buses: ReadonlyMap<Owner, number>;
  readonly main: number;
  /** Rails of what strips hang from: outputs of the converter, then what devices give back; by place. */
  readonly lines: ReadonlyMap<Address, number>;
}

/** Room between the lowest rail and the names of the strips: cords that hang aside come over there. */
export const CORDS = 30;
const NAMES = 40;
const PLUGIN = 28;
const RAIL = 28;
const SEND_RAIL = 36;
const STAGE = 38;
const BOX_FADER = FADER - 18;
/** Room below the rail of the main mix, for what goes nowhere. */
const BELOW_MAIN = 16;
/** Rails of outputs stand closer where there are many. */
const MANY = 16;

/** Lays what is above the desk, from the lowest row to the highest. */
export function layRoomRows(setup: Setup, sections: Sections): RoomRows {
  const { box, converter } = setup.rig;
  let y = -CORDS;
  const take = (height: number) => {
    y -= height;
    return y + height / 2;
  };
  const lineHeight = converter.outputs > MANY ? 14 : 16;
  const railsOf = <T>(list: readonly T[], height: number): [T, number][] =>
    list
      .toReversed()
      .map((one): [T, number] => [one, take(height)])
      .toReversed();
  const devices = sections.rack ? givingBack(setup) : [];
  const back = railsOf(devices, lineHeight);
  if (!sections.box) {
    const none = { top: y, bottom: y };
    const empty = new Map<Owner, number>();
    return {
      top: devices.length > 0 ? y - 8 : 0,
      start: y,
      plugins: [],
      sends: empty,
      band: none,
      stages: [],
      buses: empty,
      main: y,
      lines: new Map(back),
    };
  }
  const outputs = railsOf(
    Array.from({ length: converter.outputs }, (_, index) => converterPlace(lineOut(index + 1))),
    lineHeight,
  );
  y -= BELOW_MAIN;
  const main = take(RAIL);
  const buses = railsOf(
    box.buses.map(({ id }) => boxOwner(id)),
    RAIL,
  );
  const takeRow = (stage: Row['stage'], height: number): Row => {
    const bottom = y;
    take(height);
    return { stage, top: y, bottom, lead: 0 };
  };
  const pan = takeRow('pan', STAGE);
  const mute = takeRow('mute', STAGE);
  const fader = takeRow('fader', BOX_FADER);
  const withSends = box.buses.filter(({ tap }) => tap !== undefined);
  const bottom = y;
  const sends = railsOf(
    withSends.map(({ id }) => boxOwner(id)),
    SEND_RAIL,
  );
  const band = { top: y, bottom };
  const most = Math.max(...[...box.tracks, ...box.buses].map(({ plugins }) => plugins.length));
  const plugins = railsOf(
    Array.from({ length: most }, (_, index) => index),
    PLUGIN,
  ).map(([, at]) => at);
  const start = y;
  return {
    top: y - NAMES - 8,
    start,
    plugins,
    sends: new Map(sends),
    band,
    stages: [fader, mute, pan],
    buses: new Map([...buses, [BOX_MAIN, main]]),
    main,
    lines: new Map([...outputs, ...back]),
  };
}

/** The outputs of devices that feed the line input of a strip: those that have a rail. */
const givingBack = (setup: Setup): Address[] =>
  setup.rig.rack
    .filter((device) =>
      deviceOuts(device).some((jack) =>
        inputsFedBy(setup, jack).some((input) => isLineInput(setup.rig, input)),
      ),
    )
    .map(({ id }) => part(rackOwner(id), 'out'));

const isLineInput = ({ desk }: Rig, input: Address): boolean =>
  desk.strips.some(({ id }) => ownerOf(input) === deskOwner(id)) && /\.in(\.[lr])?$/.test(input);
