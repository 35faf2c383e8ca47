import { DeskPicture } from '../desk/DeskPicture.tsx';
import { laterView } from '../desk/later-view.tsx';
import { TaskDesk } from '../desk/TaskDesk.tsx';
import type { MadeDrill } from './drill-worker.ts';

const RoomPicture = laterView(
  'The box and the rack',
  async () => (await import('../desk/RoomPicture.tsx')).RoomPicture,
  ({ desk, scene, hands }) => <DeskPicture drawing={desk} scene={scene} hands={hands} />,
);

/** A drill to be played: a task with its par, drawn with box and rack. */
export function DrillTask({ made: { scenario, par } }: { made: MadeDrill }) {
  return <TaskDesk key={scenario.id} scenario={scenario} par={par} Room={RoomPicture} />;
}
