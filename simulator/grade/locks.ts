import type { Address } from '../rig/address.ts';
import { controls } from '../rig/controls.ts';
import type { Rig } from '../rig/schema.ts';

/**
 * Whether an address is meant by a pattern: `*` stands for one step of it, `**` at the end for all that follow.
 * `desk.*.fader` means every fader of the desk, `rack.**` all of the rack.
 */
export function matches(pattern: string, address: Address): boolean {
  if (!pattern.includes('*')) return pattern === address;
  const steps = address.split('.');
  const wanted = pattern.split('.');
  if (wanted.at(-1) === '**') {
    wanted.pop();
    steps.length = Math.min(steps.length, wanted.length);
  }
  return (
    steps.length === wanted.length &&
    wanted.every((want, index) => want === '*' || want === steps[index])
  );
}

/** Whether one of a task’s patterns opens a control. */
export const isOpen = (open: readonly string[], address: Address): boolean =>
  open.some((pattern) => matches(pattern, address));

/** The controls that a task locks: all that none of its patterns opens. */
export function lockedControls(rig: Rig, open: readonly string[]): ReadonlySet<Address> {
  return new Set([...controls(rig).keys()].filter((address) => !isOpen(open, address)));
}
