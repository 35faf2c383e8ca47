import type { Address } from '../rig/address.ts';
import { multAt, multIn, multOuts } from '../rig/bay.ts';
import { NONE, OPEN } from '../rig/control.ts';
import { jacks } from '../rig/jacks.ts';
import { normals } from '../rig/normals.ts';
import type { Rig } from '../rig/schema.ts';
import { type Board, type Setup, valueAt } from './board.ts';

/** What comes into an input jack. */
export interface Feed {
  /** The output jack that it comes from. */
  readonly output: Address;
  readonly by: 'cord' | 'normal';
}

/** The input jack that the cord from an output jack leads to, by output jack. */
type Cords = ReadonlyMap<Address, Address>;

/** The cords of the board of each rig that was asked for last. */
const latest = new WeakMap<Rig, { readonly board: Board; readonly cords: Cords }>();

/** All cords of a setup. */
function cordsOf(setup: Setup): Cords {
  const before = latest.get(setup.rig);
  if (before?.board === setup.board) return before.cords;
  const cords = new Map<Address, Address>();
  for (const input of jacks(setup.rig).inputs) {
    const output = cordInto(setup, input);
    if (output !== undefined) cords.set(output, input);
  }
  latest.set(setup.rig, { board: setup.board, cords });
  return cords;
}

/** The output jack that the cord in an input jack comes from; nothing without a cord, and none at an open plug. */
function cordInto(setup: Setup, input: Address): Address | undefined {
  const value = valueAt(setup, input);
  return value === NONE || value === OPEN ? undefined : String(value);
}

/** The input jack that the cord from an output jack leads to, if there is one. */
export const cordFrom = (setup: Setup, output: Address): Address | undefined =>
  cordsOf(setup).get(output);

/** What comes into an input jack: what its cord brings, else what its normal brings that nothing breaks. */
export function feedOf(setup: Setup, input: Address): Feed | undefined {
  const cord = cordInto(setup, input);
  if (cord !== undefined) return { output: cord, by: 'cord' };
  const normal = normals(setup.rig).into.get(input);
  if (!normal || valueAt(setup, input) === OPEN) return undefined;
  if (normal.kind === 'full' && cordFrom(setup, normal.output) !== undefined) return undefined;
  return { output: normal.output, by: 'normal' };
}

/** All input jacks that an output jack feeds: by its cord, and by normals. */
export function inputsFedBy(setup: Setup, output: Address): readonly Address[] {
  const plugged = cordFrom(setup, output);
  const normalled = (normals(setup.rig).from.get(output) ?? []).filter(
    (input) => feedOf(setup, input)?.by === 'normal',
  );
  return plugged === undefined ? normalled : [plugged, ...normalled];
}

/**
 * The output jack that drives an input jack, through whatever mults. Mults that are only plugged into one another
 * are driven by nothing.
 */
export function driverOf(setup: Setup, input: Address): Address | undefined {
  const passed = new Set<Address>();
  for (let here = input; !passed.has(here); ) {
    passed.add(here);
    const feed = feedOf(setup, here);
    const mult = feed && multAt(setup.rig, feed.output);
    if (!mult) return feed?.output;
    here = multIn(mult);
  }
  return undefined;
}

/** How many input jacks load an output jack of the room: all that it drives, through whatever mults. */
export function loadsOn(setup: Setup, output: Address): number {
  return inputsFedBy(setup, output).reduce((sum, input) => {
    const mult = multAt(setup.rig, input);
    if (!mult) return sum + 1;
    return multOuts(mult).reduce((more, out) => more + loadsOn(setup, out), sum);
  }, 0);
}
