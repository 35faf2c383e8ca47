import type { Address } from '../../rig/address.ts';
import type { Solution } from '../../solve/solution.ts';
import { powerOf } from '../../units/level.ts';
import { AUDIBLE } from './reading.ts';

/** Places that stand for what a control does to others, where nothing of their own can break. */
const NO_PART = /\.(cut|solo)(\.[lr])?$|^desk\.control\./;

/** The stages that something audible comes into from another one, in signal order. */
export function stagesThatCarry({ circuit, rows, columns }: Solution): readonly Address[] {
  return circuit.stages.flatMap(({ id }, stage) => {
    const isFed = circuit.wires[stage]?.some(({ ratio }) => ratio !== 0);
    const row = rows[stage];
    if (!isFed || !row || NO_PART.test(id)) return [];
    return columns.powerOf(row) > powerOf(AUDIBLE) ? [id] : [];
  });
}
