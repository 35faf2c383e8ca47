import { useId, useMemo, useState } from 'preact/hooks';
import { type Board, forgottenMoves, movesBetween } from '../../../../simulator/index.ts';
import { failedBy } from '../../../class/own-draft.ts';
import { claimSentence, moveText } from '../../../text/index.ts';
import { OwnDesk } from './OwnDesk.tsx';
import type { StepProps } from './own-step.ts';

const MOST_MISTAKES = 12;
const LONGEST = 160;

/** Likely mistakes: boards that go wrong in a way that one can foresee, each with the checks that it fails. */
export function OwnMistakes({ own, rig, boards, edit }: StepProps) {
  const { checks, mistakes } = own;
  const { start, solution } = boards;
  const failsOf = (board: Board): string[] => {
    const failed = failedBy(rig, checks, board);
    return checks
      .filter(({ id }) => failed.includes(id))
      .map(({ claim }) => claimSentence(rig, claim));
  };
  const forgotten = useMemo(
    () =>
      movesBetween(rig, solution, start).flatMap((move) => {
        const found = forgottenMoves(rig, start, solution).find(
          ({ address }) => address === move.control.address,
        );
        if (!found || failedBy(rig, checks, found.board).length === 0) return [];
        const name = `Left as it was: ${moveText(rig, move)}`.slice(0, LONGEST);
        return [{ name, board: found.board }];
      }),
    [rig, start, solution, checks],
  );
  const offered = forgotten.filter(
    ({ board }) => !boards.mistakes.some((one) => movesBetween(rig, one.board, board).length === 0),
  );
  const isFull = mistakes.length >= MOST_MISTAKES;
  return (
    <>
      <p class="prose">
        A mistake shows that the checks tell right from wrong, and stands in the answer key. Choose
        from what may be forgotten, or set one by hand.
      </p>
      <ul class="own-mistakes">
        {boards.mistakes.map(({ name, board }, index) => {
          const fails = failsOf(board);
          return (
            <li key={index}>
              <label>
                Name
                <input
                  type="text"
                  maxLength={LONGEST}
                  value={name}
                  onInput={({ currentTarget }) =>
                    edit({ type: 'mistake.name', mistake: index, name: currentTarget.value })
                  }
                />
              </label>
              <button
                type="button"
                aria-label={`Remove the mistake ${name}`}
                onClick={() => edit({ type: 'mistake.remove', mistake: index })}
              >
                Remove
              </button>
              <p class={fails.length > 0 ? 'soft' : 'problem'}>
                {fails.length > 0
                  ? `Fails: ${fails.join(' ')}`
                  : 'It fails no check that is chosen.'}
              </p>
            </li>
          );
        })}
      </ul>
      {offered.length > 0 && !isFull && (
        <>
          <h4>What may be forgotten</h4>
          <ul class="own-mistakes">
            {offered.map(({ name, board }) => (
              <li key={name}>
                {name}{' '}
                <button
                  type="button"
                  aria-label={`Add: ${name}`}
                  onClick={() => edit({ type: 'mistake.add', name, board })}
                >
                  Add
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {!isFull && (
        <ByHand
          {...{ own, rig, boards, edit }}
          failsOf={failsOf}
          onAdd={(name, board) => edit({ type: 'mistake.add', name, board })}
        />
      )}
    </>
  );
}

interface ByHandProps extends StepProps {
  failsOf: (board: Board) => readonly string[];
  onAdd: (name: string, board: Board) => void;
}

/** A mistake that is set on a desk, from the solution on. */
function ByHand({ rig, boards, failsOf, onAdd }: ByHandProps) {
  const [board, setBoard] = useState(boards.solution);
  const [name, setName] = useState('');
  /** Rises when a mistake was added, so that the next one begins from the solution. */
  const [turn, setTurn] = useState(0);
  const id = useId();
  const fails = failsOf(board);
  const isAble = fails.length > 0 && name.trim() !== '';
  return (
    <>
      <h4>Set one by hand</h4>
      <p class="prose">The desk stands as in the solution. Do what goes wrong, and name it.</p>
      <OwnDesk key={turn} id="own-mistake" rig={rig} board={boards.solution} onBoard={setBoard} />
      <p id={`${id}-fails`} role="status">
        {fails.length > 0 ? `Fails: ${fails.join(' ')}` : 'It fails no check that is chosen.'}
      </p>
      <form
        class="buttons"
        onSubmit={(event) => {
          event.preventDefault();
          if (!isAble) return;
          onAdd(name.trim(), board);
          setName('');
          setBoard(boards.solution);
          setTurn(turn + 1);
        }}
      >
        <label for={id}>Name of the mistake</label>
        <input
          id={id}
          type="text"
          maxLength={LONGEST}
          value={name}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
        <button type="submit" aria-disabled={!isAble} aria-describedby={`${id}-fails`}>
          Add this mistake
        </button>
      </form>
    </>
  );
}
