import type { ComponentType } from 'preact';
import { useCallback, useLayoutEffect, useMemo, useState } from 'preact/hooks';
import {
  type Answer,
  addressesMoved,
  type Board,
  boardData,
  lockedControls,
  type Scenario,
  type TaskEvent,
} from '../../../simulator/index.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { Desk, type Room } from './Desk.tsx';
import type { KeptTaskProps } from './KeptTask.tsx';
import { NotThereYet } from './NotThereYet.tsx';
import { useBoard } from './use-board.ts';
import { useJudging } from './use-judging.ts';
import { useTask } from './use-task.ts';

interface Props {
  scenario: Scenario;
  /** What its progress is kept under; nothing is kept when left out. */
  name?: TaskName | undefined;
  /** Of a task that is another one with each seed: the seed. */
  seed?: string | undefined;
  /** Draws the box and the rack around the desk. */
  room?: Room | undefined;
  /** Keeps what is done instead of the memory of the browser. */
  Kept?: ComponentType<KeptTaskProps> | undefined;
}

const answerOf = (board: Board): Answer => ({ kind: 'board', board: boardData(board) });

/** What it means for a task that its board stands so now. */
function eventOf({ start, proofs }: Scenario, board: Board): TaskEvent {
  const answer = answerOf(board);
  // One that was set, and not found, is the very board.
  const isSet = proofs.some((proof) => proof.board === board);
  if (isSet) return { type: 'solution.show', answer };
  const isStart = addressesMoved(start, board).length === 0;
  return { type: isStart ? 'start.again' : 'answer.change', answer };
}

/** A scenario with its desk: the brief, the desk, Check and its verdict, hints in steps, the debrief. */
export function TaskDesk({ scenario, name, seed, room, Kept }: Props) {
  const { rig, title, brief, hints, start, open, show } = scenario;
  const locked = useMemo(() => lockedControls(rig, open), [rig, open]);
  const board = useBoard({ setup: { rig, board: start }, locked });
  // A walk-through or a quiz on the same page may have the same id.
  const id = `task-${scenario.id}`;
  const [follow, setFollow] = useState(scenario.follow);
  const judging = useJudging();
  const { there } = judging;
  const Keeper = Kept ?? there?.KeptTask;
  const judge = useMemo(
    () => there && ((answer: Answer) => there.judgeBoard(scenario, answer)),
    [there, scenario],
  );
  const pristine = useMemo(() => answerOf(start), [start]);
  const task = useTask({ hints: hints.length, answer: pristine }, judge);
  const { actor, send: edit } = board;
  const { snapshot, send, judged } = task;
  useLayoutEffect(() => {
    let last = start;
    const subscription = actor.subscribe(({ context }) => {
      if (context.setup.board === last) return;
      last = context.setup.board;
      send(eventOf(scenario, last));
    });
    return () => subscription.unsubscribe();
  }, [actor, send, scenario, start]);

  const { answer, checked, hintsShown } = snapshot.context;
  const load = useCallback(
    (to: Board) => edit({ type: 'setup.load', setup: { rig, board: to } }),
    [edit, rig],
  );
  // A solution gives nothing away once the task was checked.
  const isChecked = checked !== undefined;
  const solutions = useMemo(
    () => (isChecked ? there?.solutionsOf(scenario) : undefined),
    [isChecked, there, scenario],
  );
  const solution = solutions?.[0];
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
        others={solutions}
        room={room}
      />
      <div class="task-bar">
        <button
          type="button"
          class="button-main"
          onClick={() => {
            send({ type: 'check' });
            if (judging.hasFailed) void judging.fetch();
          }}
        >
          Check
        </button>
        {hintsShown < hints.length && (
          <button type="button" onClick={() => send({ type: 'hint.show' })}>
            {hintsShown === 0 ? 'Hint' : 'Next hint'} ({hintsShown + 1} of {hints.length})
          </button>
        )}
        {solution && (
          <button type="button" onClick={() => load(solution.setup.board)}>
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
      {there && judged && solutions && (
        <there.TaskReview
          scenario={scenario}
          solutions={solutions}
          judged={judged}
          isStale={checked?.answer !== answer}
          onLoad={load}
        />
      )}
      {there && Keeper && name && (
        <Keeper
          name={name}
          seed={seed}
          task={scenario}
          running={task}
          pristine={pristine}
          onTakeUp={({ answer: kept }) => {
            if (kept?.kind === 'board') load(there.boardOf(name.id, rig, kept.board));
          }}
          back="Start again leads back to the beginning."
        />
      )}
    </section>
  );
}
