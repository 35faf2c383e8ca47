import type { Assignment, AssignmentItem } from '../../../class/assignment.ts';
import type { Work } from '../../../class/work.ts';
import type { WorkEvent } from '../../../class/work-machine.ts';

/** What a part of the page needs to work on one item. */
export interface WorkHand {
  readonly assignment: Assignment;
  readonly item: AssignmentItem;
  readonly work: Work;
  readonly send: (event: WorkEvent) => void;
}
