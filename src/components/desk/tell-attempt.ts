import { askToStay, noted } from '../../progress/browser-memory.ts';
import type { Outcome } from '../../progress/change-record.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { theMemory } from './use-keeping.ts';

/**
 * Has an attempt remembered. After the first task that was ever passed the browser is asked not to drop
 * what is kept: from then on there is something to lose. What is not kept is told where drafts are.
 */
export async function tellAttempt(name: TaskName, outcome: Outcome): Promise<void> {
  const attempt = { name, made: { ...outcome, at: Date.now() } };
  // It is opened before the note is made, so that what it finds noted is not this.
  const opening = theMemory();
  noted.add(attempt);
  try {
    const told = await (await opening)?.attempted(name, outcome, attempt.made.at);
    noted.remove(attempt);
    if (told?.isFirstPass) await askToStay();
  } catch {
    // The same refusal meets the draft, and the learner is told there.
  }
}
