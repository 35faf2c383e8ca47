import { TaskDesk } from '../desk/TaskDesk.tsx';
import { WHOLE_ROOM } from '../desk/whole-room.tsx';
import type { MadeDrill } from './drill-worker.ts';

/** A drill to be played: a task with its par, drawn with box and rack. */
export const DrillTask = ({ made: { scenario, par } }: { made: MadeDrill }) => (
  <TaskDesk key={scenario.id} scenario={scenario} par={par} room={WHOLE_ROOM} />
);
