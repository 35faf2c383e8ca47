import { pickAt, type Setup } from '../board/board.ts';
import { BOX_MAIN, boxOwner, type Leg, lineOutsOf, type Owner, part } from '../rig/address.ts';
import { boxChannels } from '../rig/box-channels.ts';
import { db, dbfs, dbu, dbuOfDbfs } from '../units/level.ts';
import { addCaptures } from './captures.ts';
import { addChannel } from './channel.ts';
import { CONVERTER, compensationOf, goalOf } from './compensation.ts';
import { addConverter } from './converter.ts';
import { gainRatio } from './ratios.ts';
import type { Legs, Wiring } from './wiring.ts';

/**
 * The box and the converter: every track and bus runs through its plug-ins, fader, mute and pan to where
 * it is assigned, to the buses that it is sent to, and to the main mix where its main feed is on. A channel
 * that is assigned to one output leaves before its pan; things on the same output add up. Levels in the box
 * are written in dBu, by the alignment of the converter.
 */
export function addBox(wiring: Wiring, setup: Setup): void {
  const { rig } = setup;
  const compensation = compensationOf(setup);
  const sums = new Map<Owner, Legs>();
  const channels = boxChannels(rig).map((channel, index) => {
    const track = rig.box.tracks[index];
    const from = track
      ? addSource(wiring, setup, track)
      : wiring.place(part(channel.owner, 'sum'), 2);
    if (!track) sums.set(channel.owner, from);
    return addChannel(wiring, setup, channel, from, compensation);
  });
  const mainSum = wiring.place(part(BOX_MAIN, 'sum'), 2);
  const fader = part(BOX_MAIN, 'fader');
  const main = wiring.through(fader, mainSum, gainRatio(setup, fader));
  const lines = addConverter(wiring, setup);

  for (const { owner, direct, panned, sends, feed } of channels) {
    for (const [goal, send] of sends) joinAt(sums.get(goal), send);
    wiring.join(feed, mainSum, 1);
    assign(owner, direct, panned);
  }
  assign(BOX_MAIN, main, main);
  addCaptures(wiring, setup, lines);

  function joinAt(sum: Legs | undefined, legs: Legs): void {
    if (sum) wiring.join(legs, sum, 1);
  }

  /** Wires a channel to where it is assigned; through a place of its own where it is held back. */
  function assign(owner: Owner, direct: Legs, panned: Legs): void {
    const address = part(owner, 'to');
    const to = pickAt(setup, address);
    if (to === undefined) return;
    const names = lineOutsOf(to);
    const time = compensation(owner, goalOf(to));
    const from = names.length === 1 ? direct : panned;
    const legs = time > 0 ? wiring.through(address, from, 1, { kind: 'delay', time }) : from;
    const [first, second] = names.map((name) => lines.get(name));
    if (goalOf(to) !== CONVERTER) joinAt(sums.get(goalOf(to)), legs);
    else if (first !== undefined && second !== undefined) wiring.join(legs, [first, second], 1);
    else if (first !== undefined) wiring.join(legs, [first], 1);
  }
}

/** The recording of a track. */
function addSource(
  wiring: Wiring,
  { rig }: Setup,
  track: Setup['rig']['box']['tracks'][number],
): Legs {
  const level = dbuOfDbfs(dbfs(track.levelDbfs), dbu(rig.converter.fullScaleDbu));
  const place = part(boxOwner(track.id), 'source');
  const crest = db(track.crestDb);
  const enter = (leg?: Leg) => wiring.signal(place, leg, track.id, level, crest);
  return track.stereo ? [enter('l'), enter('r')] : [enter()];
}
