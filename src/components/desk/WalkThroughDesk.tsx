import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Claim, WalkThrough } from '../../../simulator/index.ts';
import { Desk } from './Desk.tsx';
import { laterView } from './later-view.tsx';
import type { Scene } from './scene.ts';
import { useBoard } from './use-board.ts';

const HeardList = laterView('The levels', async () => (await import('./HeardList.tsx')).HeardList);
const NO_CLAIMS: readonly Claim[] = [];

interface Props {
  walkThrough: WalkThrough;
  /** More to stand below the levels at the outputs. */
  below?: ((scene: Scene) => ComponentChildren) | undefined;
}

/** A desk that moves step by step. Between the steps every control can be turned as well. */
export function WalkThroughDesk({ walkThrough, below }: Props) {
  const { rig, title, steps, show } = walkThrough;
  // A scenario or a quiz on the same page may have the same id.
  const id = `walk-${walkThrough.id}`;
  const first = steps[0];
  const board = useBoard({ setup: { rig, board: first?.board ?? walkThrough.start } });
  const [index, setIndex] = useState(0);
  const [follow, setFollow] = useState(first?.follow ?? '');
  const step = steps[index];

  const go = (to: number) => {
    const next = steps[to];
    if (!next) return;
    setIndex(to);
    setFollow(next.follow);
    board.send({ type: 'setup.load', setup: { rig, board: next.board } });
  };
  return (
    <section class="walk-through" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      <div class="step">
        <p class="step-count">
          Step {index + 1} of {steps.length}
        </p>
        <div aria-live="polite">
          <p>{step?.say}</p>
          <HeardList
            claims={step?.heard ?? NO_CLAIMS}
            setup={board.snapshot.context.setup}
            solution={board.solution}
          />
        </div>
        <div class="task-bar">
          <button type="button" disabled={index === 0} onClick={() => go(index - 1)}>
            Back
          </button>
          <button
            type="button"
            class="button-main"
            disabled={index === steps.length - 1}
            onClick={() => go(index + 1)}
          >
            Next step
          </button>
        </div>
      </div>
      <Desk
        id={id}
        board={board}
        follow={follow}
        onFollow={setFollow}
        show={show}
        home={step?.board}
        below={below}
      />
    </section>
  );
}
