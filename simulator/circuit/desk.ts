import { numberAt, pickAt, type Setup } from '../board/board.ts';
import { DESK_MAIN, deskOwner, type Owner, part, stripTypeOf } from '../rig/address.ts';
import type { Strip, StripStage } from '../rig/schema.ts';
import { balance, panMono } from '../units/pan.ts';
import { deskStages } from './active-stages.ts';
import { gainRatio, muteRatio, polarityRatio, switchRatio } from './ratios.ts';
import type { Legs, Wiring } from './wiring.ts';

/** The desk: strips down to their sends and assigns, aux masters, subgroups, and the main bus. */
export function addDesk(wiring: Wiring, setup: Setup): void {
  const { strips, auxes, subgroups } = setup.rig.desk;
  const active = deskStages(setup.rig);
  const ends = strips.map((strip) => addStrip(wiring, setup, strip));

  for (const { id } of auxes) {
    const owner = deskOwner(id);
    const sum = wiring.place(part(owner, 'sum'), 1);
    for (const { sends } of ends) wiring.join(sends.get(id) ?? [sum[0]], sum, 1);
    // A send that is closed is still a resistor on the bus.
    wiring.activate(sum, active.sum(ends.length));
    const level = wiring.through(part(owner, 'level'), sum, gainRatio(setup, part(owner, 'level')));
    wiring.activate(wiring.through(part(owner, 'out'), level, 1), active.fader);
  }

  const toMain = ends.map(({ end, owner }) => assignTo(wiring, setup, end, owner, 'main'));
  for (const { id } of subgroups) {
    const owner = deskOwner(id);
    const feeds = ends.map(({ end, owner: strip }) => assignTo(wiring, setup, end, strip, id));
    const fader = addBus(wiring, setup, owner, feeds);
    const mute = wiring.through(part(owner, 'mute'), fader, muteRatio(setup, part(owner, 'mute')));
    wiring.through(part(owner, 'out'), mute, 1);
    toMain.push(assignTo(wiring, setup, mute, owner, 'main'));
  }

  const main = addBus(wiring, setup, DESK_MAIN, toMain);
  wiring.through(part(DESK_MAIN, 'out'), main, 1);
}

/** The sum of some feeds, its insert and its fader. */
function addBus(wiring: Wiring, setup: Setup, owner: Owner, feeds: readonly Feed[]): Legs {
  const active = deskStages(setup.rig);
  const sum = wiring.place(part(owner, 'sum'), 2);
  for (const { legs } of feeds) wiring.join(legs, sum, 1);
  // What is muted is still assigned, and its resistor still on the bus.
  wiring.activate(sum, active.sum(feeds.filter(({ assigned }) => assigned).length));
  const insert = addInsert(wiring, setup, owner, sum);
  const fader = wiring.through(
    part(owner, 'fader'),
    insert,
    gainRatio(setup, part(owner, 'fader')),
  );
  wiring.activate(fader, active.fader);
  return fader;
}

/** What can be assigned to a bus, and whether it is. */
interface Feed {
  readonly legs: Legs;
  readonly assigned: boolean;
}

function assignTo(wiring: Wiring, setup: Setup, end: Legs, owner: Owner, bus: string): Feed {
  const ratio = switchRatio(setup, part(owner, bus));
  return { legs: wiring.through(part(owner, bus), end, ratio), assigned: ratio !== 0 };
}

/** What a strip ends in: its last stage, and its sends by aux. */
interface StripEnds {
  readonly owner: Owner;
  readonly end: Legs;
  readonly sends: ReadonlyMap<string, Legs>;
}

function addStrip(wiring: Wiring, setup: Setup, strip: Strip): StripEnds {
  const owner = deskOwner(strip.id);
  const { stages, stereo, taps } = stripTypeOf(setup.rig, strip);
  const after = new Map<StripStage, Legs>();
  const active = deskStages(setup.rig);
  let end = wiring.place(part(owner, 'in'), stereo ? 2 : 1);
  if (!stages.includes('trim')) wiring.activate(end, active.line);
  for (const stage of stages) {
    end = addStripStage(wiring, setup, owner, stage, end);
    after.set(stage, end);
    if (stage === 'trim') wiring.activate(end, active.line);
    if (stage === 'fader') wiring.activate(end, active.fader);
  }
  const sends = setup.rig.desk.auxes.map(({ id, tap }) => {
    const at = part(owner, id);
    const taken = tap === 'switchable' ? pickAt(setup, part(at, 'tap')) : tap;
    const from = after.get(taken === 'pre' ? taps.pre : taps.post) ?? end;
    const send = wiring.place(at, 1);
    wiring.join(from, send, gainRatio(setup, at));
    return [id, send] as const;
  });
  return { owner, end, sends: new Map(sends) };
}

function addStripStage(
  wiring: Wiring,
  setup: Setup,
  owner: Owner,
  stage: StripStage,
  from: Legs,
): Legs {
  const at = part(owner, stage);
  switch (stage) {
    case 'trim':
    case 'fader':
      return wiring.through(at, from, gainRatio(setup, at));
    case 'polarity':
      return wiring.through(at, from, polarityRatio(setup, at));
    case 'mute':
      return wiring.through(at, from, muteRatio(setup, at));
    case 'insert':
      return addInsert(wiring, setup, owner, from);
    case 'pan': {
      const position = numberAt(setup, at);
      const { panLaw } = setup.rig.desk;
      const ratios = from.length === 2 ? balance(position) : panMono(panLaw, position);
      return wiring.panned(at, from, ratios);
    }
  }
}

/**
 * An insert: the signal goes out at the send jack, and comes back at the return jack. A cord in the
 * return takes the place of the direct connection; a cord in the send alone only splits the signal off.
 */
function addInsert(wiring: Wiring, setup: Setup, owner: Owner, from: Legs): Legs {
  const width = from.length;
  const send = wiring.through(part(owner, 'insert.send'), from, 1);
  const back = wiring.place(part(owner, 'insert.return'), width);
  const insert = wiring.place(part(owner, 'insert'), width);
  send.forEach((sent, leg) => {
    const returned = back[leg] ?? back[0];
    const jack = part(owner, 'insert.return') + (width === 2 ? ['.l', '.r'][leg] : '');
    const joined = insert[leg] ?? insert[0];
    wiring.wire(pickAt(setup, jack) === undefined ? sent : returned, joined, 1);
  });
  wiring.activate(insert, deskStages(setup.rig).insert);
  return insert;
}
