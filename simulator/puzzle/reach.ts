import { controlAt, DEFAULT_BOARD } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { stagesOf } from '../circuit/circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import { type Address, part } from '../rig/address.ts';
import type { Control, ControlValue } from '../rig/control.ts';
import { NONE, OPEN } from '../rig/control.ts';
import { controls } from '../rig/controls.ts';
import { onceARig } from '../rig/once-a-rig.ts';
import type { Rig } from '../rig/schema.ts';

/** A wire that a control can lay, open or closed: from one stage to another. */
export type WireEnds = readonly [from: number, to: number];

/** What a control can change in the circuits of its rig. */
export interface Reach {
  /** The stages into which it lays other wires, or which it gives another law, at some value. */
  readonly stages: readonly number[];
  /** The wires into these stages, by its value. Gains have one value that stands for all that are not closed. */
  readonly wiresAt: ReadonlyMap<ControlValue, readonly WireEnds[]>;
}

/** Stands for every value of a gain at which it is not closed. */
export const SOME_GAIN = 0;

const known = onceARig(() => new Map<Address, Reach>());

/** What a control can change. It is up to the rig: the same rig gives the same answer. */
export function reachOf(rig: Rig, address: Address): Reach {
  const ofRig = known(rig);
  const before = ofRig.get(address);
  if (before) return before;
  const found = findReach(rig, controlAt(rig, address));
  ofRig.set(address, found);
  return found;
}

/** The circuit of a rig with every control at its default. */
const baseOf = onceARig((rig): BuiltCircuit => buildCircuit({ rig, board: DEFAULT_BOARD }));

function findReach(rig: Rig, control: Control): Reach {
  const base = baseOf(rig);
  if (control.kind === 'cord' && !rig.bay) return reachOfCord(base, control);
  const circuits = new Map<ControlValue, Circuit>(
    valuesToTry(control).map((value) => {
      const board = value === control.default ? {} : { [control.address]: value };
      return [value, buildCircuit({ rig, board }, base)];
    }),
  );
  const together = changedWithOthers(base, control);
  const stages = new Set<number>(together);
  for (const circuit of circuits.values()) {
    circuit.wires.forEach((wires, stage) => {
      if (wires !== base.wires[stage] && !alike(wires, base.wires[stage] ?? [])) stages.add(stage);
      if (circuit.stages[stage] !== base.stages[stage]) stages.add(stage);
    });
  }
  const isItsOwn = wiresOfItsOwn([...circuits.values()], stages, together);
  const wiresAt = new Map(
    [...circuits].map(([value, { wires }]) => [
      value,
      [...stages].flatMap((to) =>
        (wires[to] ?? [])
          .filter(({ from, ratio }) => isItsOwn(from, to, ratio))
          .map(({ from }): WireEnds => [from, to]),
      ),
    ]),
  );
  return withTap(rig, control, { stages: [...stages], wiresAt });
}

/** Tells the wires that a control itself lays: not those that stay whatever it does, nor those that it closes. */
function wiresOfItsOwn(
  circuits: readonly Circuit[],
  stages: ReadonlySet<number>,
  together: readonly number[],
): (from: number, to: number, ratio: number) => boolean {
  const ratios = new Map<string, number[]>();
  for (const { wires } of circuits) {
    for (const to of stages) {
      for (const { from, ratio } of wires[to] ?? []) {
        const key = `${from} ${to}`;
        const known = ratios.get(key);
        if (known) known.push(ratio);
        else ratios.set(key, [ratio]);
      }
    }
  }
  return (from, to, ratio) => {
    if (together.includes(to)) return true;
    const known = ratios.get(`${from} ${to}`) ?? [];
    const isStill = known.length === circuits.length && known.every((one) => one === ratio);
    // Where another control holds it closed, it may open yet.
    return !isStill && (ratio !== 0 || known.every((one) => one === 0));
  };
}

/** A send and its tap decide together which wire is open: what the one lays, the other may open. */
function withTap(rig: Rig, { address }: Control, reach: Reach): Reach {
  const tap = part(address, 'tap');
  if (!controls(rig).has(tap)) return reach;
  const more = [...reachOf(rig, tap).wiresAt.values()].flat();
  const wiresAt = [...reach.wiresAt].map(
    ([value, wires]) => [value, value === -Infinity ? wires : [...wires, ...more]] as const,
  );
  return { stages: reach.stages, wiresAt: new Map(wiresAt) };
}

/** A cord moves the one wire into its jack: without a bay it breaks no normal but its own, and loads nothing. */
function reachOfCord(base: Circuit, control: Control & { kind: 'cord' }): Reach {
  const [to = -1] = stagesOf(base, control.address);
  const normal = base.wires[to]?.find(() => control.default === NONE)?.from;
  const wiresAt = new Map<ControlValue, readonly WireEnds[]>();
  for (const { value } of control.options) {
    const from = value === NONE || value === OPEN ? undefined : stagesOf(base, value)[0];
    if (from !== undefined) wiresAt.set(value, [[from, to]]);
    else wiresAt.set(value, value === NONE && normal !== undefined ? [[normal, to]] : []);
  }
  return { stages: [to], wiresAt };
}

/** The values that tell apart what a control can do to the circuit. */
function valuesToTry(control: Control): readonly ControlValue[] {
  switch (control.kind) {
    case 'switch':
      return [false, true];
    case 'pan':
      return PANS;
    case 'choice':
    case 'cord':
      return control.options.map(({ value }) => value);
    case 'gain': {
      // The stages that it changes are found by another value than the default.
      const other = control.default === SOME_GAIN ? -1 : control.default;
      return control.closes ? [SOME_GAIN, -Infinity, other] : [SOME_GAIN, other];
    }
  }
}

/** Positions of a pan that a task can ask for. */
export const PANS: readonly number[] = [-1, 0, 1];

/** What solo switches do depends on one another: one cuts what another has soloed, unless it is safe. */
function changedWithOthers({ stages }: Circuit, { address }: Control): number[] {
  if (!/\.(solo|safe|mode)$/.test(address)) return [];
  return stages.flatMap(({ place }, stage) =>
    /\.(solo|cut)$|^desk\.control\.listen$/.test(place) ? [stage] : [],
  );
}

type Wires = Circuit['wires'][number];

const alike = (some: Wires, others: Wires): boolean =>
  some.length === others.length &&
  some.every(({ from, ratio }, index) => {
    const other = others[index];
    return other?.from === from && other.ratio === ratio;
  });
