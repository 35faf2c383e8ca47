import type { Address } from '../rig/address.ts';
import { type ControlValue, type Misfit, misfitOf, NONE } from '../rig/control.ts';
import { controls } from '../rig/controls.ts';
import type { Rig } from '../rig/schema.ts';
import {
  addressesMoved,
  type Board,
  DEFAULT_BOARD,
  type Setup,
  valueAt,
  withValues,
} from './board.ts';
import { cordFrom } from './feeds.ts';
import { stepped } from './step.ts';

/** One edit of a board. */
export type Edit =
  | { readonly type: 'control.set'; readonly address: Address; readonly value: ControlValue }
  /** Moves a gain by dB, a pan by its share of the way, an option by one, and turns a switch. */
  | { readonly type: 'control.step'; readonly address: Address; readonly by: number }
  | { readonly type: 'control.reset'; readonly address: Address }
  | { readonly type: 'board.reset' }
  | { readonly type: 'cord.connect'; readonly input: Address; readonly output: Address }
  | { readonly type: 'cord.remove'; readonly input: Address }
  | { readonly type: 'setup.load'; readonly setup: Setup };

/** Why an edit was refused. The board stays as it was. */
export type Refusal =
  | { readonly code: 'no-such-control'; readonly address: Address }
  | { readonly code: 'locked'; readonly address: Address }
  | { readonly code: 'misfit'; readonly address: Address; readonly misfit: Misfit }
  /** The output jack already holds a cord, which leads to `input`. */
  | { readonly code: 'output-in-use'; readonly output: Address; readonly input: Address }
  /** The input jack already holds a cord, which comes from `output`, or is an open plug. */
  | { readonly code: 'input-in-use'; readonly input: Address; readonly output: string };

/** What edits are held against. */
export interface EditRules {
  readonly locked: ReadonlySet<Address>;
  /** Where a reset leads. On another rig than this one's it leads to the defaults. */
  readonly start: Setup;
}

export type EditResult =
  | { readonly setup: Setup; readonly refusal?: undefined }
  | { readonly refusal: Refusal };

/** Carries out an edit, or says why not. Never throws, whatever the address or value. */
export function edit(setup: Setup, change: Edit, rules: EditRules): EditResult {
  switch (change.type) {
    case 'control.set':
      return set(setup, change.address, change.value, rules);
    case 'control.step': {
      const control = controls(setup.rig).get(change.address);
      if (!control) return refuse({ code: 'no-such-control', address: change.address });
      const value = stepped(control, valueAt(setup, change.address), change.by);
      return set(setup, change.address, value, rules);
    }
    case 'control.reset': {
      const control = controls(setup.rig).get(change.address);
      if (!control) return refuse({ code: 'no-such-control', address: change.address });
      return set(
        setup,
        change.address,
        startOf(setup.rig, rules)[change.address] ?? control.default,
        rules,
      );
    }
    case 'board.reset':
      return { setup: { rig: setup.rig, board: startOf(setup.rig, rules) } };
    case 'cord.connect': {
      if (!isInput(setup.rig, change.input)) {
        return refuse({ code: 'no-such-control', address: change.input });
      }
      const standing = String(valueAt(setup, change.input));
      const isFree = standing === NONE || standing === change.output;
      if (!isFree && !rules.locked.has(change.input)) {
        return refuse({ code: 'input-in-use', input: change.input, output: standing });
      }
      return set(setup, change.input, change.output, rules);
    }
    case 'cord.remove':
      return isInput(setup.rig, change.input)
        ? set(setup, change.input, NONE, rules)
        : refuse({ code: 'no-such-control', address: change.input });
    case 'setup.load':
      return load(setup, change.setup, rules);
  }
}

/** The board that a reset leads to. */
const startOf = (rig: Rig, { start }: EditRules): Board =>
  start.rig === rig ? start.board : DEFAULT_BOARD;

/** Whether an address is that of an input jack. */
const isInput = (rig: Rig, address: Address): boolean =>
  controls(rig).get(address)?.kind === 'cord';

const refuse = (refusal: Refusal): EditResult => ({ refusal });

function set(setup: Setup, address: Address, value: ControlValue, rules: EditRules): EditResult {
  const control = controls(setup.rig).get(address);
  if (!control) return refuse({ code: 'no-such-control', address });
  if (rules.locked.has(address)) return refuse({ code: 'locked', address });
  const misfit = misfitOf(control, value);
  if (misfit) return refuse({ code: 'misfit', address, misfit });
  if (control.kind === 'cord' && value !== NONE) {
    const input = cordFrom(setup, String(value));
    if (input && input !== address) {
      return refuse({ code: 'output-in-use', output: String(value), input });
    }
  }
  return {
    setup: { rig: setup.rig, board: withValues(setup.rig, setup.board, { [address]: value }) },
  };
}

function load(setup: Setup, loaded: Setup, { locked }: EditRules): EditResult {
  const isSameRig = loaded.rig === setup.rig;
  const moved = isSameRig
    ? addressesMoved(setup.board, loaded.board).find((address) => locked.has(address))
    : [...locked][0];
  return moved === undefined ? { setup: loaded } : refuse({ code: 'locked', address: moved });
}
