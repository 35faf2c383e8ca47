import type { PlaceInFile } from '../file/place.ts';

/** A contradiction inside a rig or board whose shape is right, at a place relative to it. */
export interface Contradiction {
  readonly at: PlaceInFile;
  readonly expected: string;
  readonly found: string;
  /** How to mend it. */
  readonly hint?: string;
}
