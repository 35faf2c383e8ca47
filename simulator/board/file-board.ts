import { problemIn } from '../file/check-document.ts';
import { InputError } from '../file/input-error.ts';
import type { PlaceInFile } from '../file/place.ts';
import type { FileDocument } from '../file/read-document.ts';
import { misfitsIn } from '../rig/check-rig.ts';
import type { Contradiction } from '../rig/contradiction.ts';
import type { FileBoard, Rig } from '../rig/schema.ts';
import { type Board, withValues } from './board.ts';
import { fromFile } from './file-values.ts';

/** A board of a document, checked against its rig. @throws InputError with every entry that does not fit. */
export function boardFrom(
  document: FileDocument,
  at: PlaceInFile,
  rig: Rig,
  values: FileBoard,
): Board {
  refuse(document, at, misfitsIn(rig, values));
  return withValues(rig, {}, fromFile(rig, values));
}

/** A board of values that stand in a program or a page, not in a file, as `boardData` gives them. @throws InputError like {@link boardFrom}. */
export const boardOf = (where: string, rig: Rig, values: FileBoard): Board =>
  boardFrom({ file: where, data: values, lineOf: () => undefined }, [], rig, values);

/** @throws InputError when there are any contradictions. */
export function refuse(
  document: FileDocument,
  at: PlaceInFile,
  contradictions: readonly Contradiction[],
): void {
  if (contradictions.length === 0) return;
  throw new InputError(
    document.file,
    contradictions.map(({ at: inner, ...problem }) =>
      problemIn(document, [...at, ...inner], problem),
    ),
  );
}
