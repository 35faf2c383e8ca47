import { numberAt, pickAt, type Setup } from '../board/board.ts';
import {
  type Address,
  BOX_MAIN,
  boxOwner,
  converterPlace,
  type Leg,
  lineOut,
  lineOutsOf,
  part,
} from '../rig/address.ts';
import { db, dbfs, dbu, dbuOfDbfs } from '../units/level.ts';
import { panMono, panStereo } from '../units/pan.ts';
import { gainRatio, muteRatio, switchRatio } from './ratios.ts';
import type { Legs, Wiring } from './wiring.ts';

/**
 * The box and the converter's outputs: every track and bus runs through fader, mute and pan to where
 * it is assigned, and to the main mix where its main feed is on. The pan of a stereo channel
 * folds the far side into the near one. A channel that is assigned to one
 * output leaves before its pan; things on the same output add up. Levels in the box are written in
 * dBu, by the alignment of the converter.
 */
export function addBox(wiring: Wiring, setup: Setup): void {
  const { box, converter } = setup.rig;
  const fullScale = dbu(converter.fullScaleDbu);
  const tracks = box.tracks.map((track) => {
    const place = part(boxOwner(track.id), 'source');
    const level = dbuOfDbfs(dbfs(track.levelDbfs), fullScale);
    const crest = db(track.crestDb);
    const enter = (leg?: Leg) => wiring.signal(place, leg, track.id, level, crest);
    const legs: Legs = track.stereo ? [enter('l'), enter('r')] : [enter()];
    return addChannel(wiring, setup, track.id, legs);
  });
  const buses = box.buses.map(({ id }) => {
    const sum = wiring.place(part(boxOwner(id), 'sum'), 2);
    return { sum, ...addChannel(wiring, setup, id, sum) };
  });
  const mainSum = wiring.place(part(BOX_MAIN, 'sum'), 2);
  const main = wiring.through(
    part(BOX_MAIN, 'fader'),
    mainSum,
    gainRatio(setup, part(BOX_MAIN, 'fader')),
  );
  const noise = dbuOfDbfs(dbfs(converter.noiseDbfs), fullScale);
  const converterStage = { noise, clip: fullScale };
  const lines = new Map(
    Array.from({ length: converter.outputs }, (_, index) => {
      const name = lineOut(index + 1);
      const line = wiring.place(converterPlace(name), 1);
      wiring.activate(line, converterStage);
      return [name, line] as const;
    }),
  );
  const busSums = new Map(box.buses.map(({ id }, index) => [id, buses[index]?.sum] as const));

  const assign = (address: Address, direct: Legs, panned: Legs) => {
    const goal = pickAt(setup, address);
    if (goal === undefined) return;
    const bus = busSums.get(goal);
    if (bus) return wiring.join(panned, bus, 1);
    const [first, second] = lineOutsOf(goal).map((name) => lines.get(name));
    if (first && second) wiring.join(panned, [first[0], second[0]], 1);
    else if (first) wiring.join(direct, first, 1);
  };
  for (const { owner, direct, panned } of [...tracks, ...buses]) {
    assign(part(owner, 'to'), direct, panned);
    const feed = wiring.through(
      part(owner, 'main'),
      panned,
      switchRatio(setup, part(owner, 'main')),
    );
    wiring.join(feed, mainSum, 1);
  }
  assign(part(BOX_MAIN, 'to'), main, main);
}

/** Fader, mute and pan of a track or bus. `direct` is before the pan, `panned` after it. */
function addChannel(wiring: Wiring, setup: Setup, id: string, from: Legs) {
  const owner = boxOwner(id);
  const at = (name: string) => part(owner, name);
  const fader = wiring.through(at('fader'), from, gainRatio(setup, at('fader')));
  const direct = wiring.through(at('mute'), fader, muteRatio(setup, at('mute')));
  const position = numberAt(setup, at('pan'));
  const panned =
    direct.length === 2
      ? wiring.folded(at('pan'), direct, panStereo(position))
      : wiring.panned(at('pan'), direct, panMono(setup.rig.box.panLaw, position));
  return { owner, direct, panned };
}
