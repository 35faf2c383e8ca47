import { nearestNames } from '../file/nearest-names.ts';
import type { PlaceInFile } from '../file/place.ts';
import { boxChannels, takesSends } from './box-channels.ts';
import { bayContradictions } from './check-bay.ts';
import { deskContradictions } from './check-desk.ts';
import type { Contradiction } from './contradiction.ts';
import { type Misfit, misfitOf, NONE, OPEN } from './control.ts';
import { controls } from './controls.ts';
import type { FileBoard, Rig } from './schema.ts';

const PARTS_OF_A_CHANNEL = ['source', 'sum', 'fader', 'mute', 'pan', 'to', 'main'];
const PARTS_OF_A_STRIP = [
  'in',
  'path',
  'trim',
  'polarity',
  'insert',
  'fader',
  'swap',
  'cut',
  'mute',
  'pan',
  'main',
  'solo',
  'safe',
  'direct',
];
const PARTS_OF_THE_CONTROL_ROOM = ['listen', 'solo', 'mode', 'mono', 'level', 'out', 'main'];
/** What an owner of the desk cannot be called. */
const OWNERS_OF_A_DESK = ['main', 'control'];

/** All contradictions of a rig; none when it can stand on a floor. */
export function contradictionsIn(rig: Rig): Contradiction[] {
  const found = [
    ...duplicates([
      ...places(rig.box.tracks, ['box', 'tracks']),
      ...places(rig.box.buses, ['box', 'buses']),
      ...places(rig.box.captures, ['box', 'captures']),
    ]),
    ...channels(rig).flatMap(({ plugins, at }) => duplicates(places(plugins, at))),
    ...duplicates([
      ...places(rig.desk.strips, ['desk', 'strips']),
      ...places(rig.desk.auxes, ['desk', 'auxes']),
      ...places(rig.desk.subgroups, ['desk', 'subgroups']),
    ]),
    ...duplicates(places(rig.desk.stripTypes, ['desk', 'stripTypes'])),
    ...duplicates(places(rig.desk.controlRoom?.inputs ?? [], ['desk', 'controlRoom', 'inputs'])),
    ...duplicates(places(rig.rack, ['rack'])),
    ...duplicates(places(rig.bay?.rows ?? [], ['bay', 'rows'])),
    ...duplicates(places(rig.bay?.mults ?? [], ['bay', 'mults'])),
    ...duplicates(places(rig.outputs, ['outputs'])),
    ...reservedIds(rig),
    ...deskContradictions(rig),
    ...devices(rig),
  ];
  // The list of controls can only be trusted once the ids are sound.
  if (found.length > 0) return found;
  const onBay = bayContradictions(rig);
  if (onBay.length > 0) return onBay;
  return misfitsIn(rig, rig.defaults).map((one) => ({ ...one, at: ['defaults', ...one.at] }));
}

/** How many entries of a board get the nearest names as a hint: looking for them takes its time. */
const MOST_HINTS = 8;

/**
 * Every entry of a board in a file that fits no control of the rig, with the way to mend it.
 *
 * @param under what these values are changes to: it fits, and all that it says holds where they say nothing.
 */
export function misfitsIn(rig: Rig, board: FileBoard, under: FileBoard = {}): Contradiction[] {
  const known = controls(rig);
  let hints = 0;
  const hintFrom = (name: string, names: readonly string[]) => {
    hints += 1;
    return hints > MOST_HINTS ? {} : { hint: nearest(name, names) };
  };
  const misfits = Object.entries(board).flatMap(([address, value]): Contradiction[] => {
    const control = known.get(address);
    const at = [address];
    if (!control) {
      return [
        {
          at,
          expected: 'the address of a control of this rig',
          found: `"${address}"`,
          ...hintFrom(address, [...known.keys()]),
        },
      ];
    }
    const misfit = misfitOf(
      control,
      control.kind === 'gain' && value === '-inf' ? -Infinity : value,
    );
    if (!misfit) return [];
    const hint =
      misfit.code === 'no-such-option' ? hintFrom(String(value), misfit.options) : undefined;
    return [{ at, found: JSON.stringify(value), expected: expectedBy(misfit), ...hint }];
  });
  return [...misfits, ...sharedJacks(rig, board, under)];
}

/** Cords of a board that come out of the same jack: a jack takes one plug. */
function sharedJacks(rig: Rig, board: FileBoard, under: FileBoard): Contradiction[] {
  const taken = new Map<string, string>();
  return [...controls(rig).values()].flatMap((control): Contradiction[] => {
    if (control.kind !== 'cord') return [];
    const jack = board[control.address] ?? under[control.address] ?? control.default;
    if (typeof jack !== 'string' || jack === NONE || jack === OPEN) return [];
    const first = taken.get(jack);
    taken.set(jack, first ?? control.address);
    if (first === undefined) return [];
    return [
      {
        at: [Object.hasOwn(board, control.address) ? control.address : first],
        expected: 'one cord from each output jack',
        found: `${jack} plugged into both ${first} and ${control.address}`,
        hint: 'Unplug one of the two with "none".',
      },
    ];
  });
}

function expectedBy(misfit: Misfit): string {
  switch (misfit.code) {
    case 'wrong-type':
      return { number: 'a number', switch: 'true or false', option: 'a name' }[misfit.expected];
    case 'out-of-range':
      return `${misfit.min} to ${misfit.max}${misfit.closes ? ', or -inf for closed' : ''}`;
    case 'no-such-option':
      return 'one of its options';
  }
}

/** The names nearest to one that is not known, as a hint. */
const nearest = (name: string, names: readonly string[]): string =>
  `Nearest: ${nearestNames(name, names).join(', ')}.`;

interface NamedPlace {
  readonly id: string;
  readonly at: PlaceInFile;
}

const places = (kin: readonly { readonly id: string }[], at: PlaceInFile): NamedPlace[] =>
  kin.map(({ id }, index) => ({ id, at: [...at, index, 'id'] }));

/** Tracks and buses of the box, each with the place of its plug-ins in the file. */
const channels = (rig: Rig) =>
  boxChannels(rig).map((channel, index) => {
    const tracks = rig.box.tracks.length;
    const at = index < tracks ? ['tracks', index] : ['buses', index - tracks];
    return { ...channel, at: ['box', ...at, 'plugins'] };
  });

function duplicates(kin: readonly NamedPlace[]): Contradiction[] {
  const seen = new Set<string>();
  return kin.flatMap(({ id, at }) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    return [
      { at, expected: 'an id of its own', found: `"${id}" a second time`, hint: 'Rename one.' },
    ];
  });
}

function reservedIds(rig: Rig): Contradiction[] {
  const refuse = (kin: NamedPlace[], reserved: (id: string) => boolean): Contradiction[] =>
    kin
      .filter(({ id }) => reserved(id))
      .map(({ id, at }) => ({
        at,
        expected: 'an id that nothing else uses',
        found: `the reserved "${id}"`,
        hint: 'Choose another id.',
      }));
  const isChannelPart = (id: string) => PARTS_OF_A_CHANNEL.includes(id);
  const isDeskOwner = (id: string) => OWNERS_OF_A_DESK.includes(id);
  const isStripPart = (id: string) => PARTS_OF_A_STRIP.includes(id);
  return [
    ...refuse(places(rig.box.tracks, ['box', 'tracks']), (id) => id === 'main'),
    ...refuse(
      places(rig.box.buses, ['box', 'buses']),
      (id) => id === 'main' || id === 'none' || /^out\d/.test(id),
    ),
    ...refuse(
      places(rig.box.buses, ['box', 'buses']).filter((_, index) => {
        const bus = rig.box.buses[index];
        return bus !== undefined && takesSends(bus);
      }),
      (id) => isChannelPart(id) && id !== 'main',
    ),
    ...refuse(places(rig.box.captures, ['box', 'captures']), (id) => id === 'main'),
    ...channels(rig).flatMap(({ plugins, buses, at }) => {
      // A send has the name of its bus.
      const sends = buses.filter(takesSends).map(({ id }) => id);
      return refuse(places(plugins, at), (id) => isChannelPart(id) || sends.includes(id));
    }),
    ...refuse(places(rig.desk.strips, ['desk', 'strips']), isDeskOwner),
    ...refuse(
      places(rig.desk.auxes, ['desk', 'auxes']),
      (id) => isDeskOwner(id) || isStripPart(id),
    ),
    ...refuse(
      places(rig.desk.subgroups, ['desk', 'subgroups']),
      (id) => isDeskOwner(id) || isStripPart(id),
    ),
    ...refuse(places(rig.desk.controlRoom?.inputs ?? [], ['desk', 'controlRoom', 'inputs']), (id) =>
      PARTS_OF_THE_CONTROL_ROOM.includes(id),
    ),
  ];
}

function devices(rig: Rig): Contradiction[] {
  return rig.rack.flatMap(({ kind, inputs, outputs }, index): Contradiction[] => {
    const fits = inputs === outputs || (kind === 'reverb' && inputs < outputs);
    if (fits) return [];
    return [
      {
        at: ['rack', index, 'outputs'],
        expected: kind === 'reverb' ? 'at least as many outputs as inputs' : `${inputs}, as inputs`,
        found: String(outputs),
        hint: `Write outputs: ${inputs}.`,
      },
    ];
  });
}
