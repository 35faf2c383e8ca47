import { drillTask } from '../../progress/practice.ts';
import type { DrillAsk } from '../../share/drill-link.ts';
import { TaskDesk } from '../desk/TaskDesk.tsx';
import { WHOLE_ROOM } from '../desk/whole-room.tsx';
import type { MadeDrill } from './drill-worker.ts';

interface Props {
  ask: DrillAsk;
  made: MadeDrill;
}

/** A drill to be played: a task with its par, drawn with box and rack, kept with the others of its concept and level. */
export const DrillTask = ({ ask: { concept, level, seed }, made: { scenario } }: Props) => (
  <TaskDesk
    key={scenario.id}
    scenario={scenario}
    name={drillTask(concept, level)}
    seed={seed}
    room={WHOLE_ROOM}
  />
);
