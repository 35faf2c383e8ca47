import {
  levelAt,
  type Owner,
  ownerLabel,
  part,
  type Rig,
  stripTypeOf,
} from '../../../simulator/index.ts';
import { levelText } from '../../text/index.ts';
import { Light } from './LitWires.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props {
  owners: readonly Owner[];
  scene: Scene;
  hands: Hands | undefined;
}

const ACROSS = 'M0 6h28';

/** What is folded away, each with the level at its end, lit by what is followed. A click opens it in the sheet. */
export function FoldedOwners({ owners, scene, hands }: Props) {
  const { setup, solution, scale } = scene;
  if (owners.length === 0) return null;
  return (
    <ul class="folded" aria-label="Folded parts of the desk">
      {owners.map((owner) => {
        const end = endOf(setup.rig, owner);
        return (
          <li key={owner}>
            <button type="button" disabled={!hands} onClick={() => hands?.open(owner)}>
              <svg width={28} height={12} aria-hidden="true">
                <path class="wire" d={ACROSS} />
                <Light lines={[{ d: ACROSS, place: end }]} scene={scene} />
              </svg>
              {ownerLabel(setup.rig, owner)}
              <span class="folded-level">{levelText(levelAt(solution, end), 1, scale)}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}

/** The place where something of a desk ends: behind the last stage of a strip, or what a bus gives out. */
function endOf(rig: Rig, owner: Owner): string {
  const strip = rig.desk.strips.find(({ id }) => part('desk', id) === owner);
  const last = strip && stripTypeOf(rig, strip).stages.at(-1);
  return part(owner, last ?? 'out');
}
