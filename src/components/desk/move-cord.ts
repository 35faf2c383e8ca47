import { type Address, cordFrom, NONE, valueAt } from '../../../simulator/index.ts';
import type { Hands, Scene } from './scene.ts';

/**
 * Plugs the cord of an output jack into an input jack, and pulls it from where it was: one step for undo.
 *
 * @param to an input jack, or `none` to pull the cord. One that holds a cord already refuses, and says why; no cord
 *   is pulled then.
 */
export function moveCord(
  { setup }: Scene,
  { send }: Hands,
  output: Address,
  to: Address | typeof NONE,
): void {
  if (to !== NONE && valueAt(setup, to) !== NONE) {
    send({ type: 'cord.connect', input: to, output });
    return;
  }
  const from = cordFrom(setup, output);
  send({ type: 'drag.begin' });
  if (from !== undefined) send({ type: 'cord.remove', input: from });
  if (to !== NONE) send({ type: 'cord.connect', input: to, output });
  send({ type: 'drag.end' });
}
