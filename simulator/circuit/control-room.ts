import { isOn, pickAt, type Setup } from '../board/board.ts';
import { CONTROL_ROOM, DESK_MAIN, deskOwner, part } from '../rig/address.ts';
import { listens } from '../rig/strip-routes.ts';
import { monoSwitch, panStereo } from '../units/pan.ts';
import { deskStages } from './active-stages.ts';
import { addInput } from './input.ts';
import { gainRatio } from './ratios.ts';
import type { Soloing } from './solo.ts';
import type { Wiring } from './wiring.ts';

/**
 * What one listens with at the desk: what is soloed, or else the source that is switched to; a mono switch, which
 * gives both sides the mean of the two; and a level.
 */
export function addControlRoom(wiring: Wiring, setup: Setup, { heard }: Soloing): void {
  const { controlRoom, strips, auxes, subgroups } = setup.rig.desk;
  if (!controlRoom) return;
  const at = (name: string) => part(CONTROL_ROOM, name);
  const inputs = controlRoom.inputs.map(({ id }) => {
    return [id, addInput(wiring, at(id), 2)] as const;
  });
  const listening = heard.size > 0;
  const picked = pickAt(setup, at('listen'));
  const listen = wiring.place(at('listen'), 2);
  for (const [id, legs] of [['main', wiring.legsAt(part(DESK_MAIN, 'out'))] as const, ...inputs]) {
    wiring.join(legs, listen, id === picked && !listening ? 1 : 0);
  }
  if (listens(setup.rig)) {
    const solo = wiring.place(at('solo'), 2);
    for (const { id } of [...strips, ...auxes, ...subgroups]) {
      wiring.join(wiring.legsAt(part(deskOwner(id), 'solo')), solo, 1);
    }
    wiring.join(solo, listen, listening ? 1 : 0);
  }
  const mixed = wiring.folded(
    at('mono'),
    listen,
    isOn(setup, at('mono')) ? monoSwitch() : panStereo(0),
  );
  const level = wiring.through(at('level'), mixed, gainRatio(setup, at('level')));
  wiring.activate(wiring.through(at('out'), level, 1), deskStages(setup.rig).fader);
}
