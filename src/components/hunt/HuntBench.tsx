import { useMemo, useState } from 'preact/hooks';
import { HUNT_LEVELS, InputError, type Rig } from '../../../simulator/index.ts';
import {
  HUNT_FRAGMENT,
  type HuntChoice,
  huntLink,
  huntOfLink,
  NEW_HUNT_FRAGMENT,
} from '../../share/hunt-link.ts';
import { levelOfHuntText, scaleIn } from '../../text/index.ts';
import { useLevelUnit } from '../desk/level-unit.ts';
import { UnitChoice } from '../desk/UnitChoice.tsx';
import { useFragment } from '../desk/use-fragment.ts';
import { newSeed } from '../new-seed.ts';
import { HuntRoom } from './HuntRoom.tsx';

/** What stands there before anybody has chosen. */
const FIRST: HuntChoice = { level: 1, seed: 'loft' };

/** Hunts in a room, one after the other: which level, a new one, and the address of each. */
export function HuntBench({ rig }: { rig: Rig }) {
  const [choice, setChoice] = useState(FIRST);
  const [problem, setProblem] = useState<string>();
  const unit = useLevelUnit();
  const scale = useMemo(() => scaleIn(rig, unit), [rig, unit]);

  // The address that the page was opened by may name a hunt, and so may one that is pasted later.
  useFragment((fragment) => {
    if (fragment.startsWith(NEW_HUNT_FRAGMENT)) {
      const level = Number(fragment.slice(NEW_HUNT_FRAGMENT.length));
      // In its place, so that the way back does not ask for yet another one.
      window.location.replace(huntLink({ level, seed: newSeed() }));
    }
    if (!fragment.startsWith(HUNT_FRAGMENT)) return;
    try {
      setChoice(huntOfLink(fragment));
      setProblem(undefined);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setProblem(error.message);
    }
  });
  /** The fragment tells which hunt it is, so that it is there again when the page is loaded anew. */
  const begin = (level: number) => {
    window.location.hash = huntLink({ level, seed: newSeed() });
  };
  return (
    <>
      <div class="desk-bar">
        <label>
          Level
          <select
            value={choice.level}
            onChange={({ currentTarget }) => begin(Number(currentTarget.value))}
          >
            {HUNT_LEVELS.map((_, index) => (
              <option key={index + 1} value={index + 1}>
                {levelOfHuntText(index + 1)}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={() => begin(choice.level)}>
          Another hunt
        </button>
        <UnitChoice unit={unit} />
        <a href={huntLink(choice)}>Link to this hunt</a>
      </div>
      <div role="alert">{problem && <p class="problem">{problem}</p>}</div>
      <HuntRoom rig={rig} choice={choice} scale={scale} />
    </>
  );
}
