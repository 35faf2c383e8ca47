import {
  deskOwner,
  fullLabel,
  type Owner,
  ownerLabel,
  ownerOf,
  type Rig,
} from '../../simulator/index.ts';

/** How many letters of a name there is room for, by where it stands in the drawing. */
export const ROOM_FOR = {
  column: 12,
  feed: 12,
  device: 11,
  normalledDevice: 10,
  goal: 14,
  foot: 12,
  jack: 8,
  choice: 12,
  rail: 9,
} as const;

/** A name as far as there is room for it, with an ellipsis for what is left out. */
export function shortened(name: string, letters: number): string {
  return name.length > letters ? `${name.slice(0, letters - 1).trimEnd()}…` : name;
}

/** What a jack belongs to, in few letters: `out 3` and `in 3` of the converter, `strip 3`, `Compressor`. */
export function shortOwner(rig: Rig, jack: Owner): string {
  const owner = ownerOf(jack);
  const strip = rig.desk.strips.find(({ id }) => deskOwner(id) === owner);
  if (strip) return `strip ${strip.mark}`;
  if (!owner.startsWith('converter.')) return ownerLabel(rig, owner);
  return fullLabel(rig, owner)
    .replace(/^Output /, 'out ')
    .replace(/^Converter input (\d+).*$/, 'in $1');
}
