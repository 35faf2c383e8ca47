import { openOwners } from '../../drawing/desk-parts.ts';
import type { Room } from './Desk.tsx';
import { DeskPicture } from './DeskPicture.tsx';
import { laterView } from './later-view.tsx';

/** A desk drawn with box and rack, with buttons for what of it is drawn. Meanwhile the desk stands alone. */
export const WHOLE_ROOM: Room = {
  Picture: laterView(
    'The box and the rack',
    async () => (await import('./RoomPicture.tsx')).RoomPicture,
    ({ desk, scene, hands, marks }) => (
      <DeskPicture drawing={desk} scene={scene} hands={hands} marks={marks} />
    ),
  ),
  Buttons: laterView(undefined, async () => (await import('./SectionButtons.tsx')).SectionButtons),
  openOwners,
};
