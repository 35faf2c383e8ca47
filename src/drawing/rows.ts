import type { Rig, StripStage, StripType } from '../../simulator/index.ts';

/** A row of the drawing: what stands in it, and from where to where it reaches. */
export interface Row {
  readonly stage: StripStage;
  readonly top: number;
  readonly bottom: number;
  /** In the row of a fader: height above and below its slot in which the wires of an in-line strip can cross. */
  readonly lead: number;
}

/** Heights of the rows that a desk is drawn in. They depend on the rig alone. */
export interface Rows {
  /** Where the wires start, below the names. */
  readonly top: number;
  /** Height of the switches between the paths of in-line strips; nothing on a desk without them. */
  readonly paths: number | undefined;
  /** Stages that come before the tap before the fader. Where types disagree on the order, a stage has more than one row. */
  readonly above: readonly Row[];
  /** Height of each aux rail, by its order. */
  readonly auxes: readonly number[];
  /** Top and bottom of the band that holds the aux rails. */
  readonly band: { readonly top: number; readonly bottom: number };
  /** Stages that come after it. */
  readonly below: readonly Row[];
  /** Height of the solo switches; nothing on a desk without them. */
  readonly solo: number | undefined;
  /** Where a strip ends that no bus takes. */
  readonly end: number;
  /** Where subgroups end that have no assign; nothing where all have one. */
  readonly feet: number | undefined;
  readonly subgroups: readonly number[];
  readonly main: number;
  readonly height: number;
}

export const HEAD = 76;
export const SLOT = 44;
export const FADER = 150;
/** Height in which two wires cross over to one another's faders. */
const LEAD = 24;
const FEET = 62;
/** Rails stand closer on a desk that has many of them. */
const MANY = 4;
const railHeight = (count: number) => (count > MANY ? 32 : 40);
const busHeight = (count: number) => (count > MANY ? 28 : 36);

/** Where a wire after the fader leaves the strip: at the end of the row of its tap, past the slot of a fader. */
export const endOfRow = ({ bottom }: Row): number => bottom - 2;

/** Lays the rows of a desk. Stages of all strip types share rows, so that like stands beside like. */
export function layRows(
  rig: Rig,
  types: readonly Pick<StripType, 'stages' | 'taps'>[],
  auxCount: number,
  subgroupCount: number,
): Rows {
  const { strips, solo, subgroups: groups } = rig.desk;
  const hasPaths = strips.some(({ inline }) => inline !== undefined);
  const lead = hasPaths ? LEAD : 0;
  const parts = types.map(({ stages, taps }) => {
    const split = stages.indexOf(taps.pre) + 1;
    return { above: stages.slice(0, split), below: stages.slice(split) };
  });
  let y = HEAD;
  const take = (height: number) => {
    y += height;
    return y - height / 2;
  };
  const takeRow = (stage: StripStage): Row => {
    const top = y;
    const isFader = stage === 'fader';
    take(isFader ? FADER + 2 * lead : SLOT);
    return { stage, top, bottom: y, lead: isFader ? lead : 0 };
  };
  const paths = hasPaths ? take(SLOT) : undefined;
  const above = inOneOrder(parts.map((part) => part.above)).map(takeRow);

  const bandTop = y;
  if (auxCount > 0) y += 14;
  const auxes = Array.from({ length: auxCount }, () => take(railHeight(auxCount)));
  if (auxCount > 0) y += 4;
  const bandBottom = y;

  const below = inOneOrder(parts.map((part) => part.below)).map(takeRow);
  const soloAt = solo ? take(SLOT - 8) : undefined;
  const end = y;
  const feet = groups.some(({ main: goesOn }) => !goesOn) ? take(FEET) - FEET / 2 + 12 : undefined;
  y += 8;
  const subgroups = Array.from({ length: subgroupCount }, () => take(busHeight(subgroupCount)));
  const main = take(36);
  return {
    top: HEAD,
    paths,
    above,
    auxes,
    band: { top: bandTop, bottom: bandBottom },
    below,
    solo: soloAt,
    end,
    feet,
    subgroups,
    main,
    height: y + 26,
  };
}

/** Merges several orders of stages into one that holds each of them. A stage that they disagree on stands more than once. */
function inOneOrder(orders: readonly (readonly StripStage[])[]): StripStage[] {
  const merged: StripStage[] = [];
  for (const order of [...orders].sort((a, b) => b.length - a.length)) {
    let next = 0;
    for (const stage of order) {
      const found = merged.indexOf(stage, next);
      if (found < 0) merged.splice(next, 0, stage);
      next = (found < 0 ? next : found) + 1;
    }
  }
  return merged;
}

/** The rows of the stages of one type, in signal order. The rows are laid for it among others. */
export function rowsOf(rows: Rows, { stages, taps }: Pick<StripType, 'stages' | 'taps'>): Row[] {
  const split = stages.indexOf(taps.pre) + 1;
  return [
    ...rowsInTurn(rows.above, stages.slice(0, split)),
    ...rowsInTurn(rows.below, stages.slice(split)),
  ];
}

/** The first row of each stage that comes after the row of the stage before it. */
function rowsInTurn(rows: readonly Row[], stages: readonly StripStage[]): Row[] {
  let next = 0;
  return stages.flatMap((stage) => {
    const found = rows.findIndex((row, index) => index >= next && row.stage === stage);
    next = found + 1;
    return rows[found] ?? [];
  });
}

/** The strip types that the desk uses, each once. Rows are laid for all of them, whichever strips are drawn. */
export const typesInUse = ({ desk }: Rig): StripType[] =>
  desk.stripTypes.filter(({ id }) => desk.strips.some(({ type }) => type === id));
