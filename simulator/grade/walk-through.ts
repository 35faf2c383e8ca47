import * as z from 'zod/mini';
import type { Board } from '../board/board.ts';
import { fileBoardSchema, type Rig } from '../rig/schema.ts';
import { type Claim, claimSchema } from './check.ts';
import { type RigFinder, TaskReader, taskHead, taskId, words } from './task-file.ts';

/** The format of a walk-through: the desk moves step by step, and each step says what is heard then. */
export const walkThroughSchema = z.strictObject({
  ...taskHead,
  follow: taskId,
  start: z._default(fileBoardSchema, {}),
  steps: z
    .array(
      z.strictObject({
        id: taskId,
        say: words,
        /** Changes to the step before. */
        changes: z._default(fileBoardSchema, {}),
        follow: z.optional(taskId),
        /** What is heard now; every one of these holds, and the page prints what was computed. */
        heard: z._default(z.array(claimSchema).check(z.maxLength(4)), []),
      }),
    )
    .check(z.minLength(2), z.maxLength(12)),
});

export interface WalkThroughStep {
  readonly id: string;
  readonly say: string;
  readonly board: Board;
  readonly follow: string;
  readonly heard: readonly Claim[];
}

export interface WalkThrough {
  readonly id: string;
  readonly revision: number;
  readonly title: string;
  readonly rig: Rig;
  readonly start: Board;
  /** Owners that are drawn; all of the desk when left out. */
  readonly show?: readonly string[] | undefined;
  readonly steps: readonly WalkThroughStep[];
}

/** Reads a walk-through. @throws InputError with every problem. */
export function parseWalkThrough(file: string, text: string, findRig: RigFinder): WalkThrough {
  const reader = new TaskReader(file, text, walkThroughSchema, findRig);
  const { data, rig } = reader;
  const start = reader.board(['start'], {}, data.start);
  reader.source(['follow'], data.follow);
  reader.shown(data.show);
  reader.uniqueIds(['steps'], data.steps);
  let board = start;
  let follow = data.follow;
  const steps = data.steps.map((step, index): WalkThroughStep => {
    const at = ['steps', index];
    board = reader.board([...at, 'changes'], board, step.changes);
    follow = step.follow ?? follow;
    if (step.follow) reader.source([...at, 'follow'], step.follow);
    step.heard.forEach((claim, heard) => {
      reader.claim([...at, 'heard', heard], claim);
    });
    return { id: step.id, say: step.say, board, follow, heard: step.heard };
  });
  reader.finish();
  const { id, revision, title, show } = data;
  return { id, revision, title, rig, start, show, steps };
}
