import { useId, useState } from 'preact/hooks';
import {
  type Address,
  controls,
  matches,
  movesBetween,
  type Owner,
} from '../../../../simulator/index.ts';
import { capitalised, counted, ownerName } from '../../../text/index.ts';
import type { StepProps } from './own-step.ts';

const ALL = '**';
const MOST_PATTERNS = 40;
const patternOf = (owner: Owner): string => `${owner}.**`;

const SECTIONS: Readonly<Record<string, string>> = {
  box: 'The box',
  converter: 'The converter',
  desk: 'The desk',
  rack: 'The rack',
  out: 'What the outputs hear',
  bay: 'The bay',
};

/** What a learner may move: all that belongs to an owner, or what a pattern means. Everything else is locked. */
export function OwnLocks({ own, rig, boards, edit }: StepProps) {
  const addresses = [...controls(rig).values()];
  const byOwner = Map.groupBy(addresses, ({ owner }) => owner);
  const bySection = Map.groupBy([...byOwner.keys()], (owner) => owner.split('.')[0] ?? '');
  const moved = new Set(
    movesBetween(rig, boards.start, boards.solution).map(({ control }) => control.owner),
  );
  const owned = new Set([...byOwner.keys()].map(patternOf));
  const others = own.open.filter((pattern) => pattern !== ALL && !owned.has(pattern));
  const isFull = own.open.length >= MOST_PATTERNS;
  const set = (pattern: string, isOpen: boolean) => edit({ type: 'lock.set', pattern, isOpen });
  const missing = [...moved].filter((owner) => !own.open.includes(patternOf(owner)));
  return (
    <>
      <p class="prose">
        Open what a learner may move; a locked control that was moved fails the task. Open more than
        the solution needs, or the locks give it away.
      </p>
      <div class="buttons">
        <button
          type="button"
          aria-disabled={missing.length === 0}
          onClick={() => {
            for (const owner of missing) set(patternOf(owner), true);
          }}
        >
          Open what the solution moves
        </button>
        <label>
          <input
            type="checkbox"
            checked={own.open.includes(ALL)}
            onChange={({ currentTarget }) => set(ALL, currentTarget.checked)}
          />{' '}
          Everything may be moved
        </label>
      </div>
      {[...bySection].map(([section, owners]) => (
        <fieldset key={section} class="own-owners">
          <legend>{SECTIONS[section] ?? section}</legend>
          {owners.map((owner) => {
            const pattern = patternOf(owner);
            const isOpen = own.open.includes(pattern);
            return (
              <label key={owner}>
                <input
                  type="checkbox"
                  checked={isOpen}
                  disabled={!isOpen && isFull}
                  onChange={({ currentTarget }) => set(pattern, currentTarget.checked)}
                />{' '}
                {capitalised(ownerName(rig, owner))}{' '}
                <span class="soft">
                  {counted(byOwner.get(owner)?.length ?? 0, 'control')}
                  {moved.has(owner) && ', moved in the solution'}
                </span>
              </label>
            );
          })}
        </fieldset>
      ))}
      <PatternField
        addresses={addresses.map(({ address }) => address)}
        others={others}
        isFull={isFull}
        onSet={set}
      />
    </>
  );
}

interface PatternProps {
  addresses: readonly Address[];
  others: readonly string[];
  isFull: boolean;
  onSet: (pattern: string, isOpen: boolean) => void;
}

/** Opens what a pattern means: `desk.*.fader` is every fader of the desk. */
function PatternField({ addresses, others, isFull, onSet }: PatternProps) {
  const [text, setText] = useState('');
  const [isBad, setBad] = useState(false);
  const id = useId();
  const meant = (pattern: string) => addresses.filter((one) => matches(pattern, one)).length;
  return (
    <form
      class="buttons"
      onSubmit={(event) => {
        event.preventDefault();
        const pattern = text.trim();
        const isNone = meant(pattern) === 0;
        setBad(isNone);
        if (isNone) return;
        onSet(pattern, true);
        setText('');
      }}
    >
      {others.length > 0 && (
        <ul class="own-patterns">
          {others.map((pattern) => (
            <li key={pattern}>
              <code>{pattern}</code> {counted(meant(pattern), 'control')}{' '}
              <button
                type="button"
                aria-label={`Lock ${pattern} again`}
                onClick={() => onSet(pattern, false)}
              >
                Lock again
              </button>
            </li>
          ))}
        </ul>
      )}
      <label for={id}>Or a pattern of addresses</label>
      <input
        id={id}
        type="text"
        value={text}
        placeholder="desk.*.fader"
        autocomplete="off"
        spellcheck={false}
        aria-invalid={isBad}
        aria-describedby={`${id}-how`}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <button type="submit" disabled={isFull}>
        Open
      </button>
      <p id={`${id}-how`} class={isBad ? 'problem' : 'soft'} role={isBad ? 'alert' : undefined}>
        {isBad && 'No control of this room has such an address. '}* stands for one step of an
        address, ** at the end for all that follow: desk.*.fader is every fader of the desk.
      </p>
    </form>
  );
}
