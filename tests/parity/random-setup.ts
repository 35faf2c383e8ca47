import { Random } from './random.ts';
import { withBay } from './random-bay.ts';
import type { Kinds } from './random-kinds.ts';
import { Patch, patchRoom } from './random-patch.ts';
import { randomRig } from './random-rig.ts';
import { settings } from './random-settings.ts';
import type { SetupData, Value } from './setup-file.ts';

/**
 * A random setup file as plain data of the documented format. The same seed and kinds give the same one.
 *
 * Most tracks arrive on a strip; auxes and direct outs feed devices whose outputs come up on strips, or outputs;
 * devices stand in inserts of strips, subgroups and the main bus; capture tracks record and play back. What came
 * back is sent on where loops are allowed. Some rooms have a patchbay. Some values stand in the defaults of the rig, the others on the board.
 */
export function randomSetup(seed: number, kinds: Kinds): SetupData {
  const random = new Random(seed);
  const rig = randomRig(random, kinds);
  const patch = new Patch();
  const captures = patchRoom(random, rig, patch, kinds);
  const values = { ...settings(random, rig, kinds), ...captures, ...patch.cords };
  const defaults: Record<string, Value> = {};
  const board: Record<string, Value> = {};
  for (const [address, value] of Object.entries(values)) {
    const isCord = Object.hasOwn(patch.cords, address);
    if (random.chance(0.3)) defaults[address] = value;
    else board[address] = value;
    // A value on the board goes before one in the defaults; the jack of a cord must stay free, though.
    if (!isCord && typeof value === 'boolean' && random.chance(0.1)) {
      defaults[address] = !value;
      board[address] = value;
    }
  }
  const setup: SetupData = {
    format: 'tap-and-sum/setup',
    version: 1,
    title: `Random setup ${seed}`,
    rig: { ...rig, defaults },
    board,
  };
  return random.chance(WITH_BAY) ? withBay(random, setup) : setup;
}

/** The share of rooms that have a patchbay. */
const WITH_BAY = 0.4;
