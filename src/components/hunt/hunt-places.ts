import {
  type Address,
  type Hunt,
  type HuntFault,
  type Owner,
  ownerOf,
  partLabel,
  type Rig,
} from '../../../simulator/index.ts';
import { capitalised } from '../../text/index.ts';

/** Something of the room, with where it can be read and what can be wrong with it. */
export interface HuntOwner {
  readonly owner: Owner;
  /** In signal order; none where nothing of it is a place. */
  readonly places: readonly Address[];
  readonly faults: readonly HuntFault[];
}

/** A part of the room as the list of owners names it. */
export interface HuntSection {
  readonly name: string;
  readonly owners: readonly HuntOwner[];
}

const SECTIONS: Readonly<Record<string, string>> = {
  box: 'The box',
  converter: 'The converter',
  desk: 'The desk',
  bay: 'The bay',
  rack: 'The rack',
  out: 'The outputs',
};

/** All that can be read or accused in a hunt, by part of the room, in signal order. */
export function huntSections({ places, faults }: Hunt): readonly HuntSection[] {
  const placesOf = Map.groupBy(places, ownerOf);
  const faultsOf = Map.groupBy(faults, ({ at }) => ownerOf(at));
  const owners = [...new Set([...placesOf.keys(), ...faultsOf.keys()])].map((owner) => ({
    owner,
    places: placesOf.get(owner) ?? [],
    faults: faultsOf.get(owner) ?? [],
  }));
  return Object.entries(SECTIONS)
    .map(([section, name]) => ({
      name,
      owners: owners.filter(({ owner }) => owner.startsWith(`${section}.`)),
    }))
    .filter(({ owners: some }) => some.length > 0);
}

/** Name of a place beside the name of its owner: `Fader`, `The jack`. */
export const placeLabel = (rig: Rig, place: Address): string =>
  capitalised(partLabel(rig, place) || 'the jack');

/** The place that is meant when something is touched in the drawing: itself, what it is a part of, or the first of its owner. */
export function placeTouched(hunt: Hunt, address: Address): Address | undefined {
  for (let at = address; at.includes('.'); at = at.slice(0, at.lastIndexOf('.'))) {
    if (hunt.places.includes(at)) return at;
  }
  return hunt.places.find((place) => ownerOf(place) === ownerOf(address));
}
