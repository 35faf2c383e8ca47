import { nearestNames } from '../file/nearest-names.ts';
import type { PlaceInFile } from '../file/place.ts';
import { type Address, legsOf } from './address.ts';
import type { Contradiction } from './contradiction.ts';
import { jacks } from './jacks.ts';
import type { Rig } from './schema.ts';

/** What is wrong about the points of a patchbay, in a rig whose ids are sound. */
export function bayContradictions(rig: Rig): Contradiction[] {
  const { inputs, outputs } = jacks(rig);
  const taken = new Map<Address, string>();
  return (rig.bay?.rows ?? []).flatMap(({ label, kind, points }, row) =>
    points.flatMap(({ top, bottom }, index): Contradiction[] => {
      const at = ['bay', 'rows', row, 'points', index];
      const name = `${label} ${index + 1}`;
      return [
        ...missing(at, kind === 'open', top, bottom),
        ...misplaced([...at, 'top'], 'output', top, outputs, inputs),
        ...misplaced([...at, 'bottom'], 'input', bottom, inputs, outputs),
        ...[top, bottom].flatMap((jack, side) =>
          twice([...at, side === 0 ? 'top' : 'bottom'], name, jack, taken),
        ),
      ];
    }),
  );
}

function missing(
  at: PlaceInFile,
  isOpen: boolean,
  top: Address | undefined,
  bottom: Address | undefined,
): Contradiction[] {
  const count = [top, bottom].filter((jack) => jack !== undefined).length;
  if (count === 2 || (isOpen && count === 1)) return [];
  const found = top === undefined ? 'no top' : 'no bottom';
  return [
    {
      at,
      expected: isOpen
        ? 'a top, a bottom or both'
        : 'a top and a bottom, as in any row with normals',
      found: count === 0 ? 'neither' : found,
      ...(count === 1 ? { hint: 'A point with one jack belongs in an open row.' } : {}),
    },
  ];
}

/** A jack that the room does not have, or that belongs on the other side of the point. */
function misplaced(
  at: PlaceInFile,
  direction: 'input' | 'output',
  jack: Address | undefined,
  fitting: readonly Address[],
  others: readonly Address[],
): Contradiction[] {
  if (jack === undefined || fitting.includes(jack)) return [];
  const expected = `an ${direction} jack of this rig`;
  if (others.includes(jack)) {
    const found = `${jack}, which is an ${direction === 'input' ? 'output' : 'input'} jack`;
    return [{ at, expected, found, hint: 'Outputs stand at the top, inputs at the bottom.' }];
  }
  const legs = legsOf(jack, true).filter((leg) => fitting.includes(leg));
  const names = legs.length > 0 ? legs : nearestNames(jack, fitting);
  const hint = legs.length > 0 ? 'It has two sides' : 'Nearest';
  return [{ at, expected, found: `"${jack}"`, hint: `${hint}: ${names.join(', ')}.` }];
}

function twice(
  at: PlaceInFile,
  name: string,
  jack: Address | undefined,
  taken: Map<Address, string>,
): Contradiction[] {
  if (jack === undefined) return [];
  const first = taken.get(jack);
  if (first === undefined) {
    taken.set(jack, name);
    return [];
  }
  const found = `${jack} at ${first} and at ${name}`;
  return [{ at, expected: 'each jack at one point', found, hint: 'Use a mult to split a signal.' }];
}
