import { claimSentence, optionsOf } from '../text/index.ts';
import type { GivenTask } from './given-task.ts';

/** What each part of a task asks, by its id. */
export function partWords(given: GivenTask): Readonly<Record<string, string>> {
  if (given.kind === 'question') {
    const { task } = given;
    // A part is the question itself, or one of its options where each is asked by itself.
    return { ...optionWords(given), [task.id]: task.ask };
  }
  const { rig, checks } = given.task;
  return Object.fromEntries(checks.map(({ id, claim }) => [id, claimSentence(rig, claim)]));
}

/** What each option says, by its id; empty where a task has none. */
export const optionWords = (given: GivenTask): Readonly<Record<string, string>> =>
  given.kind === 'question'
    ? Object.fromEntries(optionsOf(given.task).map(({ id, text }) => [id, text]))
    : {};
