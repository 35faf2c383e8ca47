import * as z from 'zod/mini';
import {
  type Board,
  boardData,
  boardOf,
  type Check,
  type Claim,
  checkSchema,
  fileBoardSchema,
  grade,
  movesBetween,
  type Rig,
  rigSchema,
  type Scenario,
  type scenarioSchema,
} from '../../simulator/index.ts';
import type { AssignedTask } from './assignment.ts';
import { canonicalText } from './canonical-text.ts';
import { slug } from './fields.ts';

const text = (longest: number) => z.string().check(z.maxLength(longest));

/** A scenario while an instructor makes it. Boards are whole, as files write them; fields may still be empty. */
export const ownDraftSchema = z.strictObject({
  id: slug,
  revision: z.int().check(z.gte(1), z.lte(1_000_000)),
  /** Id of the item that it stands in already; nothing for a new one. */
  item: z.optional(slug),
  title: text(160),
  concept: slug,
  /** Paragraphs, with an empty line between them. */
  brief: text(6000),
  /** One a line. */
  hints: text(4000),
  debrief: text(1200),
  /** Id of a rig of the course, or of `ownRig`. */
  rig: slug,
  ownRig: z.optional(rigSchema),
  /** The source that is lit at the start. */
  follow: text(60),
  start: fileBoardSchema,
  solution: fileBoardSchema,
  /** Patterns of what may be moved. */
  open: z.array(text(160)).check(z.maxLength(40)),
  checks: z.array(checkSchema).check(z.maxLength(20)),
  mistakes: z
    .array(z.strictObject({ name: text(160), board: fileBoardSchema }))
    .check(z.maxLength(12)),
});
export type OwnDraft = z.output<typeof ownDraftSchema>;
type OwnTask = Extract<AssignedTask, { kind: 'own' }>;

/** The boards of a draft, read for its rig. @throws InputError where one does not fit the rig. */
export const ownBoards = ({ start, solution, mistakes }: OwnDraft, rig: Rig) => ({
  start: boardOf('The start', rig, start),
  solution: boardOf('The solution', rig, solution),
  mistakes: mistakes.map(({ name, board }) => ({
    name,
    board: boardOf(`The mistake “${name}”`, rig, board),
  })),
});

/** Ids of the checks that a board fails. */
export const failedBy = (rig: Rig, checks: readonly Check[], board: Board): string[] =>
  grade({ rig, checks, open: ['**'], start: board }, board)
    .results.filter(({ holds }) => !holds)
    .map(({ check }) => check.id);

/**
 * What travels in the assignment. Whether it works is for `proveOwn` to say.
 *
 * @throws InputError where a board does not fit the rig.
 */
export function ownTaskOf(draft: OwnDraft, rig: Rig): OwnTask {
  const { id, revision, title, concept, brief, hints, debrief, follow, open, checks } = draft;
  const { start, solution, mistakes } = ownBoards(draft, rig);
  const scenario: z.output<typeof scenarioSchema> = {
    id,
    revision,
    title: title.trim(),
    rig: rig.id,
    kind: 'patch',
    concept,
    brief: partsOf(brief, /\n\s*\n/),
    follow,
    start: boardData(start),
    open: [...open],
    checks: [...checks],
    hints: partsOf(hints, /\n/),
    debrief: debrief.trim(),
    solution: changesBetween(rig, start, solution),
    alsoPasses: [],
    mistakes: mistakes.map(({ name, board }, index) => ({
      id: `mistake-${index + 1}`,
      name: name.trim(),
      changes: changesBetween(rig, solution, board),
      fails: failedBy(rig, checks, board),
    })),
  };
  return { kind: 'own', scenario, ...(draft.ownRig ? { rig: draft.ownRig } : {}) };
}

/** The draft of a scenario that stands in an assignment already. @param item id of its item. */
export function ownDraftOf(
  item: string,
  { scenario: data, rig: ownRig }: OwnTask,
  scenario: Scenario,
): OwnDraft {
  return {
    id: scenario.id,
    revision: scenario.revision,
    item,
    title: scenario.title,
    concept: scenario.concept,
    brief: scenario.brief.join('\n\n'),
    hints: scenario.hints.join('\n'),
    debrief: scenario.debrief,
    rig: scenario.rig.id,
    ...(ownRig ? { ownRig } : {}),
    follow: scenario.follow,
    start: boardData(scenario.start),
    solution: boardData(scenario.solution),
    open: [...data.open],
    checks: [...scenario.checks],
    mistakes: scenario.proofs
      .filter(({ fails }) => fails.length > 0)
      .map(({ name, board }) => ({ name, board: boardData(board) })),
  };
}

const partsOf = (words: string, border: RegExp): string[] =>
  words
    .split(border)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** Where the controls stand that another board has elsewhere, as a file writes them: with those at their defaults. */
const changesBetween = (rig: Rig, from: Board, to: Board) =>
  boardData(
    Object.fromEntries(
      movesBetween(rig, from, to).map(({ control, to: value }) => [control.address, value]),
    ),
  );

/** The words that tell one claim from another. */
export const claimKey = (claim: Claim): string => canonicalText(claim);

/** A claim as a check with an id that no other of the list has. */
export function checkOf(claim: Claim, others: readonly Check[]): Check {
  const named = 'source' in claim ? `${claim.kind}-${claim.source}-${claim.output}` : claim.kind;
  const base = named
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 50);
  const taken = new Set(others.map(({ id }) => id));
  let id = base;
  for (let number = 2; taken.has(id); number++) id = `${base}-${number}`;
  return { id, weight: 1, claim };
}
