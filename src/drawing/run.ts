import { type Address, type Owner, part, type StripStage } from '../../simulator/index.ts';
import type { FaderSlot, InsertMark, StageMark, WireLine, WireRole } from './drawing.ts';
import type { Rows } from './rows.ts';

/** Half the height that an insert takes out of its wire. */
const INSERT_REACH = 18;
const DEVICE_SIDE = 14;

/** The way down of a strip or bus: its wire, with its stages on it. */
export interface Run {
  readonly wires: readonly WireLine[];
  readonly stages: readonly StageMark[];
  readonly inserts: readonly InsertMark[];
  readonly faders: readonly FaderSlot[];
}

/** Where a stage stands on its way down. */
export const heightOf = (rows: Rows, stage: StripStage): number =>
  rows.above.get(stage) ?? rows.below.get(stage) ?? rows.top;

/**
 * Draws a way down through some stages, from one height to another.
 *
 * Each piece of wire carries what stands at the stage above it. Inserts and faders leave a gap, since
 * how the wire runs through them depends on where they stand.
 */
export function runDown(
  owner: Owner,
  role: WireRole,
  rows: Rows,
  stages: readonly StripStage[],
  from: { readonly place: Address; readonly y: number },
  to: number,
  x: number,
): Run {
  const marks = stages.map(
    (stage): StageMark => ({
      stage,
      place: part(owner, stage),
      at: { x, y: heightOf(rows, stage) },
    }),
  );
  const gaps = marks.map(({ stage, place, at: { y } }) => {
    if (stage === 'insert') return { place, top: y - INSERT_REACH, bottom: y + INSERT_REACH };
    return stage === 'fader' ? { place, ...rows.fader } : { place, top: y, bottom: y };
  });
  const starts = [{ place: from.place, bottom: from.y }, ...gaps];
  const wires = starts.map(
    ({ place, bottom }, index): WireLine => ({
      place,
      role,
      points: [
        { x, y: bottom },
        { x, y: gaps[index]?.top ?? to },
      ],
    }),
  );
  return {
    wires,
    stages: marks,
    inserts: marks
      .filter(({ stage }) => stage === 'insert')
      .map(({ at: { y } }) => ({
        owner,
        top: { x, y: y - INSERT_REACH },
        bottom: { x, y: y + INSERT_REACH },
        device: { x: x - DEVICE_SIDE, y },
      })),
    faders: marks.flatMap(({ stage, place }, index) =>
      stage === 'fader'
        ? [{ address: place, before: starts[index]?.place ?? from.place, x, ...rows.fader }]
        : [],
    ),
  };
}
