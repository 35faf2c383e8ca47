import { pickAt, type Setup } from '../board/board.ts';
import { BOX_MAIN, boxOwner, part } from '../rig/address.ts';
import { type BoxChannel, boxChannels, takesSends } from '../rig/box-channels.ts';
import type { Track } from '../rig/schema.ts';
import { db, dbfs, dbu, dbuOfDbfs } from '../units/level.ts';
import { addAssignment, assignedLegs } from './assignment.ts';
import { addChannel } from './channel.ts';
import type { Legs } from './circuit.ts';
import { compensationOf } from './compensation.ts';
import { addConverter } from './converter.ts';
import { gainRatio } from './ratios.ts';
import type { Wiring } from './wiring.ts';

/**
 * The box and the converter: every track and bus runs through its plug-ins, fader, mute and pan to where
 * it is assigned, to the buses that it is sent to, and to the main mix where its main feed is on. Things on
 * the same output add up. Levels in the box are written in dBu, by the alignment of the converter.
 */
export function addBox(wiring: Wiring): void {
  const { rig } = wiring;
  const compensation = wiring.shared(compensationOf);
  const channels = boxChannels(rig);
  channels.forEach((channel, index) => {
    wiring.section((setup) => {
      const track = rig.box.tracks[index];
      const from = track
        ? addSource(wiring, track)
        : addBusSum(wiring, setup, channel, channels.slice(0, index));
      addChannel(wiring, setup, channel, from, compensation);
      addAssignment(wiring, setup, channel.owner, compensation);
    });
  });
  wiring.section((setup) => {
    const sum = wiring.place(part(BOX_MAIN, 'sum'), 2);
    for (const { owner } of channels) wiring.join(wiring.legsAt(part(owner, 'main')), sum, 1);
    const fader = part(BOX_MAIN, 'fader');
    wiring.through(fader, sum, gainRatio(setup, fader));
    addAssignment(wiring, setup, BOX_MAIN, compensation);
  });
  addConverter(wiring);
}

/** The recording of a track. */
function addSource(wiring: Wiring, track: Track): Legs {
  const level = dbuOfDbfs(dbfs(track.levelDbfs), dbu(wiring.rig.converter.fullScaleDbu));
  const place = part(boxOwner(track.id), 'source');
  return wiring.source(place, track.id, track.stereo, level, db(track.crestDb));
}

/** What comes into a bus: what is sent to it and what is assigned to it, of the channels before it. */
function addBusSum(
  wiring: Wiring,
  setup: Setup,
  bus: BoxChannel,
  before: readonly BoxChannel[],
): Legs {
  const sum = wiring.place(part(bus.owner, 'sum'), 2);
  for (const { owner, buses } of before) {
    const sends = buses.filter(takesSends).some(({ id }) => id === bus.id);
    if (sends) wiring.join(wiring.legsAt(part(owner, bus.id)), sum, 1);
    const to = pickAt(setup, part(owner, 'to'));
    if (to === bus.id) wiring.join(assignedLegs(wiring, owner, to), sum, 1);
  }
  return sum;
}
