import type { Rig } from './schema.ts';

/** Something that is up to a rig alone, found when it is first asked for. The same rig gives the same object. */
export function onceARig<Found>(find: (rig: Rig) => Found): (rig: Rig) => Found {
  const known = new WeakMap<Rig, Found>();
  return (rig) => {
    const found = known.get(rig) ?? find(rig);
    known.set(rig, found);
    return found;
  };
}
