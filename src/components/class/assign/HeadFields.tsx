import type { AssignmentDraft } from '../../../class/assignment-draft.ts';
import type { AssignmentEvent } from '../../../class/assignment-machine.ts';

interface Props {
  draft: AssignmentDraft;
  send: (event: AssignmentEvent) => void;
}

const SOLUTIONS = [
  ['after-hand-in', 'when a learner has handed in and closed their work'],
  ['after-pass', 'when the task was passed'],
  ['never', 'never'],
] as const;

const wholeIn = (text: string, least: number, most: number): number | undefined => {
  const value = Number(text);
  return Number.isInteger(value) && value >= least && value <= most ? value : undefined;
};

/** What an assignment says besides its items. */
export function HeadFields({ draft, send }: Props) {
  const set = (head: Partial<AssignmentDraft>) => send({ type: 'head.set', head });
  const { title, note, due, passPercent, attempts, hints, solutions, order } = draft;
  return (
    <div class="fields">
      <label class="field-wide">
        Title
        <input
          type="text"
          maxLength={120}
          value={title}
          onInput={({ currentTarget }) => set({ title: currentTarget.value })}
        />
      </label>
      <label class="field-wide">
        Note to the class
        <textarea
          rows={3}
          maxLength={4000}
          value={note}
          onInput={({ currentTarget }) => set({ note: currentTarget.value })}
        />
      </label>
      <label>
        Wanted by (only said)
        <input
          type="date"
          value={due}
          onInput={({ currentTarget }) => set({ due: currentTarget.value })}
        />
      </label>
      <label>
        Pass mark, percent of all points
        <input
          type="number"
          min={0}
          max={100}
          value={passPercent}
          onInput={({ currentTarget }) => {
            const value = wholeIn(currentTarget.value, 0, 100);
            if (value !== undefined && currentTarget.value !== '') set({ passPercent: value });
          }}
        />
      </label>
      <label>
        Attempts for each task
        <input
          type="number"
          min={1}
          max={99}
          placeholder="without end"
          value={attempts ?? ''}
          onInput={({ currentTarget }) => {
            const value = wholeIn(currentTarget.value, 1, 99);
            if (value !== undefined) set({ attempts: value });
            else if (currentTarget.value === '') send({ type: 'attempts.free' });
          }}
        />
      </label>
      <label>
        Order of the tasks
        <select
          value={order}
          onChange={({ currentTarget: { value } }) =>
            set({ order: value === 'shuffled' ? 'shuffled' : 'listed' })
          }
        >
          <option value="listed">as listed</option>
          <option value="shuffled">another for each learner</option>
        </select>
      </label>
      <label>
        Solutions are shown
        <select
          value={solutions}
          onChange={({ currentTarget: { value } }) => {
            const found = SOLUTIONS.find(([one]) => one === value);
            if (found) set({ solutions: found[0] });
          }}
        >
          {SOLUTIONS.map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <label class="field-check">
        <input
          type="checkbox"
          checked={hints}
          onChange={({ currentTarget }) => set({ hints: currentTarget.checked })}
        />
        Hints may be asked for
      </label>
    </div>
  );
}
