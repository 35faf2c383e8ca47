import type { Address, BoardEvent, Owner, Setup, Solution } from '../../../simulator/index.ts';
import type { Point } from '../../drawing/drawing.ts';
import { type Followed, type Light, lightOf } from '../../drawing/light.ts';
import type { LevelScale } from '../../text/index.ts';

/** What a desk shows at one moment: where it stands, what is heard, which source is followed. */
export interface Scene {
  /** Sets the ids of this desk's fields apart from those of others on the page. */
  readonly id: string;
  readonly setup: Setup;
  readonly solution: Solution;
  /** The track that is followed, in levels and words. */
  readonly follow: string;
  /** What is lit: mostly the track that is followed. */
  readonly followed: Followed;
  readonly light: Light;
  /** What is open in the sheet beside the drawing. */
  readonly selected: Owner | undefined;
  readonly locked: ReadonlySet<Address>;
  /** Where a reset leads; nothing where there are no hands, or another rig was loaded. */
  readonly start?: Setup | undefined;
  /** What its levels are read in. */
  readonly scale: LevelScale;
  /** Whether levels are not to be read off the drawing, where they would say what is asked. */
  readonly hidesLevels?: boolean;
}

/** A scene that nobody turns, lit by the source that it follows. */
export function stillScene(
  still: Pick<Scene, 'id' | 'setup' | 'solution' | 'follow' | 'scale'>,
): Scene {
  const followed: Followed = { kind: 'source', source: still.follow };
  return {
    ...still,
    followed,
    light: lightOf(still.solution, followed),
    selected: undefined,
    locked: new Set(),
  };
}

/** What the drawing shows of a comparison with another setup. */
export interface Comparison {
  /** Where controls are drawn that stand elsewhere there. */
  readonly marks: readonly Point[];
  /** The other setup, where it is drawn in place of the present one. */
  readonly instead: Setup | undefined;
}

/** What a person can do with a desk. */
export interface Hands {
  readonly send: (event: BoardEvent) => void;
  /** Opens an owner in the sheet, with the focus on one of its controls where one is named. */
  readonly open: (owner: Owner, control?: Address) => void;
  /** Lights one way alone, by the places that it passes; nothing lights all that is followed again. */
  readonly light: (places: ReadonlySet<Address> | undefined) => void;
  /** Marks what differs from another setup, and draws that instead where asked. */
  readonly compare: (comparison: Comparison | undefined) => void;
}
