import { CONTROL_ROOM, DESK_MAIN, deskOwner, type Owner, type Rig } from '../../simulator/index.ts';

/** A part of a desk that can be folded away. */
export interface DeskPart {
  readonly name: string;
  readonly owners: readonly Owner[];
}

/** The most strips of one part. */
const STRIPS = 8;

/** The parts of a desk: its strips by eights, its auxes, its subgroups, its control room. The main bus is always open. */
export function deskParts({ desk }: Rig): DeskPart[] {
  const strips = Array.from({ length: Math.ceil(desk.strips.length / STRIPS) }, (_, index) => {
    const some = desk.strips.slice(index * STRIPS, (index + 1) * STRIPS);
    const [first, last] = [some[0]?.mark ?? '', some.at(-1)?.mark ?? ''];
    return {
      name: first === last ? `Strip ${first}` : `Strips ${first}–${last}`,
      owners: some.map(({ id }) => deskOwner(id)),
    };
  });
  const buses = [
    { name: 'Auxes', owners: desk.auxes.map(({ id }) => deskOwner(id)) },
    { name: 'Subgroups', owners: desk.subgroups.map(({ id }) => deskOwner(id)) },
    { name: 'Control room', owners: desk.controlRoom ? [CONTROL_ROOM] : [] },
  ];
  return [...strips, ...buses.filter(({ owners }) => owners.length > 0)];
}

/** The owners of a desk that are open while some of its parts, by name, are folded; the main bus among them. */
export const openOwners = (rig: Rig, folded: readonly string[]): Owner[] => [
  ...deskParts(rig)
    .filter(({ name }) => !folded.includes(name))
    .flatMap(({ owners }) => owners),
  DESK_MAIN,
];
