import { useMemo, useState } from 'preact/hooks';
import { type Board, lockedControls, type Scenario } from '../../../simulator/index.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { Desk, type Room } from './Desk.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { useBoard } from './use-board.ts';
import { useJudging } from './use-judging.ts';

interface Props {
  scenario: Scenario;
  /** What its progress is kept under; nothing is kept when left out. */
  name?: TaskName | undefined;
  /** Of a task that is another one with each seed: the seed. */
  seed?: string | undefined;
  /** The fewest moves that solve it, where that is known. */
  par?: number | undefined;
  /** Draws the box and the rack around the desk. */
  room?: Room | undefined;
}

/** A scenario with its desk: the brief, the desk, Check and its verdict, hints in steps, the debrief. */
export function TaskDesk({ scenario, name, seed, par, room }: Props) {
  const { rig, title, brief, hints, start, open, show, solution, debrief } = scenario;
  const locked = useMemo(() => lockedControls(rig, open), [rig, open]);
  const board = useBoard({ setup: { rig, board: start }, locked });
  // A walk-through or a quiz on the same page may have the same id.
  const id = `task-${scenario.id}`;
  const [follow, setFollow] = useState(scenario.follow);
  const [hintsShown, setHintsShown] = useState(0);
  const [checked, setChecked] = useState<{ board: Board; attempt: number }>();
  const judging = useJudging();
  const now = board.snapshot.context.setup.board;

  const check = () => {
    setChecked({ board: now, attempt: (checked?.attempt ?? 0) + 1 });
    if (judging.hasFailed) void judging.fetch();
  };
  // What is checked before the code is there gets its verdict as soon as it is.
  const judged = useMemo(() => {
    if (!checked || !judging.there) return undefined;
    const { grade, verdictSentence, VerdictView } = judging.there;
    const verdict = grade(scenario, checked.board);
    return { verdict, sentence: verdictSentence(verdict), VerdictView };
  }, [scenario, checked, judging.there]);
  // The solution gives nothing away once the task was checked.
  const isChecked = checked !== undefined;
  const others = useMemo(
    () => (isChecked ? [{ name: 'one solution', setup: { rig, board: solution } }] : undefined),
    [isChecked, rig, solution],
  );
  return (
    <section class="task" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      {brief.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <Desk
        id={id}
        board={board}
        follow={follow}
        onFollow={setFollow}
        show={show}
        others={others}
        room={room}
      />
      <div class="task-bar">
        <button type="button" class="button-main" onClick={check}>
          Check
        </button>
        {hintsShown < hints.length && (
          <button type="button" onClick={() => setHintsShown(hintsShown + 1)}>
            {hintsShown === 0 ? 'Hint' : 'Next hint'} ({hintsShown + 1} of {hints.length})
          </button>
        )}
        {judged && (
          <button
            type="button"
            onClick={() => board.send({ type: 'setup.load', setup: { rig, board: solution } })}
          >
            Set one solution
          </button>
        )}
      </div>
      <ol class="hints" aria-live="polite">
        {hints.slice(0, hintsShown).map((hint) => (
          <li key={hint}>{hint}</li>
        ))}
      </ol>
      {/* It is there before the first verdict: a region that comes with its text may not be read out. */}
      <p class="verdict-head" role="status">
        {checked && judged && `Attempt ${checked.attempt}. ${judged.sentence}`}
      </p>
      {checked && !judged && <NotThereYet later={judging} what="The results" />}
      {checked && judged && (
        <judged.VerdictView rig={rig} verdict={judged.verdict} isStale={checked.board !== now} />
      )}
      {judging.there && checked && judged?.verdict.passed && par !== undefined && (
        <p class="par">{judging.there.parSentence(scenario, checked.board, par)}</p>
      )}
      {judged?.verdict.passed && <p class="debrief">{debrief}</p>}
      {judging.there && name && (
        <judging.there.KeptTask
          name={name}
          seed={seed}
          scenario={scenario}
          board={board}
          hintsShown={hintsShown}
          onHints={setHintsShown}
          judged={judged}
        />
      )}
    </section>
  );
}
