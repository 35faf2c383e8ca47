import { type Board, controlAt, numberAt, type Setup, withValues } from '../board/board.ts';
import { driverOf } from '../board/feeds.ts';
import { type Address, deskOwner, legsOf, part, stripTypeOf } from '../rig/address.ts';
import { controls } from '../rig/controls.ts';
import { levelOf } from '../solve/levels.ts';
import { simulate } from '../solve/simulate.ts';
import type { Solution } from '../solve/solution.ts';
import type { Db } from '../units/level.ts';
import type { Probe } from './check.ts';

/** A probe carried out: which controls were moved, by how much, and what is heard then. */
export interface Probing {
  readonly moved: readonly Address[];
  /** By how much they were moved, in dB. */
  readonly byDb: Db;
  readonly after: Solution;
}

/**
 * Moves the control of a probe on a copy of the setup and listens.
 *
 * A control that has no room to move that way is moved the other way.
 * @returns nothing when there is nothing to move: the source comes in on no strip, or the control is closed.
 * @throws RangeError when the probe names a control that the rig does not have, or that is no gain.
 */
export function carryOut(probe: Probe, setup: Setup, now: Solution): Probing | undefined {
  const moved =
    'control' in probe
      ? [probe.control]
      : stripsOf(probe.of, setup, now)
          .map((owner) => part(owner, probe.move))
          .filter((address) => controls(setup.rig).has(address));
  const standing = moved.map((address) => numberAt(setup, address));
  if (moved.length === 0 || standing.some((value) => value === -Infinity)) return undefined;
  const hasRoom = moved.every((address) => fits(setup, address, probe.byDb));
  const byDb = (hasRoom ? probe.byDb : -probe.byDb) as Db;
  const values: Board = Object.fromEntries(
    moved.map((address, index) => [address, (standing[index] ?? 0) + byDb]),
  );
  const board = withValues(setup.rig, setup.board, values);
  return { moved, byDb, after: simulate({ rig: setup.rig, board }) };
}

function fits(setup: Setup, address: Address, byDb: number): boolean {
  const control = controlAt(setup.rig, address);
  if (control.kind !== 'gain') return false;
  const value = numberAt(setup, address) + byDb;
  return value >= control.min && value <= control.max;
}

/** The strips whose line input comes from a converter output that carries a source, with no more than mults between. */
function stripsOf(source: string, setup: Setup, now: Solution): Address[] {
  return setup.rig.desk.strips.flatMap((strip) => {
    const owner = deskOwner(strip.id);
    const type = stripTypeOf(setup.rig, strip);
    const carries = legsOf(part(owner, 'in'), type.stereo).some((jack) => {
      const from = driverOf(setup, jack);
      if (!from?.startsWith('converter.')) return false;
      return levelOf(now, source, from) !== -Infinity;
    });
    return carries ? [owner] : [];
  });
}
