import type { Address, Leg, Owner } from '../../simulator/index.ts';
import type { Column, Drawing, Point, WireLine } from './drawing.ts';

/** A plug-in on the wire of its channel. */
export interface PluginMark {
  readonly address: Address;
  readonly label: string;
  readonly at: Point;
}

/** A dot on a rail, for one side or for all that comes. */
export interface RailDot {
  readonly at: Point;
  readonly side: Leg | undefined;
}

/** Where a channel of the box is assigned: a dot on each rail that it comes to; with none, it ends in the open. */
export interface GoalMark {
  readonly address: Address;
  readonly dots: readonly RailDot[];
  readonly end: Point;
}

/** What a strip hangs by: the cords from the rails that feed its line input, and the plate with its name that they pass. */
export interface CordMark {
  /** The line input; of a stereo strip its place. */
  readonly input: Address;
  readonly dots: readonly RailDot[];
  readonly wire: WireLine;
  /** Where its strip stands. */
  readonly x: number;
}

/** A device of the rack. What an aux sends to it rises from the end of the rail; what it gives back rises to a rail above. */
export interface DeviceMark {
  readonly owner: Owner;
  readonly label: string;
  readonly x: number;
  readonly wires: readonly WireLine[];
  /** Its input jacks, or the first of them, whose feed is written below it; nothing where a wire shows what comes. */
  readonly input: Address | undefined;
}

/** A track, a bus, the main mix or a capture track of the box. */
export interface BoxColumn {
  readonly column: Column;
  readonly plugins: readonly PluginMark[];
  readonly goal: GoalMark;
}

/** A desk with what is around it. */
export interface RoomDrawing {
  /** The desk with room made for the rest, and the rails of all. */
  readonly desk: Drawing;
  readonly box: readonly BoxColumn[];
  readonly cords: readonly CordMark[];
  readonly devices: readonly DeviceMark[];
  /** From the feet of buses to the capture tracks that record them. */
  readonly home: readonly WireLine[];
}
