import {
  type Address,
  boardOf,
  type FileBoard,
  outputPlace,
  passes,
  paths,
  type Rig,
  simulate,
} from '../../../simulator/index.ts';
import { pathStory } from '../../text/index.ts';

/** Which way of a source is told in prose. */
export interface Way {
  readonly source: string;
  /** An output by its id, or any place by its address. */
  readonly output: string;
  /** A place that tells this way from the others; left out where there is only one. */
  readonly through?: Address;
  readonly board?: FileBoard;
  readonly rig?: string;
}

/**
 * A way as one sentence, for prose.
 *
 * @throws RangeError when there is no such way, or more than one.
 */
export function wayText(rig: Rig, { source, output, through, board = {} }: Way): string {
  const setup = { rig, board: boardOf(`the way of ${source} to ${output}`, rig, board) };
  const place = rig.outputs.some(({ id }) => id === output) ? outputPlace(output) : output;
  const all = paths(simulate(setup), source, place);
  const found = all.filter((path) => through === undefined || passes(path, through));
  const [way] = found;
  if (way && found.length === 1) return pathStory(setup, way);
  const past = through === undefined ? '' : ` through ${through}`;
  throw new RangeError(
    `Expected one way of ${source} to ${output}${past}, but there are ${found.length}.`,
  );
}
