import {
  DESK_MAIN,
  deskOwner,
  levelOf,
  type Owner,
  part,
  type Rig,
  type Setup,
  type Solution,
} from '../../../simulator/index.ts';

/**
 * The owners that a desk draws: those asked for, or all. Where there is room for one strip only, the
 * strip that is open, with all buses that would have been drawn.
 */
export function ownersToShow(
  rig: Rig,
  show: readonly Owner[] | undefined,
  only: Owner | undefined,
): readonly Owner[] | undefined {
  if (only === undefined) return show;
  const strips = rig.desk.strips.map(({ id }) => deskOwner(id));
  const candidates = show?.filter((owner) => strips.includes(owner)) ?? strips;
  const strip = strips.includes(only) ? only : candidates[0];
  const buses = [...rig.desk.auxes, ...rig.desk.subgroups].map(({ id }) => deskOwner(id));
  const shownBuses = [...buses, DESK_MAIN].filter((owner) => !show || show.includes(owner));
  return strip ? [strip, ...shownBuses] : shownBuses;
}

/** The owners that a source passes on the desk, with the main bus: what a picture about it has to show. */
export function ownersOnWay({ rig }: Setup, solution: Solution, source: string): Owner[] {
  const hears = (place: string) => levelOf(solution, source, place) !== -Infinity;
  const { strips, auxes, subgroups } = rig.desk;
  return [
    ...strips.filter(({ id }) => hears(part(deskOwner(id), 'in'))),
    ...[...auxes, ...subgroups].filter(({ id }) => hears(part(deskOwner(id), 'sum'))),
  ]
    .map(({ id }) => deskOwner(id))
    .concat(DESK_MAIN);
}
