import { balanceRatios } from './pan-ratios.ts';
import { readInsert } from './read-insert.ts';
import type { Reading } from './reading.ts';
import {
  legs,
  type PanLaw,
  type RigData,
  type SetupData,
  type StripData,
  type StripStage,
  type StripTypeData,
} from './setup-file.ts';
import { isCut } from './solo.ts';

/** Where something is taken from a strip, besides its sends and assigns. */
export interface StripTaps {
  readonly pre: readonly string[];
  readonly post: readonly string[];
  readonly end: readonly string[];
}

/** @throws RangeError when there is no such type. */
export function typeOf({ desk }: RigData, { type }: Pick<StripData, 'type'>): StripTypeData {
  const found = desk.stripTypes.find(({ id }) => id === type);
  if (!found) throw new RangeError(`Expected a strip type, but got ${type}.`);
  return found;
}

/** The auxes that strips of a type have sends to. */
export const auxesOf = ({ desk }: RigData, { auxes }: StripTypeData) =>
  desk.auxes.filter(({ id }) => auxes === undefined || auxes.includes(id));

/** The buses that strips of a type can be assigned to. */
export const assignsOf = ({ desk }: RigData, { assigns }: StripTypeData) =>
  [...desk.subgroups.map(({ id }) => id), 'main'].filter(
    (id) => assigns === undefined || assigns.includes(id),
  );

/** @param others what is taken from the strips that were read before. */
export function readStrip(
  reading: Reading,
  setup: SetupData,
  strip: StripData,
  others: ReadonlyMap<string, StripTaps>,
): StripTaps {
  const { rig } = setup;
  const type = typeOf(rig, strip);
  const at = `desk.${strip.id}`;
  const start = readInput(reading, strip, type, others);
  let end = start;
  // The amplifier of the line input is what a trim turns.
  if (!type.stages.includes('trim')) reading.hiss(start, rig.desk.noise.line);
  const after = new Map<StripStage, readonly string[]>();
  for (const stage of type.stages) {
    const address = `${at}.${stage}`;
    switch (stage) {
      case 'insert':
        end = readInsert(reading, at, end);
        break;
      case 'pan':
        end = readPan(reading, address, end, rig.desk.panLaw);
        break;
      case 'polarity':
        end = reading.chain(end, address, reading.on(address) ? -1 : 1);
        break;
      case 'mute':
        end = reading.chain(
          end,
          address,
          reading.on(address) || isCut(reading, rig, strip) ? 0 : 1,
        );
        break;
      case 'fader':
        end = reading.chain(end, address, reading.ratio(faderOf(reading, rig, strip)));
        reading.hiss(end, rig.desk.noise.fader);
        break;
      case 'trim':
        end = reading.chain(end, address, reading.ratio(address));
        reading.hiss(end, rig.desk.noise.line);
    }
    after.set(stage, end);
  }
  const tapAt = (stage: StripStage) => after.get(stage) ?? end;
  if (type.directOut) reading.chain(tapAt(type.directOut), `${at}.direct`, 1);
  for (const aux of auxesOf(rig, type)) {
    const address = `${at}.${aux.id}`;
    const tap = aux.tap === 'switchable' ? reading.value(`${address}.tap`, 'post') : aux.tap;
    const send = reading.place(address, false);
    reading.join(
      tapAt(tap === 'pre' ? type.taps.pre : type.taps.post),
      send,
      reading.ratio(address, '-inf'),
    );
    reading.join(send, [`desk.${aux.id}.sum`], 1);
  }
  for (const bus of assignsOf(rig, type)) {
    const isOn = reading.on(`${at}.${bus}`, bus === 'main');
    const takes = rig.desk.subgroups.find(({ id }) => id === bus)?.takes ?? 'both';
    const side = takes === 'left' ? end.slice(0, 1) : takes === 'right' ? end.slice(1) : end;
    const feed = reading.chain(side, `${at}.${bus}`, isOn ? 1 : 0);
    reading.join(feed, legs(`desk.${bus}.sum`, takes === 'both'), 1);
  }
  return { pre: tapAt(type.taps.pre), post: tapAt(type.taps.post), end };
}

/** The line input, or for a second path what the first has after its fader. */
function readInput(
  reading: Reading,
  { id, inline }: StripData,
  { stereo }: StripTypeData,
  others: ReadonlyMap<string, StripTaps>,
): readonly string[] {
  const at = `desk.${id}`;
  const input = reading.place(`${at}.in`, stereo);
  if (inline === undefined) return input;
  const path = reading.place(`${at}.path`, stereo);
  const isFirst = reading.value<string>(`${at}.path`, 'jack') === 'first';
  reading.join(isFirst ? (others.get(inline)?.post ?? []) : input, path, 1);
  return path;
}

/** The address of the fader that a strip goes by: that of its other path when the two are swapped. */
function faderOf(reading: Reading, { desk }: RigData, { id, inline }: StripData): string {
  const second = desk.strips.find((one) => one.inline === id)?.id;
  const other = inline ?? second;
  const isSwapped = other !== undefined && reading.on(`desk.${inline ?? id}.swap`);
  return `desk.${isSwapped ? other : id}.fader`;
}

/** A pan on a mono strip, a balance on a stereo one. */
function readPan(
  reading: Reading,
  address: string,
  from: readonly string[],
  law: PanLaw,
): readonly string[] {
  const to = reading.place(address, true) as readonly [string, string];
  const position = reading.value(address, 0);
  const [left = '', right] = from;
  if (right === undefined) reading.parts.push({ kind: 'pan', from: left, to, law, position });
  else {
    const ratios = balanceRatios(position);
    reading.join([left], [to[0]], ratios[0]);
    reading.join([right], [to[1]], ratios[1]);
  }
  return to;
}
