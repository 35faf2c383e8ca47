import type { Task } from '../../../simulator/grade/grade.ts';
import type { Control, ControlValue, Rig } from '../../../simulator/index.ts';
import { controls, lockedControls, valueAt } from '../../../simulator/index.ts';

/** How far apart the values of a gain are tried, in dB: bands are wider than this. */
const STEP = 2;

/** Every value that a control could be put to. */
export function valuesOf(control: Control): ControlValue[] {
  switch (control.kind) {
    case 'switch':
      return [false, true];
    case 'pan':
      return [-1, -0.5, 0, 0.5, 1];
    case 'choice':
    case 'cord':
      return control.options.map(({ value }) => value);
    case 'gain': {
      const least = Math.max(control.min, -40);
      const count = Math.floor((control.max - least) / STEP) + 1;
      const steps = Array.from({ length: count }, (_, index) => least + index * STEP);
      return control.closes ? [-Infinity, ...steps] : steps;
    }
  }
}

/** Two cords in one output jack cannot be plugged. */
function isPluggable(
  rig: Rig,
  start: Task['start'],
  values: Record<string, ControlValue>,
): boolean {
  const cords = [...controls(rig).values()].filter(({ kind }) => kind === 'cord');
  const outputs = cords
    .map(({ address }) => String(values[address] ?? valueAt({ rig, board: start }, address)))
    .filter((output) => output !== 'none' && output !== 'open');
  return new Set(outputs).size === outputs.length;
}

/** Every way of putting exactly so many open controls elsewhere. */
export function* combinations(
  { rig, start, open }: Task,
  moves: number,
): Generator<Record<string, ControlValue>> {
  const locked = lockedControls(rig, open);
  const movable = [...controls(rig).values()].filter(({ address }) => !locked.has(address));
  const turns = movable.map((control) => {
    const standing = valueAt({ rig, board: start }, control.address);
    return valuesOf(control)
      .filter((value) => value !== standing)
      .map((value) => [control.address, value] as const);
  });
  function* chosen(from: number, left: number): Generator<(readonly [string, ControlValue])[]> {
    if (left === 0) {
      yield [];
      return;
    }
    for (let index = from; index < turns.length; index += 1) {
      for (const rest of chosen(index + 1, left - 1)) {
        for (const turn of turns[index] ?? []) yield [turn, ...rest];
      }
    }
  }
  for (const list of chosen(0, moves)) {
    const values = Object.fromEntries(list);
    if (isPluggable(rig, start, values)) yield values;
  }
}
