import { readControlRoom } from './read-control-room.ts';
import { readInsert } from './read-insert.ts';
import { assignsOf, auxesOf, readStrip, type StripTaps, typeOf } from './read-strip.ts';
import type { Reading } from './reading.ts';
import { legs, type SetupData, type SubgroupData } from './setup-file.ts';

/** Reads the desk: strips, auxes, subgroups, the main bus and the control room. */
export function readDesk(reading: Reading, setup: SetupData): void {
  const { auxes, subgroups, strips, noise, controlRoom } = setup.rig.desk;
  for (const { id } of auxes) {
    const at = `desk.${id}`;
    const senders = strips.filter((strip) =>
      auxesOf(setup.rig, typeOf(setup.rig, strip)).some((aux) => aux.id === id),
    );
    const sum = reading.place(`${at}.sum`, false);
    reading.hiss(sum, summed(noise.bus, senders.length));
    const level = reading.chain(sum, `${at}.level`, reading.ratio(`${at}.level`));
    reading.hiss(reading.chain(level, `${at}.out`, 1), noise.fader);
  }
  const taps = new Map<string, StripTaps>();
  // A second path is read after the first, which it may be fed from.
  const firstPaths = strips.filter(({ inline }) => inline === undefined);
  const secondPaths = strips.filter(({ inline }) => inline !== undefined);
  for (const strip of [...firstPaths, ...secondPaths]) {
    taps.set(strip.id, readStrip(reading, setup, strip, taps));
  }
  const assigned = (bus: string) =>
    strips.filter(
      ({ id, type }) =>
        assignsOf(setup.rig, typeOf(setup.rig, { type })).includes(bus) &&
        reading.on(`desk.${id}.${bus}`, bus === 'main'),
    ).length;
  let groups = 0;
  for (const subgroup of subgroups) {
    groups += readSubgroup(reading, setup, subgroup, assigned(subgroup.id)) ? 1 : 0;
  }
  const main = readBus(reading, 'desk.main', true, {
    sum: summed(noise.bus, assigned('main') + groups),
    fader: noise.fader,
  });
  reading.chain(main.faded, 'desk.main.out', 1);
  if (controlRoom) readControlRoom(reading, setup, taps);
}

/** Noise of a summing amplifier behind its noise gain, N + 1. */
const summed = (levelDbu: number, count: number) => levelDbu + 20 * Math.log10(count + 1);

/** Sum, insert and fader of a subgroup or of the main bus. */
function readBus(
  reading: Reading,
  at: string,
  stereo: boolean,
  noise: { readonly sum: number; readonly fader: number },
) {
  const sum = reading.place(`${at}.sum`, stereo);
  reading.hiss(sum, noise.sum);
  const insert = readInsert(reading, at, sum);
  const faded = reading.chain(insert, `${at}.fader`, reading.ratio(`${at}.fader`));
  reading.hiss(faded, noise.fader);
  return { insert, faded };
}

/** @returns whether it is assigned to the main bus. */
function readSubgroup(
  reading: Reading,
  { rig }: SetupData,
  { id, takes, main }: SubgroupData,
  assigned: number,
): boolean {
  const at = `desk.${id}`;
  const isStereo = takes === 'both';
  const { bus, fader } = rig.desk.noise;
  const { faded } = readBus(reading, at, isStereo, { sum: summed(bus, assigned), fader });
  const mute = reading.chain(faded, `${at}.mute`, reading.on(`${at}.mute`) ? 0 : 1);
  reading.chain(mute, `${at}.out`, 1);
  if (!main) return false;
  const [left, right] = legs('desk.main.sum', true) as readonly [string, string];
  if (isStereo) {
    const isOn = reading.on(`${at}.main`, true);
    reading.join(reading.chain(mute, `${at}.main`, isOn ? 1 : 0), [left, right], 1);
    return isOn;
  }
  const side = reading.value<string>(`${at}.main`, 'both');
  if (side === 'left' || side === 'both') reading.join(mute, [left], 1);
  if (side === 'right' || side === 'both') reading.join(mute, [right], 1);
  return side !== 'none';
}
