import {
  type Address,
  type Dbu,
  type Headroom,
  headroomAt,
  type Level,
  noiseAt,
  type Path,
  type Solution,
} from '../../simulator/index.ts';

/** How a signal stands at one place of its way, between noise and clipping. */
export interface WayLevel {
  readonly place: Address;
  /** Of this way alone. */
  readonly level: Dbu;
  /** Of all stages that lead there. */
  readonly noise: Level;
  /** Of all signals that come there; nothing where no stage is active. */
  readonly headroom: Headroom | undefined;
}

/**
 * The levels of a way, place by place: at the places named, and wherever a stage is active.
 *
 * @param telling places where something happens to the signal.
 */
export const wayLevels = (
  solution: Solution,
  { steps }: Path,
  telling: ReadonlySet<Address>,
): WayLevel[] =>
  steps
    .map(({ place, level }) => ({ place, level, headroom: headroomAt(solution, place) }))
    .filter(({ place, headroom }) => headroom !== undefined || telling.has(place))
    .map((step) => ({ ...step, noise: noiseAt(solution, step.place) }));

/** Where a way has least headroom; the first of those that are alike. Nothing where no stage on it is active. */
export const tightestOf = (levels: readonly WayLevel[]): Headroom | undefined =>
  levels.reduce<Headroom | undefined>(
    (least, { headroom }) =>
      headroom && (!least || headroom.headroom < least.headroom) ? headroom : least,
    undefined,
  );
