import { numberAt, pickAt, type Setup } from '../board/board.ts';
import { faderOf } from '../board/fader-swap.ts';
import { deskOwner, legsOf, type Owner, part, stripTypeOf } from '../rig/address.ts';
import type { Strip, StripStage } from '../rig/schema.ts';
import { auxesOf, busesOf, firstPathOf, isStereoAfter, listens } from '../rig/strip-routes.ts';
import { balance, panMono } from '../units/pan.ts';
import { deskStages } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addInput } from './input.ts';
import { addInsert } from './insert.ts';
import { gainRatio, muteRatio, polarityRatio, switchRatio } from './ratios.ts';
import type { Soloing } from './solo.ts';
import type { Wiring } from './wiring.ts';

/** A strip from its input down to its sends, assigns, solo and direct output. */
export function addStrip(wiring: Wiring, setup: Setup, strip: Strip, soloing: () => Soloing): void {
  const { rig } = setup;
  const owner = deskOwner(strip.id);
  const { stages, stereo, taps, directOut } = stripTypeOf(rig, strip);
  const active = deskStages(rig);
  const after = new Map<StripStage, Legs>();
  let end = addStripInput(wiring, setup, strip, stereo ? 2 : 1);
  if (!stages.includes('trim')) wiring.activate(end, active.line);
  for (const stage of stages) {
    end = addStripStage(wiring, setup, strip, stage, end, soloing);
    after.set(stage, end);
    if (stage === 'trim') wiring.activate(end, active.line);
    if (stage === 'fader') wiring.activate(end, active.fader);
  }
  const pre = after.get(taps.pre) ?? end;
  const post = after.get(taps.post) ?? end;
  for (const { id, tap } of auxesOf(rig, strip)) {
    const at = part(owner, id);
    const taken = tap === 'switchable' ? pickAt(setup, part(at, 'tap')) : tap;
    wiring.join(taken === 'pre' ? pre : post, wiring.place(at, 1), gainRatio(setup, at));
  }
  for (const bus of busesOf(rig, strip)) addStripAssign(wiring, setup, owner, bus, end);
  if (listens(rig)) {
    const { mode, heard } = soloing();
    addSolo(wiring, owner, mode === 'pfl' ? pre : end, heard);
  }
  if (directOut) wiring.through(part(owner, 'direct'), after.get(directOut) ?? end, 1);
}

/** The line input; on the second path of an in-line strip also what the first one has after its fader, and the switch between them. */
function addStripInput(wiring: Wiring, setup: Setup, strip: Strip, width: 1 | 2): Legs {
  const owner = deskOwner(strip.id);
  const input = addInput(wiring, part(owner, 'in'), width);
  const first = firstPathOf(setup.rig, strip);
  if (!first) return input;
  const at = part(owner, 'path');
  const takesFirst = pickAt(setup, at) === 'first';
  const source = wiring.through(at, input, takesFirst ? 0 : 1);
  const type = stripTypeOf(setup.rig, first);
  const { post } = type.taps;
  const tapped = legsOf(part(deskOwner(first.id), post), isStereoAfter(type, post));
  tapped.forEach((leg, side) => {
    const targets = tapped.length === source.length ? [source[side] ?? source[0]] : source;
    for (const target of targets) wiring.wireFrom(leg, target, takesFirst ? 1 : 0);
  });
  return source;
}

/** The assign of a strip to a bus: of the sides that the bus takes. */
function addStripAssign(wiring: Wiring, setup: Setup, owner: Owner, bus: string, end: Legs): void {
  const at = part(owner, bus);
  const ratio = switchRatio(setup, at);
  const takes = setup.rig.desk.subgroups.find(({ id }) => id === bus)?.takes ?? 'both';
  if (takes === 'both') {
    wiring.through(at, end, ratio);
    return;
  }
  const [assign] = wiring.place(at, 1);
  const [left, right = left] = end;
  wiring.wire(takes === 'left' ? left : right, assign, ratio);
}

/** What the control room hears of an owner: nothing unless it is soloed. */
export function addSolo(wiring: Wiring, owner: Owner, from: Legs, heard: ReadonlySet<Owner>): void {
  const solo = wiring.place(part(owner, 'solo'), 2);
  wiring.join(from, solo, heard.has(owner) ? 1 : 0);
}

function addStripStage(
  wiring: Wiring,
  setup: Setup,
  strip: Strip,
  stage: StripStage,
  from: Legs,
  soloing: () => Soloing,
): Legs {
  const owner = deskOwner(strip.id);
  const at = part(owner, stage);
  switch (stage) {
    case 'trim':
      return wiring.through(at, from, gainRatio(setup, at));
    case 'fader':
      return wiring.through(at, from, gainRatio(setup, faderOf(setup, strip)));
    case 'polarity':
      return wiring.through(at, from, polarityRatio(setup, at));
    case 'mute':
      return wiring.through(at, addCut(wiring, owner, from, soloing), muteRatio(setup, at));
    case 'insert':
      return addInsert(wiring, owner, from);
    case 'pan': {
      const position = numberAt(setup, at);
      const { panLaw } = setup.rig.desk;
      const ratios = from.length === 2 ? balance(position) : panMono(panLaw, position);
      return wiring.panned(at, from, ratios);
    }
  }
}

/** Where the solo in place of other strips cuts this one: just before its mute, as if that was on. */
function addCut(wiring: Wiring, owner: Owner, from: Legs, soloing: () => Soloing): Legs {
  if (!wiring.rig.desk.solo?.includes('in-place')) return from;
  return wiring.through(part(owner, 'cut'), from, soloing().cut.has(owner) ? 0 : 1);
}
