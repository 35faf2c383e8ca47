import { numberAt, pickAt, type Setup } from '../board/board.ts';
import { deskOwner, type Owner, part, stripTypeOf } from '../rig/address.ts';
import type { Strip, StripStage } from '../rig/schema.ts';
import { balance, panMono } from '../units/pan.ts';
import { deskStages } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addInput } from './input.ts';
import { addInsert } from './insert.ts';
import { gainRatio, muteRatio, polarityRatio, switchRatio } from './ratios.ts';
import type { Wiring } from './wiring.ts';

/** A strip from its line input down to its sends and its assigns. */
export function addStrip(wiring: Wiring, setup: Setup, strip: Strip): void {
  const { auxes, subgroups } = setup.rig.desk;
  const owner = deskOwner(strip.id);
  const { stages, stereo, taps } = stripTypeOf(setup.rig, strip);
  const after = new Map<StripStage, Legs>();
  const active = deskStages(setup.rig);
  let end = addInput(wiring, setup, part(owner, 'in'), stereo ? 2 : 1);
  if (!stages.includes('trim')) wiring.activate(end, active.line);
  for (const stage of stages) {
    end = addStripStage(wiring, setup, owner, stage, end);
    after.set(stage, end);
    if (stage === 'trim') wiring.activate(end, active.line);
    if (stage === 'fader') wiring.activate(end, active.fader);
  }
  for (const { id, tap } of auxes) {
    const at = part(owner, id);
    const taken = tap === 'switchable' ? pickAt(setup, part(at, 'tap')) : tap;
    const from = after.get(taken === 'pre' ? taps.pre : taps.post) ?? end;
    wiring.join(from, wiring.place(at, 1), gainRatio(setup, at));
  }
  for (const bus of [...subgroups.map(({ id }) => id), 'main'])
    addAssign(wiring, setup, owner, bus, end);
}

/** The assign of a strip or subgroup to a bus. */
export function addAssign(
  wiring: Wiring,
  setup: Setup,
  owner: Owner,
  bus: string,
  from: Legs,
): void {
  const at = part(owner, bus);
  wiring.through(at, from, switchRatio(setup, at));
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
