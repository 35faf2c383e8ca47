import { type Board, type Setup, valueAt, withValues } from '../../board/board.ts';
import { cordFrom } from '../../board/feeds.ts';
import {
  deskOwner,
  deviceIns,
  deviceOuts,
  LEGS,
  part,
  rackOwner,
  stripTypeOf,
} from '../../rig/address.ts';
import { NONE } from '../../rig/control.ts';
import type { Device, Rig, Strip } from '../../rig/schema.ts';
import { auxesOf, busesOf, isStereoSubgroup } from '../../rig/strip-routes.ts';
import type { RandomStream } from '../random-stream.ts';
import type { HuntLevel } from './level.ts';

/**
 * A way in which a room could be set up and working, drawn by chance: faders off unity, so that a tap on the wrong
 * side shows, and the sends, subgroup and insert of the level.
 */
export function workingBoard(rig: Rig, { uses }: HuntLevel, stream: RandomStream): Board {
  const setup = { rig, board: {} };
  const fed = rig.desk.strips.filter(
    (strip) => !stripTypeOf(rig, strip).stereo && isFed(setup, strip),
  );
  const faders = Object.fromEntries(
    fed.map(({ id }) => [part(deskOwner(id), 'fader'), -stream.int(2, 9)]),
  );
  const has = new Set(uses);
  const values: Board = {
    ...faders,
    ...(has.has('sends') ? sends(rig, fed, stream.part('sends')) : {}),
    ...(has.has('subgroup')
      ? throughSubgroup(setup, fed, has.has('parallel'), stream.part('subgroup'))
      : {}),
    ...(has.has('insert') ? inserted(setup, fed, stream.part('insert')) : {}),
  };
  return withValues(rig, {}, values);
}

const isFed = (setup: Setup, { id }: Strip): boolean =>
  valueAt(setup, part(deskOwner(id), 'in')) !== NONE;

/** Every other strip or so sends to each aux. */
function sends(rig: Rig, strips: readonly Strip[], stream: RandomStream): Board {
  const values: Record<string, number> = {};
  for (const strip of strips) {
    for (const { id } of auxesOf(rig, strip)) {
      if (stream.onceIn(2)) values[part(deskOwner(strip.id), id)] = -stream.int(4, 14);
    }
  }
  return values;
}

/**
 * Two to four neighbours go to a subgroup in place of the main bus. In parallel, the subgroup has a stereo device in
 * its insert, and one of the strips goes to the main bus as well.
 */
function throughSubgroup(
  setup: Setup,
  strips: readonly Strip[],
  isParallel: boolean,
  stream: RandomStream,
): Board {
  const { rig } = setup;
  const wide = rig.desk.subgroups.filter((group) => group.main && isStereoSubgroup(group));
  if (wide.length === 0) return {};
  const { id: bus } = stream.pick(wide);
  const able = strips.filter((strip) => busesOf(rig, strip).includes(bus));
  const count = Math.min(able.length, stream.int(2, 4));
  const first = stream.int(0, able.length - count);
  const grouped = able.slice(first, first + count).map(({ id }) => deskOwner(id));
  const both = isParallel ? stream.pick(grouped) : undefined;
  const device = isParallel ? freeDevices(setup, 2).map(({ id }) => rackOwner(id))[0] : undefined;
  const values: Record<string, boolean | number | string> = {
    [part(deskOwner(bus), 'fader')]: -stream.int(1, 5),
  };
  for (const owner of grouped) {
    values[part(owner, 'main')] = owner === both;
    values[part(owner, bus)] = true;
  }
  for (const leg of device ? LEGS : []) {
    values[part(`${device}.in`, leg)] = part(`${deskOwner(bus)}.insert.send`, leg);
    values[part(`${deskOwner(bus)}.insert.return`, leg)] = part(`${device}.out`, leg);
  }
  return values;
}

/** A device that is free, and changes the level, goes into the insert of a strip. */
function inserted(setup: Setup, strips: readonly Strip[], stream: RandomStream): Board {
  const { rig } = setup;
  const free = freeDevices(setup, 1).filter(({ kind }) => kind === 'gain');
  const able = strips.filter((strip) => stripTypeOf(rig, strip).stages.includes('insert'));
  if (free.length === 0 || able.length === 0) return {};
  const device = rackOwner(stream.pick(free).id);
  const owner = deskOwner(stream.pick(able).id);
  return {
    [part(device, 'gain')]: stream.int(4, 8),
    [part(device, 'in')]: part(owner, 'insert.send'),
    [part(owner, 'insert.return')]: part(device, 'out'),
  };
}

/** The devices as wide as this on both sides that nothing is plugged into. */
const freeDevices = (setup: Setup, width: 1 | 2): readonly Device[] =>
  setup.rig.rack.filter(
    (device) =>
      device.inputs === width &&
      device.outputs === width &&
      deviceIns(device).every((jack) => valueAt(setup, jack) === NONE) &&
      deviceOuts(device).every((jack) => cordFrom(setup, jack) === undefined),
  );
