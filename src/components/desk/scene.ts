import type { Address, BoardEvent, Owner, Setup, Solution } from '../../../simulator/index.ts';
import type { LevelScale } from '../../text/index.ts';

/** What a desk shows at one moment: where it stands, what is heard, which source is followed. */
export interface Scene {
  /** Sets the ids of this desk's fields apart from those of others on the page. */
  readonly id: string;
  readonly setup: Setup;
  readonly solution: Solution;
  /** The track whose way is lit. */
  readonly follow: string;
  /** What is open in the sheet beside the drawing. */
  readonly selected: Owner | undefined;
  readonly locked: ReadonlySet<Address>;
  /** What its levels are read in. */
  readonly scale: LevelScale;
}

/** What a person can do with a desk. */
export interface Hands {
  readonly send: (event: BoardEvent) => void;
  /** Opens an owner in the sheet, with the focus on one of its controls where one is named. */
  readonly open: (owner: Owner, control?: Address) => void;
}
