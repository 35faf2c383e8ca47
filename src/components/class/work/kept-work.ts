import { checkDocument, InputError, readJson } from '../../../../simulator/index.ts';
import { type Assignment, assignmentText, parseAssignment } from '../../../class/assignment.ts';
import { type Work, workSchema } from '../../../class/work.ts';
import type { BenchRecord } from '../../../progress/bench-record.ts';
import { theMemory } from '../../desk/use-keeping.ts';
import { GIVEN, givenRoom, WORK } from '../rooms.ts';

/** Reads work as it was kept. @throws InputError for a text that is none. */
export const readWork = (text: string): Work =>
  checkDocument(readJson('The work that was kept', text), workSchema);

/** An assignment that was opened in this browser, and the work on it, newest first. */
export interface KeptAssignment {
  readonly assignment: Assignment;
  readonly at: number;
  readonly work: readonly { readonly learner: string; readonly at: number }[];
}

/** Keeps an assignment that was opened, so that it can be gone on with. Where nothing is kept, that is told elsewhere. */
export async function keepAssignment(assignment: Assignment): Promise<void> {
  const memory = await theMemory();
  await memory
    ?.keepBench(givenRoom(assignment.id), assignmentText(assignment), undefined)
    .catch(() => undefined);
}

/** All assignments that were opened in this browser, the one that was last worked on first. */
export async function keptAssignments(): Promise<KeptAssignment[]> {
  const memory = await theMemory();
  const contents = await memory?.contents().catch(() => undefined);
  const benches = contents?.records.benches ?? [];
  const work = newestOf(benches, WORK, readWork);
  return newestOf(benches, GIVEN, (text) => parseAssignment('An assignment', text))
    .map(({ read: assignment, at }) => {
      const ofThis = work
        .filter(({ read }) => read.assignment === assignment.id)
        .map(({ read, at: left }) => ({ learner: read.learner, at: left }));
      return { assignment, work: ofThis, at: Math.max(at, ...ofThis.map((one) => one.at)) };
    })
    .sort((one, other) => other.at - one.at);
}

function newestOf<T>(
  benches: readonly BenchRecord[],
  beginning: string,
  read: (text: string) => T,
): { readonly read: T; readonly at: number }[] {
  return benches
    .filter(({ room }) => room.startsWith(beginning))
    .flatMap(({ drafts: [newest] }) => {
      if (!newest) return [];
      try {
        return [{ read: read(newest.text), at: newest.at }];
      } catch (error) {
        // It stays where it is, and is refused when it is opened.
        if (error instanceof InputError) return [];
        throw error;
      }
    })
    .sort((one, other) => other.at - one.at);
}
