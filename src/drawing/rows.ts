import type { Rig, StripStage, StripType } from '../../simulator/index.ts';

/** A row of the drawing: what stands in it, and from where to where it reaches. */
export interface Row {
  readonly stage: StripStage;
  readonly top: number;
  readonly bottom: number;
}

/** Heights of the rows that a desk is drawn in. They depend on the rig alone. */
export interface Rows {
  /** Where the wires start, below the names. */
  readonly top: number;
  /** Stages that come before the tap before the fader. Where types disagree on the order, a stage has more than one row. */
  readonly above: readonly Row[];
  /** Height of each aux rail, by its order. */
  readonly auxes: readonly number[];
  /** Top and bottom of the band that holds the aux rails. */
  readonly band: { readonly top: number; readonly bottom: number };
  /** Stages that come after it. */
  readonly below: readonly Row[];
  readonly subgroups: readonly number[];
  readonly main: number;
  readonly height: number;
}

export const HEAD = 76;
const SLOT = 44;
const RAIL = 40;
const FADER = 150;
const BUS = 36;

/** Lays the rows of a desk. Stages of all strip types share rows, so that like stands beside like. */
export function layRows(
  types: readonly Pick<StripType, 'stages' | 'taps'>[],
  auxCount: number,
  subgroupCount: number,
): Rows {
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
    take(stage === 'fader' ? FADER : SLOT);
    return { stage, top, bottom: y };
  };
  const above = inOneOrder(parts.map((part) => part.above)).map(takeRow);

  const bandTop = y;
  if (auxCount > 0) y += 14;
  const auxes = Array.from({ length: auxCount }, () => take(RAIL));
  if (auxCount > 0) y += 4;
  const bandBottom = y;

  const below = inOneOrder(parts.map((part) => part.below)).map(takeRow);
  y += 8;
  const subgroups = Array.from({ length: subgroupCount }, () => take(BUS));
  const main = take(BUS);
  return {
    top: HEAD,
    above,
    auxes,
    band: { top: bandTop, bottom: bandBottom },
    below,
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
