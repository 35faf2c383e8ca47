import {
  type Answer,
  boardOf,
  movesBetween,
  type Question,
  type Scenario,
} from '../../../../simulator/index.ts';
import { canonicalText } from '../../../class/canonical-text.ts';
import type { LogEvent } from '../../../class/interaction.ts';

const LONGEST = 160;

/** What was done between two answers to a task, as the log has it: one event for each control that stands elsewhere. */
export function moveEvents(
  item: string,
  task: Scenario | Question,
  before: Answer | undefined,
  after: Answer | undefined,
  at: number,
): LogEvent[] {
  if (!('checks' in task)) {
    const to = after === undefined ? '' : canonicalText(after).slice(0, LONGEST);
    return [{ at, item, what: 'answer.change', to }];
  }
  const [from, to] = [before, after].map((answer) =>
    boardOf(task.id, task.rig, answer?.kind === 'board' ? answer.board : {}),
  );
  if (!from || !to) return [];
  return movesBetween(task.rig, from, to).map(({ control, to: value }) => ({
    at,
    item,
    what: 'control.set',
    of: control.address.slice(0, LONGEST),
    to: typeof value === 'number' && !Number.isFinite(value) ? '-inf' : value,
  }));
}
