/** Steps from the root of a document to a place in it. */
export type PlaceInFile = readonly PropertyKey[];

/** A place as text: `rig.desk.strips[2].id`. */
export function placeText(place: PlaceInFile): string {
  return place.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    const name = String(step);
    if (name.includes('.')) return `${text}["${name}"]`;
    return text === '' ? name : `${text}.${name}`;
  }, '');
}
