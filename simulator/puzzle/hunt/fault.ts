import { type Board, isOn, pickAt, type Setup, valueAt, withValues } from '../../board/board.ts';
import { feedOf } from '../../board/feeds.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Address } from '../../rig/address.ts';
import { type Control, type ControlValue, NONE, OPEN } from '../../rig/control.ts';
import { controls } from '../../rig/controls.ts';
import { jacks } from '../../rig/jacks.ts';
import type { Rig } from '../../rig/schema.ts';
import type { Simulation } from '../../solve/simulate.ts';
import { simulateBeside } from '../../solve/simulate-beside.ts';
import type { Solution } from '../../solve/solution.ts';
import { solve } from '../../solve/solve.ts';
import { stagesThatCarry } from './stages-that-carry.ts';

/** Faults that no control shows: what leads into a stage is broken, weak or miswired. */
export const HIDDEN_KINDS = ['dead', 'weak', 'inverted'] as const;
/** Faults that are a control or a cord other than it was written down. */
export const SET_KINDS = [
  'muted',
  'closed',
  'unassigned',
  'stray',
  'tap',
  'polarity',
  'unplugged',
  'open-plug',
  'crossed',
] as const;
export const FAULT_KINDS = [...HIDDEN_KINDS, ...SET_KINDS] as const;

export type HiddenKind = (typeof HIDDEN_KINDS)[number];
export type FaultKind = (typeof FAULT_KINDS)[number];

/** One thing that is wrong. */
export interface HuntFault {
  readonly kind: FaultKind;
  /** The stage that nothing, little or the inverse comes into; or the control; or the input jack. */
  readonly at: Address;
}

/** What is left of a signal, as a voltage ratio, where it passes a bad contact: 20 dB less. */
export const WEAK_RATIO = 0.1;

const HIDDEN_RATIOS: Readonly<Record<HiddenKind, number>> = {
  dead: 0,
  weak: WEAK_RATIO,
  inverted: -1,
};

/** One name for a fault, to be kept or compared: `dead desk.ch3.in`. */
export const faultId = ({ kind, at }: HuntFault): string => `${kind} ${at}`;

/**
 * All faults of some kinds that a setup can have, each a change to something that is in use.
 *
 * @param solution what the setup sounds like as it was written down.
 */
export function faultsOf(
  setup: Setup,
  solution: Solution,
  kinds: ReadonlySet<FaultKind>,
): readonly HuntFault[] {
  const inputs = new Set(jacks(setup.rig).inputs);
  const hidden = stagesThatCarry(solution).flatMap((at): readonly HuntFault[] => {
    const dead: HuntFault = { kind: 'dead', at };
    if (!inputs.has(at)) return [dead];
    const weak: HuntFault = { kind: 'weak', at };
    // A cord can be wired the wrong way round; the contact of a normal cannot.
    return feedOf(setup, at)?.by === 'cord' ? [dead, weak, { kind: 'inverted', at }] : [dead, weak];
  });
  const set = [...controls(setup.rig).values()].flatMap((control) => setFaults(setup, control));
  return [...hidden, ...set].filter(({ kind }) => kinds.has(kind));
}

/** The faults that a control or cord can be. */
function setFaults(setup: Setup, { kind, address: at, ...control }: Control): readonly HuntFault[] {
  const name = at.split('.').at(-1) ?? '';
  switch (kind) {
    case 'switch':
      if (name === 'polarity') return [{ kind: 'polarity', at }];
      if (name === 'mute') return isOn(setup, at) ? [] : [{ kind: 'muted', at }];
      if (!isAssign(setup.rig, name)) return [];
      return [{ kind: isOn(setup, at) ? 'unassigned' : 'stray', at }];
    case 'gain':
      if (!('closes' in control) || !control.closes) return [];
      return valueAt(setup, at) === -Infinity ? [] : [{ kind: 'closed', at }];
    case 'choice':
      if (name === 'tap') return [{ kind: 'tap', at }];
      return name === 'to' && pickAt(setup, at) ? [{ kind: 'unassigned', at }] : [];
    case 'cord': {
      const feed = feedOf(setup, at);
      if (!feed) return [];
      if (feed.by === 'normal') return [{ kind: 'open-plug', at }];
      const crossing: HuntFault[] = partnerOf(setup, at) ? [{ kind: 'crossed', at }] : [];
      return [{ kind: 'unplugged', at }, ...crossing];
    }
    default:
      return [];
  }
}

const isAssign = ({ desk }: Rig, name: string): boolean =>
  name === 'main' || desk.subgroups.some(({ id }) => id === name);

/**
 * The jack whose cord changes places with the one in a jack when the two are crossed: of a pair its right side, of
 * a line input that of the next strip. Nothing where neither has a cord.
 */
export function partnerOf(setup: Setup, jack: Address): Address | undefined {
  const { strips } = setup.rig.desk;
  const next = strips.findIndex(({ id }) => jack === `desk.${id}.in`) + 1;
  const partner = jack.endsWith('.l')
    ? `${jack.slice(0, -2)}.r`
    : next > 0 && strips[next] && `desk.${strips[next].id}.in`;
  if (!partner || !controls(setup.rig).has(partner)) return undefined;
  return feedOf(setup, partner)?.by === 'cord' ? partner : undefined;
}

/** What a setup sounds like with something wrong in it. @param solution what it sounds like without. */
export function solutionWith(setup: Setup, solution: Simulation, fault: HuntFault): Solution {
  const { rig, board } = setup;
  if (isHidden(fault.kind)) {
    const circuit = withHidden(solution.circuit, fault.at, HIDDEN_RATIOS[fault.kind]);
    return solve(circuit, undefined, solution);
  }
  return simulateBeside({ rig, board: withValues(rig, board, changedBy(setup, fault)) }, solution);
}

const isHidden = (kind: FaultKind): kind is HiddenKind =>
  (HIDDEN_KINDS as readonly string[]).includes(kind);

/** A circuit in which all that leads into one stage is multiplied by a ratio. */
function withHidden(circuit: Circuit, at: Address, ratio: number): Circuit {
  const stage = circuit.stages.findIndex(({ id }) => id === at);
  if (stage < 0) throw new RangeError(`Expected a stage of the circuit, but got ${at}.`);
  const into = circuit.wires[stage] ?? [];
  const broken = into.map((wire) => ({ from: wire.from, ratio: wire.ratio * ratio }));
  return { ...circuit, wires: circuit.wires.with(stage, broken) };
}

/** Where controls stand that are not as written down. */
function changedBy(setup: Setup, { kind, at }: HuntFault): Board {
  const now = valueAt(setup, at);
  const to = (value: ControlValue): Board => ({ [at]: value });
  switch (kind) {
    case 'muted':
      return to(true);
    case 'closed':
      return to(-Infinity);
    case 'unassigned':
      return to(typeof now === 'boolean' ? false : NONE);
    case 'stray':
      return to(true);
    case 'polarity':
      return to(now !== true);
    case 'tap':
      return to(now === 'pre' ? 'post' : 'pre');
    case 'unplugged':
      return to(NONE);
    case 'open-plug':
      return to(OPEN);
    case 'crossed': {
      const partner = partnerOf(setup, at);
      return partner ? { [at]: valueAt(setup, partner), [partner]: now } : {};
    }
    default:
      throw new RangeError(`Expected a fault of a control, but got ${kind}.`);
  }
}
