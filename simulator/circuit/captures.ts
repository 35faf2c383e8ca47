import { pickAt, type Setup } from '../board/board.ts';
import { boxOwner, lineInsOf, lineOutsOf, part } from '../rig/address.ts';
import type { Lines } from './converter.ts';
import type { Wiring } from './wiring.ts';

/**
 * The capture tracks: each records what comes in at the converter, and plays it back at once where it
 * is assigned. What plays back is not held back by the box: it is late already.
 */
export function addCaptures(wiring: Wiring, setup: Setup, lines: Lines): void {
  for (const { id, stereo } of setup.rig.box.captures) {
    const owner = boxOwner(id);
    const track = wiring.place(part(owner, 'in'), stereo ? 2 : 1);
    const stagesAt = (names: readonly string[]) => names.flatMap((name) => lines.get(name) ?? []);
    const ins = stagesAt(lineInsOf(pickAt(setup, part(owner, 'in')) ?? ''));
    const outs = stagesAt(lineOutsOf(pickAt(setup, part(owner, 'to')) ?? ''));
    track.forEach((stage, leg) => {
      const [line, out] = [ins[leg], outs[leg]];
      if (line !== undefined) wiring.wire(line, stage, 1);
      if (out !== undefined) wiring.wire(stage, out, 1);
    });
  }
}
