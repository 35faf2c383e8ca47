import { valueAt } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import { type Circuit, signalsNamed, stagesOf } from '../circuit/circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import type { Claim } from '../grade/check.ts';
import type { Task } from '../grade/grade.ts';
import { placeNamed } from '../grade/hearing.ts';
import { isOpen } from '../grade/locks.ts';
import { type Address, deskOwner, part } from '../rig/address.ts';
import { type Control, type ControlValue, NONE, OPEN } from '../rig/control.ts';
import { controls } from '../rig/controls.ts';
import { jacks } from '../rig/jacks.ts';
import type { Rig } from '../rig/schema.ts';
import { type Backwards, type Onwards, openWiresOf, turnedRound } from '../trace/open-wires.ts';
import { type StageSet, spread } from '../trace/spread.ts';
import { reachOf, SOME_GAIN, type WireEnds } from './reach.ts';

/** One control put to one value; of a gain that is `free`, to whichever value the levels ask for. */
export interface Turn {
  readonly address: Address;
  /** Of a free gain: where it begins. */
  readonly value: ControlValue;
  readonly isFree: boolean;
  /** Whether it opens and closes no wire: a gain that stood open and stays so. */
  readonly isTuning: boolean;
  /** The wires, open or closed, into the stages that the control changes, as they are then. */
  readonly wires: readonly WireEnds[];
  /** By check of the task, whether the control has to do with it. */
  readonly concerns: readonly boolean[];
}

/** An open control of a task, with all the turns that can matter. */
export interface Movable {
  readonly address: Address;
  readonly stages: readonly number[];
  /** The wires into these stages at any value. */
  readonly wires: readonly WireEnds[];
  readonly turns: readonly Turn[];
}

/** A claim with the stages that it is about. */
export interface Ground {
  readonly claim: Claim;
  /** Where the signals of its source enter; none where it names no source. */
  readonly starts: readonly number[];
  /** Where they are listened to, and where a probe is looked for. */
  readonly goals: readonly number[];
  /** All that a signal can reach, and all that can lead to the goals, however the open controls stand. */
  readonly within: StageSet;
  readonly towards: StageSet;
}

/** A task laid out for the search. */
export interface Field {
  readonly task: Task;
  readonly circuit: BuiltCircuit;
  readonly movables: readonly Movable[];
  /** All turns of all of these. */
  readonly turns: readonly Turn[];
  readonly grounds: readonly Ground[];
  /** Input jacks, whether they may be moved or not. */
  readonly cords: readonly Address[];
  /** The wires that are open at the start, and those that open controls can lay. */
  readonly onwards: Onwards;
  readonly backwards: Backwards;
}

/** Lays out a task: what may be moved, and which stages each check is about. */
export function fieldOf(task: Task): Field {
  const { rig, start, checks } = task;
  const circuit = buildCircuit({ rig, board: start });
  const open = [...controls(rig).values()].filter(({ address }) => isOpen(task.open, address));
  const wires = open.flatMap(({ address }) => [...reachOf(rig, address).wiresAt.values()].flat());
  const backwards = openWiresOf(circuit).backwards.map((into) => [...into]);
  for (const [from, to] of wires) backwards[to]?.push(from);
  const onwards = turnedRound(backwards);
  const changed = new Set(wires.map(([, to]) => to));
  const grounds = checks.map(({ claim }) =>
    groundOf(claim, rig, circuit, onwards, backwards, changed),
  );
  const carried = spread(
    grounds.flatMap(({ starts }) => starts),
    onwards,
  );
  const held = heldJacks(task, open);
  const isOfUse = (control: Control, value: ControlValue): boolean => {
    if (control.kind !== 'cord' || value === NONE || value === OPEN) return true;
    if (held.has(String(value))) return false;
    // On a patchbay a plug is of use for the normal that it breaks, whatever it carries.
    return rig.bay !== undefined || carried[stagesOf(circuit, String(value))[0] ?? -1] === 1;
  };
  const movables = open.map((control) => movableOf(task, control, isOfUse, grounds));
  const turns = movables.flatMap((movable) => movable.turns);
  const cords = jacks(rig).inputs;
  return { task, circuit, movables, turns, grounds, cords, onwards, backwards };
}

/** Output jacks that a locked cord is plugged into. */
function heldJacks({ rig, start }: Task, open: readonly Control[]): ReadonlySet<string> {
  const movable = new Set(open.map(({ address }) => address));
  const locked = [...controls(rig).values()].filter(
    ({ kind, address }) => kind === 'cord' && !movable.has(address),
  );
  return new Set(locked.map(({ address }) => String(valueAt({ rig, board: start }, address))));
}

function movableOf(
  { rig, start }: Task,
  control: Control,
  isOfUse: (control: Control, value: ControlValue) => boolean,
  grounds: readonly Ground[],
): Movable {
  const { address } = control;
  const { stages, wiresAt } = reachOf(rig, address);
  const standing = valueAt({ rig, board: start }, address);
  const wires = [...wiresAt.values()].flat();
  const concerns = grounds.map(({ within, towards }) =>
    wires.some(([from, to]) => within[from] === 1 && towards[to] === 1),
  );
  if (control.kind !== 'gain') {
    const turns = [...wiresAt]
      .filter(([value]) => value !== standing && isOfUse(control, value))
      .map(
        ([value, laid]): Turn => ({
          address,
          value,
          isFree: false,
          isTuning: false,
          wires: laid,
          concerns,
        }),
      );
    return { address, stages, wires, turns };
  }
  const isClosed = standing === -Infinity;
  const laid = wiresAt.get(SOME_GAIN) ?? [];
  const free: Turn = {
    address,
    value: isClosed ? SOME_GAIN : standing,
    isFree: true,
    isTuning: !isClosed,
    wires: laid,
    concerns,
  };
  const closed: Turn = {
    address,
    value: -Infinity,
    isFree: false,
    isTuning: false,
    wires: [],
    concerns,
  };
  return { address, stages, wires, turns: control.closes && !isClosed ? [closed, free] : [free] };
}

function groundOf(
  claim: Claim,
  rig: Rig,
  circuit: Circuit,
  onwards: Onwards,
  backwards: Backwards,
  changed: ReadonlySet<number>,
): Ground {
  if (claim.kind === 'headroom' || claim.kind === 'above-noise' || claim.kind === 'no-finding') {
    throw new RangeError(
      `A par needs checks of levels and ways, but got ${claim.kind}: it is not known which turns mend that.`,
    );
  }
  if (claim.kind === 'no-loop') {
    // A loop may close anywhere.
    const all = new Uint8Array(circuit.stages.length).fill(1);
    return { claim, starts: [], goals: [], within: all, towards: all };
  }
  const sources = 'probe' in claim && 'of' in claim.probe ? [claim.probe.of] : [];
  const starts = [claim.source, ...sources].flatMap((name) =>
    signalsNamed(circuit, name).map(({ stage }) => stage),
  );
  const probed = probedPlaces(claim, rig).flatMap((place) => stagesOf(circuit, place));
  const before = spread(probed, backwards);
  // Where nothing can change before them, a probe moves the same controls whatever is turned.
  const decides = [...changed].some((stage) => before[stage] === 1);
  const goals = [...stagesOf(circuit, placeNamed(rig, claim.output)), ...(decides ? probed : [])];
  return {
    claim,
    starts: [...new Set(starts)],
    goals,
    within: spread(starts, onwards),
    towards: spread(goals, backwards),
  };
}

/** Where it is decided which control a probe moves: the line inputs, or the control itself. */
function probedPlaces(claim: Claim, rig: Rig): Address[] {
  if (!('probe' in claim)) return [];
  if ('control' in claim.probe) return [claim.probe.control];
  return rig.desk.strips.map(({ id }) => part(deskOwner(id), 'in'));
}
