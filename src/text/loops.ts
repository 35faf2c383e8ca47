import { type Address, ownerOf, type Rig, type Ring } from '../../simulator/index.ts';
import { ownerName } from './owners.ts';
import { sentence } from './sentence.ts';
import { signed } from './signed.ts';

/** A loop as it is told: its places in signal order, and its gain once round. */
type ToldLoop = Omit<Ring, 'worst'>;

/** {@link loopText} as a sentence of its own. */
export const loopSentence = (rig: Rig, loop: ToldLoop): string => sentence(loopText(rig, loop));

/** What a loop is and what becomes of it: `A → B feed one another in a loop, −6.0 dB once round: …`. */
export function loopText(rig: Rig, { places, gain, stable }: ToldLoop): string {
  const gainRound = `${signed(gain)} dB once round`;
  const grows = 'what circulates grows, and there is no level to give';
  // Rings with stages in common add up: each may lose level while all together gain it.
  const together = gain < 0 ? 'together with the other ways round it, ' : '';
  const fate = stable ? 'what circulates dies away' : `${together}${grows}`;
  return `${ringText(rig, places)}, ${gainRound}: ${fate}`;
}

/** The owners of a ring, each once, in signal order. */
function ringText(rig: Rig, places: readonly Address[]): string {
  const owners = [...new Set(places.map(ownerOf))].map((owner) => ownerName(rig, owner));
  return owners.length === 1
    ? `${owners[0]} feeds itself in a loop`
    : `${owners.join(' → ')} feed one another in a loop`;
}
