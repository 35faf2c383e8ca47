import { InputError, movesBetween, parseScenario, type Rig } from '../../simulator/index.ts';
import { scenarioComplaints } from '../course/check-scenario.ts';
import type { AssignedTask } from './assignment.ts';
import { type OwnDraft, ownBoards, ownTaskOf } from './own-draft.ts';

/** The fewest mistakes of a scenario: a check that no mistake fails has not shown that it tells anything apart. */
export const LEAST_MISTAKES = 2;

/** What a scenario still lacks, by the step in which it is made. */
export type OwnGap = 'title' | 'brief' | 'debrief' | 'solution' | 'open' | 'checks' | 'mistakes';

/** What a draft lacks before it can be proven at all, in the order of the steps. */
export function ownGaps(draft: OwnDraft, rig: Rig): OwnGap[] {
  const { title, brief, debrief, open, checks, mistakes } = draft;
  const { start, solution } = ownBoards(draft, rig);
  const isEmpty = (words: string) => words.trim() === '';
  const gaps: readonly (readonly [OwnGap, boolean])[] = [
    ['solution', movesBetween(rig, start, solution).length === 0],
    ['open', open.length === 0],
    ['checks', checks.length === 0],
    ['mistakes', mistakes.length < LEAST_MISTAKES || mistakes.some(({ name }) => isEmpty(name))],
    ['title', isEmpty(title)],
    ['brief', isEmpty(brief)],
    ['debrief', isEmpty(debrief)],
  ];
  return gaps.flatMap(([gap, isOne]) => (isOne ? [gap] : []));
}

/** What came of the proof of a scenario: a task that can be given out, or what is wrong with it, a line each. */
export type OwnProof =
  | { readonly task: Extract<AssignedTask, { kind: 'own' }> }
  | { readonly problems: readonly string[] };

/**
 * Proves a scenario by the same check that the tasks of the course stand under: its start fails, its solution passes,
 * each mistake fails something, and nothing that is locked has to be moved.
 */
export function proveOwn(draft: OwnDraft, rig: Rig): OwnProof {
  try {
    const task = ownTaskOf(draft, rig);
    const scenario = parseScenario('The scenario', JSON.stringify(task.scenario), (id) =>
      id === rig.id ? rig : undefined,
    );
    const problems = scenarioComplaints(scenario).map(({ what }) => what);
    return problems.length > 0 ? { problems } : { task };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { problems: error.message.split('\n') };
  }
}
