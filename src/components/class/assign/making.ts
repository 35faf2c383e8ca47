import { InputError, parseScenario } from '../../../../simulator/index.ts';
import type { AssignmentItem } from '../../../class/assignment.ts';
import { type OwnDraft, ownDraftOf } from '../../../class/own-draft.ts';
import { newOwn } from '../../../class/own-edit.ts';
import { newSeed } from '../../new-seed.ts';
import { fetchCourse } from '../fetch-course.ts';

/** All that making a scenario needs, so that it is fetched in one. */

export { OwnScenario } from './OwnScenario.tsx';

/** A scenario to go on with, or why there is none. */
export type Begun = { readonly own: OwnDraft } | { readonly problems: readonly string[] };

const NOT_FETCHED = [
  'The rooms of the course could not be fetched. Try again when you are online.',
];

/** A new scenario in the first room of the bench. @param concept what it trains, until somebody says otherwise. */
export async function beginOwn(concept: string): Promise<Begun> {
  try {
    const { bench, rigs } = await fetchCourse();
    const rig = rigs.get(bench[0]?.rig ?? '');
    if (!rig) return { problems: ['The course has no room.'] };
    return { own: newOwn(`own-${newSeed()}`, concept, rig, {}, false) };
  } catch {
    return { problems: NOT_FETCHED };
  }
}

/** The scenario of an item, to be changed. It gets a revision of its own, since what it asks may be another thing then. */
export async function openOwn({ id, task }: AssignmentItem): Promise<Begun> {
  if (task.kind !== 'own') return { problems: ['This task is not one of your own.'] };
  try {
    const { rigs } = await fetchCourse();
    const scenario = parseScenario('The scenario', JSON.stringify(task.scenario), (rig) =>
      task.rig?.id === rig ? task.rig : rigs.get(rig),
    );
    return { own: { ...ownDraftOf(id, task, scenario), revision: scenario.revision + 1 } };
  } catch (error) {
    return { problems: error instanceof InputError ? error.message.split('\n') : NOT_FETCHED };
  }
}
