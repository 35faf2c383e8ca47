import type { Address, Owner, StripStage } from '../../simulator/index.ts';

/** A point of the drawing, in its own units; one unit is one CSS pixel at full size. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a line of the drawing is: the strip's own wire, the one that comes back up from below the fader, a bus. */
export type WireRole = 'strip' | 'after' | 'aux' | 'subgroup' | 'main';

/** A line. It carries what stands at its place, and is lit by the level there. */
export interface WireLine {
  readonly place: Address;
  readonly role: WireRole;
  readonly points: readonly Point[];
}

/** The mark of a stage on a wire: its control, where it has one, has the address of the place. */
export interface StageMark {
  readonly stage: StripStage;
  readonly place: Address;
  readonly at: Point;
}

/** The slot that a fader moves in; its top is the control's highest gain. */
export interface FaderSlot {
  readonly address: Address;
  /** The place before it: what stands there lights the wire above the cap. */
  readonly before: Address;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

/** The crossing of a strip with an aux: a send sits on one of two wires there. */
export interface SendCrossing {
  readonly address: Address;
  /** Address of its tap switch; nothing where the tap is fixed. */
  readonly tapSwitch: Address | undefined;
  readonly fixedTap: 'pre' | 'post' | undefined;
  readonly before: Point;
  readonly after: Point;
}

/** The crossing of a strip or subgroup with a bus: an assign. */
export interface AssignCrossing {
  readonly address: Address;
  readonly bus: 'subgroup' | 'main';
  readonly at: Point;
}

/** An insert: straight through, or around through a device. */
export interface InsertMark {
  readonly owner: Owner;
  readonly top: Point;
  readonly bottom: Point;
  /** Middle of the device on the detour. */
  readonly device: Point;
}

/** A strip, a subgroup or the main bus: something that runs down. */
export interface Column {
  readonly owner: Owner;
  readonly kind: 'strip' | 'subgroup' | 'main';
  readonly x: number;
  readonly mark: string;
  readonly label: string;
  /** Its line input, where it has one: what feeds it is written there. */
  readonly input: Address | undefined;
  readonly wires: readonly WireLine[];
  readonly stages: readonly StageMark[];
  readonly inserts: readonly InsertMark[];
  readonly faders: readonly FaderSlot[];
  readonly sends: readonly SendCrossing[];
  readonly assigns: readonly AssignCrossing[];
  /** Where its wire ends and what it feeds is written; nothing where it ends on a rail. */
  readonly foot: Point | undefined;
}

/** A bus that runs across, with where it ends. */
export interface Rail {
  readonly owner: Owner;
  readonly role: 'aux' | 'subgroup' | 'main';
  readonly label: string;
  readonly y: number;
  readonly wires: readonly WireLine[];
  /** Where the name of what it feeds is written; an aux has its master there. */
  readonly end: Point | undefined;
  /** Address of its master level, on the rail before its end. */
  readonly master: { readonly address: Address; readonly at: Point } | undefined;
}

/** The name of a row, at the left edge. */
export interface RowName {
  readonly text: string;
  readonly y: number;
}

/** The desk as a schematic: what runs down, what runs across, and where they cross. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly columns: readonly Column[];
  readonly rails: readonly Rail[];
  readonly rows: readonly RowName[];
  /** Where the wires before and after the fader are named; nothing where there are no sends. */
  readonly tapNames: { readonly before: Point; readonly after: Point } | undefined;
}
