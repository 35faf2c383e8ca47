import type { Rig, StripStage, StripType } from '../../simulator/index.ts';

/** Heights of the rows that a desk is drawn in. They depend on the rig alone. */
export interface Rows {
  /** Where the wires start, below the names. */
  readonly top: number;
  /** Middle of each stage that comes before the tap before the fader. */
  readonly above: ReadonlyMap<StripStage, number>;
  /** Height of each aux rail, by its order. */
  readonly auxes: readonly number[];
  /** Top and bottom of the band that holds the aux rails. */
  readonly band: { readonly top: number; readonly bottom: number };
  /** Middle of each stage that comes after it. */
  readonly below: ReadonlyMap<StripStage, number>;
  readonly fader: { readonly top: number; readonly bottom: number };
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
  types: readonly StripType[],
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
  const above = new Map<StripStage, number>();
  for (const stage of inOneOrder(parts.map((part) => part.above))) above.set(stage, take(SLOT));

  const bandTop = y;
  if (auxCount > 0) y += 14;
  const auxes = Array.from({ length: auxCount }, () => take(RAIL));
  if (auxCount > 0) y += 4;
  const bandBottom = y;

  const below = new Map<StripStage, number>();
  let fader = { top: y, bottom: y };
  for (const stage of inOneOrder(parts.map((part) => part.below))) {
    const height = stage === 'fader' ? FADER : SLOT;
    below.set(stage, take(height));
    if (stage === 'fader') fader = { top: y - height + 18, bottom: y - 12 };
  }
  y += 8;
  const subgroups = Array.from({ length: subgroupCount }, () => take(BUS));
  const main = take(BUS);
  return {
    top: HEAD,
    above,
    auxes,
    band: { top: bandTop, bottom: bandBottom },
    below,
    fader,
    subgroups,
    main,
    height: y + 26,
  };
}

/** Merges several orders of stages into one that keeps each as far as it can. */
function inOneOrder(orders: readonly (readonly StripStage[])[]): StripStage[] {
  const merged: StripStage[] = [];
  for (const order of [...orders].sort((a, b) => b.length - a.length)) {
    order.forEach((stage, index) => {
      if (merged.includes(stage)) return;
      const before = order.slice(0, index).findLast((earlier) => merged.includes(earlier));
      merged.splice(before ? merged.indexOf(before) + 1 : 0, 0, stage);
    });
  }
  return merged;
}

/** The strip types that the desk uses, each once. Rows are laid for all of them, whichever strips are drawn. */
export const typesInUse = ({ desk }: Rig): StripType[] =>
  desk.stripTypes.filter(({ id }) => desk.strips.some(({ type }) => type === id));
