import type { AssignedTask } from '../../../class/assignment.ts';
import { newSeed } from '../../new-seed.ts';

type Seeds = Extract<AssignedTask, { kind: 'drill' }>['seeds'];

interface Props {
  seeds: Seeds;
  title: string;
  onChange: (seeds: Seeds) => void;
}

/** Which drill each learner gets. */
export const SeedPolicy = ({ seeds, title, onChange }: Props) => (
  <select
    aria-label={`Who gets which of ${title}`}
    value={seeds.policy}
    onChange={({ currentTarget: { value } }) =>
      onChange(value === 'each' ? { policy: 'each' } : { policy: 'same', seed: newSeed() })
    }
  >
    <option value="same">the same for all</option>
    <option value="each">one for each, from their code</option>
  </select>
);
