import type { Device, Output, Rig, StripType, Track } from './schema.ts';

/**
 * Everything in a room has one name, made of ids with dots between them: `desk.ch3.fader`.
 * A control, the place that it governs and the jack that a cord goes into share that name.
 */
export type Address = string;

/** Something that has controls: a track, a strip, an aux, a device. `desk.ch3` */
export type Owner = string;

/** Left or right side of something stereo. */
export type Leg = 'l' | 'r';
export const LEGS = ['l', 'r'] as const satisfies readonly Leg[];

export const BOX_MAIN: Owner = 'box.main';
export const DESK_MAIN: Owner = 'desk.main';
export const CONTROL_ROOM: Owner = 'desk.control';

export const boxOwner = (id: string): Owner => `box.${id}`;
export const deskOwner = (id: string): Owner => `desk.${id}`;
export const rackOwner = (id: string): Owner => `rack.${id}`;
export const outputPlace = (id: string): Address => `out.${id}`;
export const converterPlace = (name: string): Address => `converter.${name}`;

/** The address of a part of an owner: `desk.ch3` and `fader` make `desk.ch3.fader`. */
export function part(owner: Owner, name: string): Address {
  // Circuits are built at every edit from the same few thousand addresses. A string that was built
  // before is found far sooner in a map than one that was only just put together.
  const ofOwner = built.get(owner);
  const known = ofOwner?.get(name);
  if (known !== undefined) return known;
  const address = `${owner}.${name}`;
  if (ofOwner) ofOwner.set(name, address);
  else built.set(owner, new Map([[name, address]]));
  return address;
}
const built = new Map<Owner, Map<string, Address>>();

/** What an address belongs to: `desk.ch3` for `desk.ch3.fader`. */
export const ownerOf = (address: Address): Owner => address.split('.').slice(0, 2).join('.');

/** The names of one place: itself where it is mono, with `.l` and `.r` where it is stereo. */
export const legsOf = (place: Address, stereo: boolean): readonly Address[] =>
  stereo ? LEGS.map((leg) => part(place, leg)) : [place];

/** The type of a strip. Rigs are checked when they are read, so that it is there. @throws RangeError otherwise. */
export function stripTypeOf(rig: Rig, strip: { readonly type: string }): StripType {
  const type = rig.desk.stripTypes.find(({ id }) => id === strip.type);
  if (!type) throw new RangeError(`Expected a strip type of the rig, but got ${strip.type}.`);
  return type;
}

/** Signals of a track: one where it is mono, `.l` and `.r` where it is stereo. */
export const signalsOf = (track: Track): readonly string[] => legsOf(track.id, track.stereo);

export const deviceIns = (device: Device): readonly Address[] =>
  legsOf(part(rackOwner(device.id), 'in'), device.inputs === 2);
export const deviceOuts = (device: Device): readonly Address[] =>
  legsOf(part(rackOwner(device.id), 'out'), device.outputs === 2);
export const outputJacks = (output: Output): readonly Address[] =>
  legsOf(outputPlace(output.id), output.stereo);

/** Name of a converter output by number, from 1: `out3`. */
export const lineOut = (number: number): string => `out${number}`;
/** Name of the pair that starts at a converter output: `out3-4`. */
export const linePair = (first: number): string => `out${first}-${first + 1}`;

/** Name of a converter input by number, from 1: `in3`. */
export const lineIn = (number: number): string => `in${number}`;
/** Name of the pair that starts at a converter input: `in3-4`. */
export const linePairIn = (first: number): string => `in${first}-${first + 1}`;

/** The converter outputs that a name of one or of a pair stands for; none where it is neither. */
export const lineOutsOf = (name: string): readonly string[] =>
  lineNumbers(/^out(\d+)(?:-(\d+))?$/, name).map(lineOut);

/** The converter inputs that a name of one or of a pair stands for; none where it is neither. */
export const lineInsOf = (name: string): readonly string[] =>
  lineNumbers(/^in(\d+)(?:-(\d+))?$/, name).map(lineIn);

function lineNumbers(pattern: RegExp, name: string): number[] {
  const [, first, second] = pattern.exec(name) ?? [];
  return [first, second].flatMap((number) => (number ? [Number(number)] : []));
}
