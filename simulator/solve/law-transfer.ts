import type { Law } from '../circuit/circuit.ts';
import { responseAt } from '../units/biquad.ts';
import { multiply, ONE } from '../units/complex.ts';
import type { Hz, Seconds } from '../units/frequency.ts';
import { type Grid, spectrumOf, type Transfer, transferOf } from './transfer.ts';

/** What a law that does not depend on level makes of the sum of a stage's wires. */
export function lawTransfer(law: Law, grid: Grid): Transfer {
  switch (law.kind) {
    case 'delay':
      return transferOf(1, law.time, grid);
    case 'filter':
      if (law.sections.length === 0) return 1;
      return transferOf(
        spectrumOf(grid, (point) =>
          law.sections.reduce(
            (product, section) => multiply(product, responseAt(section, grid[point] as Hz)),
            ONE,
          ),
        ),
        0 as Seconds,
        grid,
      );
    default:
      return 1;
  }
}

/** Whether a law treats frequencies differently, or passes its signal on later. */
export const dependsOnFrequency = (law: Law): boolean =>
  law.kind === 'delay' ? law.time > 0 : law.kind === 'filter' && law.sections.length > 0;
