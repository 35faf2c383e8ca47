import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Scenario } from '../../../../simulator/index.ts';
import { hasAttemptsLeft, workOn } from '../../../class/work.ts';
import { optionsOf } from '../../../text/index.ts';
import type { KeptTaskProps } from '../../desk/KeptTask.tsx';
import { QuizCard } from '../../desk/QuizCard.tsx';
import { TaskDesk } from '../../desk/TaskDesk.tsx';
import { WHOLE_ROOM } from '../../desk/whole-room.tsx';
import type { MetTask, TaskFinder } from './assigned-task.ts';
import { ItemReview } from './ItemReview.tsx';
import { KeptWork } from './KeptWork.tsx';
import type { WorkHand } from './work-hand.ts';

interface Props {
  hand: WorkHand;
  find: TaskFinder;
  isClosed: boolean;
}

/** One item, opened in its place: its task to be worked on, or what came of it when that is over. */
export function ItemPlace({ hand, find, isClosed }: Props) {
  const { assignment, item, work, send } = hand;
  const [met, setMet] = useState<MetTask | 'coming' | 'failed'>('coming');
  const fetch = () => {
    setMet('coming');
    find(item, work.learner).then(
      (found) => {
        const { id } = item;
        if (found.kind === 'question') {
          const revision = 'revision' in item.task ? item.task.revision : undefined;
          send({ type: 'item.give', item: id, revision });
        } else if (found.seed !== undefined) {
          send({ type: 'item.give', item: id, seed: found.seed });
        } else send({ type: 'item.give', item: id, revision: found.scenario.revision });
        setMet(found);
      },
      () => setMet('failed'),
    );
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is fetched as the item is opened.
  useEffect(fetch, []);

  // The component stays the same, so that a task is not begun anew; what it is handed is always the latest.
  const latest = useRef(hand);
  latest.current = hand;
  const Kept = useMemo(
    () => (props: KeptTaskProps) => <KeptWork {...props} hand={latest.current} />,
    [],
  );
  const done = workOn(work, item.id);
  const showsSolution =
    assignment.solutions === 'after-pass'
      ? done.best?.score === 1
      : isClosed && assignment.solutions !== 'never';
  const scenario = useMemo(
    () =>
      typeof met === 'object' && met.kind === 'board'
        ? asAllowed(met.scenario, assignment.hints, showsSolution)
        : undefined,
    [met, assignment.hints, showsSolution],
  );

  if (met === 'coming') return <p role="status">The task is coming.</p>;
  if (met === 'failed') {
    return (
      <p class="problem" role="status">
        The task could not be fetched.{' '}
        <button type="button" onClick={fetch}>
          Try again
        </button>
      </p>
    );
  }
  if (isClosed || !hasAttemptsLeft(done, assignment.attempts)) {
    const why = isClosed ? 'Your work is closed.' : 'No attempts are left.';
    return <ItemReview met={met} item={done} why={why} showsSolution={showsSolution} />;
  }
  const name = {
    id: `item-${item.id}`,
    kind: item.task.kind,
    revision: 1,
    concept: 'assignment',
    unit: assignment.id,
  };
  if (scenario && met.kind === 'board') {
    return (
      <TaskDesk
        scenario={scenario}
        name={name}
        // A task of the course is drawn as in its lesson.
        room={item.task.kind === 'scenario' ? undefined : WHOLE_ROOM}
        Kept={Kept}
      />
    );
  }
  if (met.kind !== 'question') return null;
  const { question, show } = met;
  return (
    <QuizCard
      id={`item-${item.id}-quiz`}
      title="Question"
      questions={[{ question, options: optionsOf(question), name }]}
      show={show}
      Kept={Kept}
    />
  );
}

/** A scenario with the hints that there may be, and without its solutions as long as they are not to be seen. */
const asAllowed = (scenario: Scenario, hasHints: boolean, showsSolution: boolean): Scenario => ({
  ...scenario,
  hints: hasHints ? scenario.hints : [],
  proofs: showsSolution ? scenario.proofs : scenario.proofs.filter(({ fails }) => fails.length > 0),
});
