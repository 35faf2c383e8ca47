import { useMemo, useState } from 'preact/hooks';
import {
  type Board,
  grade,
  lockedControls,
  type Scenario,
  type Verdict,
} from '../../../simulator/index.ts';
import { verdictSentence } from '../../text/index.ts';
import { Desk } from './Desk.tsx';
import { useBoard } from './use-board.ts';
import { VerdictView } from './VerdictView.tsx';

/** A scenario with its desk: the brief, the desk, Check and its verdict, hints in steps, the debrief. */
export function TaskDesk({ scenario }: { scenario: Scenario }) {
  const { rig, title, brief, hints, start, open, show, solution, debrief } = scenario;
  const locked = useMemo(() => lockedControls(rig, open), [rig, open]);
  const board = useBoard({ setup: { rig, board: start }, locked });
  // A walk-through or a quiz on the same page may have the same id.
  const id = `task-${scenario.id}`;
  const [follow, setFollow] = useState(scenario.follow);
  const [hintsShown, setHintsShown] = useState(0);
  const [checked, setChecked] = useState<{ board: Board; verdict: Verdict; attempt: number }>();
  const now = board.snapshot.context.setup.board;

  const check = () => {
    setChecked({ board: now, verdict: grade(scenario, now), attempt: (checked?.attempt ?? 0) + 1 });
  };
  return (
    <section class="task" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      {brief.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <Desk id={id} board={board} follow={follow} onFollow={setFollow} show={show} />
      <div class="task-bar">
        <button type="button" class="button-main" onClick={check}>
          Check
        </button>
        {hintsShown < hints.length && (
          <button type="button" onClick={() => setHintsShown(hintsShown + 1)}>
            {hintsShown === 0 ? 'Hint' : 'Next hint'} ({hintsShown + 1} of {hints.length})
          </button>
        )}
        {checked && (
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
        {checked && `Attempt ${checked.attempt}. ${verdictSentence(checked.verdict)}`}
      </p>
      {checked && (
        <VerdictView rig={rig} verdict={checked.verdict} isStale={checked.board !== now} />
      )}
      {checked?.verdict.passed && <p class="debrief">{debrief}</p>}
    </section>
  );
}
