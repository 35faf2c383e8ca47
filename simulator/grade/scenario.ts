import * as z from 'zod/mini';
import type { Board } from '../board/board.ts';
import { controls } from '../rig/controls.ts';
import { fileBoardSchema, type Rig } from '../rig/schema.ts';
import { type Check, checkSchema } from './check.ts';
import { matches } from './locks.ts';
import { type RigFinder, shortWords, TaskReader, taskHead, taskId, words } from './task-file.ts';

const changes = fileBoardSchema;

/** The format of a scenario: a start, what may be moved, what has to be heard, and the proof that it works. */
export const scenarioSchema = z.strictObject({
  ...taskHead,
  /** In a `complete` half of it stands already: some check is passed at the start, and some is not. */
  kind: z._default(z.enum(['patch', 'complete']), 'patch'),
  /** The one idea that it trains. */
  concept: taskId,
  brief: z.array(words).check(z.minLength(1), z.maxLength(6)),
  /** The source that is lit at the start. */
  follow: taskId,
  start: z._default(changes, {}),
  open: z.array(shortWords).check(z.minLength(1), z.maxLength(40)),
  /** The fewest moves that solve it, a move being one control put to another value. */
  par: z.optional(z.int().check(z.gte(1), z.lte(60))),
  checks: z.array(checkSchema).check(z.minLength(1), z.maxLength(20)),
  hints: z._default(z.array(words).check(z.maxLength(6)), []),
  /** Said after success. */
  debrief: words,
  /** Changes to the start that pass. */
  solution: changes,
  /** Other changes to the start that pass as well. */
  alsoPasses: z._default(
    z.array(z.strictObject({ name: shortWords, changes })).check(z.maxLength(8)),
    [],
  ),
  /** Likely mistakes: changes to the solution, and the checks that each must fail, no more and no fewer. */
  mistakes: z
    .array(
      z.strictObject({
        id: taskId,
        name: shortWords,
        changes,
        fails: z.array(taskId).check(z.minLength(1)),
      }),
    )
    .check(z.minLength(2), z.maxLength(12)),
});

/** A board that a scenario's author vouches for, and which checks it fails: none for a solution. */
export interface Proof {
  readonly name: string;
  readonly board: Board;
  readonly fails: readonly string[];
}

/** A graded routing task. */
export interface Scenario {
  readonly id: string;
  readonly revision: number;
  readonly title: string;
  readonly kind: 'patch' | 'complete';
  readonly concept: string;
  readonly rig: Rig;
  /** Owners that are drawn; all of the desk when left out. */
  readonly show?: readonly string[] | undefined;
  readonly brief: readonly string[];
  readonly follow: string;
  readonly start: Board;
  /** Patterns of the addresses that may be moved; all others are locked. */
  readonly open: readonly string[];
  /** The fewest moves that solve it, where that is known. */
  readonly par?: number | undefined;
  readonly checks: readonly Check[];
  readonly hints: readonly string[];
  readonly debrief: string;
  readonly solution: Board;
  /** The solution first, then what else passes, then the mistakes. */
  readonly proofs: readonly Proof[];
}

/** Reads a scenario. @throws InputError with every problem. */
export function parseScenario(file: string, text: string, findRig: RigFinder): Scenario {
  const reader = new TaskReader(file, text, scenarioSchema, findRig);
  const { data, rig } = reader;
  const start = reader.board(['start'], {}, data.start);
  const solution = reader.board(['solution'], start, data.solution);
  const others = data.alsoPasses.map(({ name, changes: values }, index) => ({
    name,
    board: reader.board(['alsoPasses', index, 'changes'], start, values),
    fails: [],
  }));
  const mistakes = data.mistakes.map(({ name, changes: values, fails }, index) => ({
    name,
    board: reader.board(['mistakes', index, 'changes'], solution, values),
    fails,
  }));
  reader.shown(data.show);
  reader.uniqueIds(['checks'], data.checks);
  reader.uniqueIds(['mistakes'], data.mistakes);
  data.checks.forEach(({ claim }, index) => {
    reader.claim(['checks', index, 'claim'], claim);
  });
  reader.source(['follow'], data.follow);
  const addresses = [...controls(rig).keys()];
  data.open.forEach((pattern, index) => {
    if (addresses.some((address) => matches(pattern, address))) return;
    const expected = 'a pattern that means some control of the rig';
    reader.note(['open', index], [{ at: [], expected, found: `"${pattern}"` }]);
  });
  const checkIds = data.checks.map(({ id }) => id);
  data.mistakes.forEach(({ fails }, index) => {
    for (const id of fails.filter((one) => !checkIds.includes(one))) {
      const expected = `one of the checks ${checkIds.join(', ')}`;
      reader.note(['mistakes', index, 'fails'], [{ at: [], expected, found: `"${id}"` }]);
    }
  });
  reader.finish();
  return {
    ...data,
    rig,
    start,
    solution,
    proofs: [{ name: 'solution', board: solution, fails: [] }, ...others, ...mistakes],
  };
}
