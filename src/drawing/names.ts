/** How many letters of a name there is room for, by where it stands in the drawing. */
export const ROOM_FOR = {
  column: 12,
  feed: 12,
  device: 11,
  normalledDevice: 10,
  goal: 14,
} as const;

/** A name as far as there is room for it, with an ellipsis for what is left out. */
export function shortened(name: string, letters: number): string {
  return name.length > letters ? `${name.slice(0, letters - 1).trimEnd()}…` : name;
}
