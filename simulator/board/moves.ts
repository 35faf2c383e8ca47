import type { Address } from '../rig/address.ts';
import type { Control, ControlValue } from '../rig/control.ts';
import { controls } from '../rig/controls.ts';
import type { Rig } from '../rig/schema.ts';
import { addressesMoved, type Board, controlAt } from './board.ts';

/** A control that stands differently on two boards. */
export interface Move {
  readonly control: Control;
  readonly from: ControlValue;
  readonly to: ControlValue;
}

/** What is different between two boards of one rig, in the order of the rig's controls. */
export const movesBetween = (rig: Rig, before: Board, after: Board): Move[] =>
  inOrder(rig, addressesMoved(before, after)).map((address) => {
    const control = controlAt(rig, address);
    const from = before[address] ?? control.default;
    return { control, from, to: after[address] ?? control.default };
  });

/** Addresses in the order of the rig's controls. */
export const inOrder = (rig: Rig, addresses: readonly Address[]): readonly Address[] => {
  if (addresses.length < 2) return addresses;
  const sought = new Set(addresses);
  return [...controls(rig).keys()].filter((address) => sought.has(address));
};
