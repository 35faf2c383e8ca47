import {
  type Address,
  CONTROL_ROOM,
  outputPlace,
  ownerOf,
  part,
  partLabel,
  pluginAt,
  type Rig,
  sendBusAt,
} from '../../simulator/index.ts';
import { inProse, ownerName, SIDES, sourceName } from './owners.ts';
import { listed } from './sentence.ts';

const GOAL = /^(.+?) to (.+)$/;

/** Name of a device or plug-in inside a sentence: `the plate`, `the compressor of the Cello track`. */
export function deviceName(rig: Rig, device: Address): string {
  const plugin = pluginAt(rig, device)?.plugin;
  const owner = ownerName(rig, ownerOf(device));
  return plugin ? `the ${inProse(plugin.label)} of ${owner}` : owner;
}

/**
 * Name of a place, control or jack inside a sentence: `the fader of Strip 3 Cello`,
 * `the send of Strip 3 Cello to Aux 1`, `Output 3`, `Capture`. An owner is named as such.
 */
export function placeName(rig: Rig, place: Address): string {
  const steps = place.split('.');
  const [section] = steps;
  const owner = ownerName(rig, ownerOf(place));
  const isWhole = steps.length <= 2;
  if (isWhole || section === 'converter') return owner;

  const side = SIDES[steps.at(-1) ?? ''];
  if (section === 'out') return `the ${side} side of ${owner}`;
  if (section === 'box' && steps[2] === 'to') return `the assignment of ${owner}`;
  // Beside a field these two read as a question; in a sentence they are things.
  if (steps[2] === 'path') return `the feed of ${owner}`;
  if (place === part(CONTROL_ROOM, 'listen')) return `the choice of ${owner}`;
  const plugin = pluginAt(rig, place);
  // Beside a switch “on” says enough; in a sentence it is a thing.
  if (plugin && steps.at(-1) === 'on') return `the switch of ${deviceName(rig, place)}`;
  const written = partLabel(rig, place);
  const label = plugin ? inProse(written) : written;
  const what = side ? label.slice(0, -side.length - 1) : label;
  const name = side ? `${side} ${what}` : what;
  if (what.startsWith('tap of the ')) {
    return `the tap of ${withGoal(what.slice('tap of the '.length), owner)}`;
  }
  return withGoal(name, owner);
}

/** `send to Aux 1` of an owner: `the send of Strip 3 Cello to Aux 1`. */
function withGoal(name: string, owner: string): string {
  const [, thing, goal] = GOAL.exec(name) ?? [];
  return thing ? `the ${thing} of ${owner} to ${goal}` : `the ${name} of ${owner}`;
}

/** Name of where a task listens: an output by its id, or any place by its address. */
export const goalName = (rig: Rig, goal: string): string =>
  placeName(rig, isOutput(rig, goal) ? outputPlace(goal) : goal);

/** The same behind its preposition: `in Headphones A`, `at the input of the plate`. */
export const atGoal = (rig: Rig, goal: string): string =>
  `${isOutput(rig, goal) || goal.startsWith('out.') ? 'in' : 'at'} ${goalName(rig, goal)}`;

const isOutput = (rig: Rig, id: string): boolean => rig.outputs.some((output) => output.id === id);

/** A bus that sends go to: an aux of the desk, or a bus of the box. */
export type SendGoal = Pick<Rig['desk']['auxes'][number], 'id' | 'label'>;

/**
 * What a place is a send to, if it is one: `desk.ch3.aux1` is one to the aux `aux1`, `box.cello.room` one to
 * the box bus `room`.
 */
export function goalOfSend(rig: Rig, place: Address): SendGoal | undefined {
  const [section, id, part, ...rest] = place.split('.');
  if (rest.length > 0) return undefined;
  if (section === 'box') return sendBusAt(rig, place);
  const isOfStrip = section === 'desk' && rig.desk.strips.some((strip) => strip.id === id);
  return isOfStrip ? rig.desk.auxes.find((aux) => aux.id === part) : undefined;
}

/** Players inside a sentence, as people speak of them: `the frame drum and the tenor`. */
export const playerNames = (rig: Rig, sources: readonly string[]): string =>
  listed(sources.map((source) => `the ${sourceName(rig, source).toLowerCase()}`));
