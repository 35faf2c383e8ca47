import * as z from 'zod/mini';
import { type Board, withValues } from '../board/board.ts';
import { fromFile } from '../board/file-values.ts';
import { checkDocument, problemIn } from '../file/check-document.ts';
import { InputError, type Problem } from '../file/input-error.ts';
import type { PlaceInFile } from '../file/place.ts';
import { type FileDocument, readDocument } from '../file/read-document.ts';
import { misfitsIn } from '../rig/check-rig.ts';
import type { Contradiction } from '../rig/contradiction.ts';
import { controls } from '../rig/controls.ts';
import type { FileBoard, Rig } from '../rig/schema.ts';
import type { Claim } from './check.ts';
import { hasPlace, hasSource, hasStop, strangersIn } from './check-claim.ts';

export const taskId = z.string().check(z.regex(/^[a-z][a-z0-9-]*$/), z.maxLength(60));
export const words = z.string().check(z.minLength(1), z.maxLength(1200));
export const shortWords = z.string().check(z.minLength(1), z.maxLength(160));

/** What every task file begins with. */
export const taskHead = {
  id: taskId,
  /** Rises when the meaning of the task changes. */
  revision: z.int().check(z.gte(1)),
  title: shortWords,
  /** Id of the rig that the task is set on. */
  rig: taskId,
  /** Owners of the desk that are drawn: `desk.ch3`. All when left out. */
  show: z.optional(z.array(shortWords).check(z.minLength(1), z.maxLength(60))),
};

/** Finds a rig by its id; nothing when there is none. */
export type RigFinder = (id: string) => Rig | undefined;

/** A task file while it is being read: collects every problem, so that the author sees them all at once. */
export class TaskReader<T extends { readonly rig: string }> {
  readonly data: T;
  readonly rig: Rig;
  readonly #document: FileDocument;
  readonly #problems: Problem[] = [];

  /** @throws InputError when the file has not the shape of its schema, or names no known rig. */
  constructor(file: string, text: string, schema: z.ZodMiniType<T>, findRig: RigFinder) {
    this.#document = readDocument(file, text);
    this.data = checkDocument(this.#document, schema);
    const rig = findRig(this.data.rig);
    if (!rig) {
      throw new InputError(file, [
        problemIn(this.#document, ['rig'], {
          expected: 'the id of a rig of the course',
          found: `"${this.data.rig}"`,
        }),
      ]);
    }
    this.rig = rig;
  }

  /** The board that some values make of another one. Values that do not fit are noted as problems. */
  board(at: PlaceInFile, base: Board, values: FileBoard): Board {
    const misfits = misfitsIn(this.rig, values, base);
    this.note(at, misfits);
    return misfits.length > 0 ? base : withValues(this.rig, base, fromFile(this.rig, values));
  }

  /** Notes the name of a source that the rig does not have. */
  source(at: PlaceInFile, source: string): void {
    this.#stranger(at, hasSource(this.rig, source), 'a source of the rig', source);
  }

  /** Notes the name of an output or a place that the rig does not have. */
  place(at: PlaceInFile, name: string): void {
    this.#stranger(at, hasPlace(this.rig, name), 'an output or a place of the rig', name);
  }

  /** Notes the name of a place or an owner that the rig does not have. */
  stop(at: PlaceInFile, name: string): void {
    this.#stranger(at, hasStop(this.rig, name), 'a place or an owner of the rig', name);
  }

  #stranger(at: PlaceInFile, isKnown: boolean, expected: string, name: string): void {
    if (isKnown) return;
    this.note(at, [{ at: [], expected, found: `"${name}"`, hint: 'Check its spelling.' }]);
  }

  /** Notes the names in a claim that the rig does not have. */
  claim(at: PlaceInFile, claim: Claim): void {
    this.note(at, strangersIn(claim, this.rig));
  }

  /** Notes ids that stand twice. */
  uniqueIds(at: PlaceInFile, list: readonly { readonly id: string }[]): void {
    list.forEach(({ id }, index) => {
      if (list.findIndex((other) => other.id === id) < index) {
        this.note(
          [...at, index],
          [{ at: ['id'], expected: 'an id of its own', found: `"${id}" twice` }],
        );
      }
    });
  }

  /** Notes owners to be drawn that the desk does not have. */
  shown(show: readonly string[] | undefined): void {
    const owners = new Set([...controls(this.rig).values()].map(({ owner }) => owner));
    show?.forEach((owner, index) => {
      if (owner.startsWith('desk.') && owners.has(owner)) return;
      const expected = 'a strip, an aux, a subgroup or the main bus of the desk';
      this.note(['show', index], [{ at: [], expected, found: `"${owner}"` }]);
    });
  }

  note(at: PlaceInFile, contradictions: readonly Contradiction[]): void {
    for (const { at: inner, ...problem } of contradictions) {
      this.#problems.push(problemIn(this.#document, [...at, ...inner], problem));
    }
  }

  /** @throws InputError when any problem was noted. */
  finish(): void {
    if (this.#problems.length > 0) throw new InputError(this.#document.file, this.#problems);
  }
}
