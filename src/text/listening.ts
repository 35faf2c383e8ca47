import { type Address, type Db, type Level, ownerOf, type Rig } from '../../simulator/index.ts';
import { ownerName } from './owners.ts';
import { gainText } from './quantities.ts';
import { sentence } from './sentence.ts';

/** What one hears at an output while it plays: `You hear Capture.` */
export function hearingSentence(
  rig: Rig,
  { place, level }: { place: Address; level: Level },
): string {
  const name = ownerName(rig, ownerOf(place));
  if (level === undefined) {
    return sentence(
      `${name} is muted: a loop that grows without end reaches it, and is not played`,
    );
  }
  return sentence(
    level === -Infinity ? `you hear nothing: no signal reaches ${name}` : `you hear ${name}`,
  );
}

/** That it is turned down for the ears, and by how much; nothing where it is not. */
export const guardSentence = (guard: Db): string =>
  guard < 0
    ? `This is louder than the page plays anything. It is turned down by ${gainText(-guard).replace('+', '')}.`
    : '';
