import type { Address } from '../rig/address.ts';
import { type Control, type ControlValue, NONE } from '../rig/control.ts';
import { controls } from '../rig/controls.ts';
import type { Rig } from '../rig/schema.ts';

/**
 * Where every control stands: value by address. A control that stands at its default is left out, so
 * that two boards that stand alike are alike.
 */
export type Board = Readonly<Record<Address, ControlValue>>;

/** A rig and where its controls stand. */
export interface Setup {
  readonly rig: Rig;
  readonly board: Board;
}

/** The board with every control at its default. */
export const DEFAULT_BOARD: Board = {};

/** The control at an address. @throws RangeError when the rig has none there. */
export function controlAt(rig: Rig, address: Address): Control {
  const control = controls(rig).get(address);
  if (!control) throw new RangeError(`Expected a control of the rig, but got ${address}.`);
  return control;
}

/** Where a control stands. @throws RangeError when the rig has no such control. */
export function valueAt({ rig, board }: Setup, address: Address): ControlValue {
  const control = controlAt(rig, address);
  return board[address] ?? control.default;
}

/** Where a gain, a pan or a threshold stands. @throws RangeError when it is no number. */
export function numberAt(setup: Setup, address: Address): number {
  const value = valueAt(setup, address);
  if (typeof value === 'number') return value;
  throw new RangeError(`Expected a number at ${address}, but got ${value}.`);
}

/** Whether a switch is on. @throws RangeError when it is no switch. */
export function isOn(setup: Setup, address: Address): boolean {
  const value = valueAt(setup, address);
  if (typeof value === 'boolean') return value;
  throw new RangeError(`Expected a switch at ${address}, but got ${value}.`);
}

/** The option that a choice stands at; nothing where it is `none`. What comes into a jack is told by `feedOf`. */
export function pickAt(setup: Setup, address: Address): string | undefined {
  const value = valueAt(setup, address);
  return value === NONE ? undefined : String(value);
}

/** The board after some controls were moved. Values are taken as they are: check them first. */
export function withValues(rig: Rig, board: Board, values: Board): Board {
  const moved = Object.entries({ ...board, ...values });
  return Object.fromEntries(
    moved.filter(([address, value]) => controlAt(rig, address).default !== value),
  );
}

/**
 * The addresses at which two boards differ, in no order. It looks at what the boards hold alone, and so takes no
 * time with the thousands of controls that stand at their defaults.
 */
export function addressesMoved(before: Board, after: Board): Address[] {
  const moved: Address[] = [];
  if (before === after) return moved;
  for (const address in after) if (after[address] !== before[address]) moved.push(address);
  for (const address in before) if (!(address in after)) moved.push(address);
  return moved;
}

/** Whether two setups are of one rig, and all controls stand alike. */
export const standAlike = (one: Setup, other: Setup): boolean =>
  one.rig === other.rig && addressesMoved(one.board, other.board).length === 0;
