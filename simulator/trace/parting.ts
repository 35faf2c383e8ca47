import type { Address } from '../rig/address.ts';
import { type Path, placesOf } from './path.ts';

/** Where two paths of one signal go different ways. */
export interface Parting {
  /** The last place before they part. */
  readonly at: Address;
  /** The first place after it that each of them takes. */
  readonly turns: readonly [Address, Address];
  /** Where they meet again. */
  readonly meets: Address;
}

/** Where two paths part for the first time, and where the first one meets the second again. */
export function partingOf(one: Path, other: Path): Parting {
  const [places, others] = [placesOf(one), placesOf(other)];
  const parting = places.findIndex((place, index) => others[index] !== place);
  const at = places[parting - 1] ?? places[0] ?? '';
  const meets = places.slice(parting).find((place) => others.indexOf(place) >= parting);
  return {
    at,
    turns: [places[parting] ?? at, others[parting] ?? at],
    meets: meets ?? places.at(-1) ?? '',
  };
}
