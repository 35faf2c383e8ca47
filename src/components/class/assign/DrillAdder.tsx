import { useState } from 'preact/hooks';
import {
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  type DrillConcept,
  type DrillLevel,
} from '../../../../simulator/index.ts';
import type { AssignmentEvent } from '../../../class/assignment-machine.ts';
import { DRILL_NAMES } from '../../../text/drill-names.ts';
import { newSeed } from '../../new-seed.ts';
import { wantedId } from './catalogue.ts';

interface Props {
  send: (event: AssignmentEvent) => void;
}

/** Puts a drill into the assignment: what it trains, how hard it is, and who gets which. */
export function DrillAdder({ send }: Props) {
  const [concept, setConcept] = useState<DrillConcept>(DRILL_CONCEPTS[0]);
  const [level, setLevel] = useState<DrillLevel>(1);
  const [isEach, setEach] = useState(false);
  return (
    <form
      class="drill-adder"
      onSubmit={(event) => {
        event.preventDefault();
        const seeds = isEach
          ? ({ policy: 'each' } as const)
          : ({ policy: 'same', seed: newSeed() } as const);
        const task = { kind: 'drill', concept, level, seeds } as const;
        send({ type: 'item.add', wanted: wantedId(task), task });
      }}
    >
      <label>
        Concept{' '}
        <select
          value={concept}
          onChange={({ currentTarget: { value } }) =>
            setConcept(DRILL_CONCEPTS.find((one) => one === value) ?? concept)
          }
        >
          {DRILL_CONCEPTS.map((one) => (
            <option key={one} value={one}>
              {DRILL_NAMES[one]}
            </option>
          ))}
        </select>
      </label>
      <label>
        Level{' '}
        <select
          value={level}
          onChange={({ currentTarget: { value } }) =>
            setLevel(DRILL_LEVELS.find((one) => String(one) === value) ?? level)
          }
        >
          {DRILL_LEVELS.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </select>
      </label>
      <label>
        Who gets which{' '}
        <select
          value={isEach ? 'each' : 'same'}
          onChange={({ currentTarget: { value } }) => setEach(value === 'each')}
        >
          <option value="same">the same for all</option>
          <option value="each">one for each, from their code</option>
        </select>
      </label>
      <button type="submit">Add the drill</button>
    </form>
  );
}
