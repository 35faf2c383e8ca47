import type { Address, Owner, StripStage } from '../../simulator/index.ts';

/** A point of the drawing, in its own units; one unit is one CSS pixel at full size. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a line of the drawing is: the strip's own wire, one that comes back up from below the fader, a bus, what a jack gives. */
export type WireRole =
  | 'strip'
  | 'after'
  | 'aux'
  | 'subgroup'
  | 'main'
  | 'control-room'
  | 'track'
  | 'box-bus'
  | 'box-main'
  | 'capture'
  | 'line';

/** A line. It carries what stands at its place, and is lit by the level there. */
export interface WireLine {
  readonly place: Address;
  readonly role: WireRole;
  readonly points: readonly Point[];
  /** Places on the wires at its ends, where those lie at an angle to it: drawn to there, its corners are whole. */
  readonly corners?: readonly [before: Point, after: Point];
  /** Whether it is there by a normal alone, without a cord. */
  readonly isNormal?: boolean;
  /** The sends that are taken on it, where it leads to nothing else. */
  readonly sends?: readonly SendCrossing[];
}

/** The mark of a stage on a wire: its control, where it has one, has the address of the place. */
export interface StageMark {
  readonly stage: StripStage;
  readonly place: Address;
  readonly at: Point;
}

/** The slot that a fader moves in; its top is the control's highest gain. */
export interface FaderSlot {
  /** Address of the control, and the place behind the fader that the column's own wire carries below it. */
  readonly address: Address;
  /** The place before it: what stands there lights the wire above the cap. */
  readonly before: Address;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  /** Heights at which the column's own wire ends above it and begins again below it. */
  readonly from: number;
  readonly to: number;
  /** The fader of the other path of an in-line strip; nothing on any other. */
  readonly partner: FaderPartner | undefined;
}

/** The other fader of an in-line strip: when the two are swapped, the wires cross over to one another's slots. */
export interface FaderPartner {
  readonly swap: Address;
  readonly x: number;
  readonly address: Address;
  readonly before: Address;
}

/** A switch that is a word in a box. */
export interface ToggleMark {
  readonly address: Address;
  readonly word: 'solo' | 'safe' | 'swap' | 'mono';
  readonly at: Point;
}

/** A choice that is drawn as what is chosen, in a box. */
export interface ChoiceMark {
  readonly address: Address;
  /** What stands before it: `hears`. */
  readonly name: string;
  readonly at: Point;
}

/** What feeds the second path of an in-line strip: its own input from above, or the first path from the side. */
export interface PathSwitch {
  readonly address: Address;
  readonly input: Point;
  readonly first: Point;
  readonly end: Point;
}

/** An output jack on the way down: a direct output, or the jack of a bus that goes on. */
export interface SideJack {
  readonly jack: Address;
  /** Where it leaves the wire, and where its name is written. */
  readonly at: Point;
  readonly end: Point;
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
  /** Address of a switch, or where a mono subgroup meets the main bus of a choice of sides. */
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

/** A track, a strip, a bus or the control room: something that runs down. */
export interface Column {
  readonly owner: Owner;
  readonly kind:
    | 'strip'
    | 'subgroup'
    | 'main'
    | 'control-room'
    | 'track'
    | 'box-bus'
    | 'box-main'
    | 'capture';
  readonly x: number;
  /** Height at which its names begin. */
  readonly top: number;
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
  readonly toggles: readonly ToggleMark[];
  readonly choices: readonly ChoiceMark[];
  readonly sideJacks: readonly SideJack[];
  readonly pathSwitch: PathSwitch | undefined;
  /** Where its wire ends and what it feeds is written; nothing where it ends on a rail. */
  readonly foot: Point | undefined;
}

/** A bus that runs across, with where it ends. */
export interface Rail {
  readonly owner: Owner;
  readonly role: 'aux' | 'subgroup' | 'main' | 'box-bus' | 'box-main' | 'line';
  readonly label: string;
  readonly y: number;
  readonly wires: readonly WireLine[];
  /** Where the name of what it feeds is written; an aux has its master there. */
  readonly end: Point | undefined;
  /** Address of its master level, on the rail before its end. */
  readonly master: { readonly address: Address; readonly at: Point } | undefined;
  readonly solo: ToggleMark | undefined;
}

/** The name of a row, at the left edge. */
export interface RowName {
  readonly text: string;
  readonly y: number;
}

/** A frame around some columns. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The desk as a schematic: what runs down, what runs across, and where they cross. */
export interface Drawing {
  readonly width: number;
  /** Height at which the drawing begins: 0 for a desk alone, and above it for what feeds it. */
  readonly top: number;
  /** Height at which it ends. */
  readonly height: number;
  readonly columns: readonly Column[];
  readonly rails: readonly Rail[];
  readonly rows: readonly RowName[];
  /** Frames around the two paths of each in-line strip. */
  readonly pairs: readonly Frame[];
  /** Where the wires before and after the fader are named; nothing where there are no sends. */
  readonly tapNames: { readonly before: Point; readonly after: Point } | undefined;
}
