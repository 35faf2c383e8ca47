import { useEffect, useRef } from 'preact/hooks';
import * as z from 'zod/mini';
import {
  boardData,
  boardOf,
  fileBoardSchema,
  movesBetween,
  type Scenario,
  type Verdict,
} from '../../../simulator/index.ts';
import { readDraft } from '../../progress/read-draft.ts';
import { taskShelf } from '../../progress/shelf.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { KeptWord } from './KeptWord.tsx';
import { tellAttempt } from './tell-attempt.ts';
import type { RunningBoard } from './use-board.ts';
import { theMemory, useKeeping } from './use-keeping.ts';

/** How far a scenario is, as it is kept. */
const draftSchema = z.strictObject({
  board: fileBoardSchema,
  hintsShown: z.int().check(z.gte(0), z.lte(20)),
  /** Whether a solution was set, or the task passed, since the board last stood as at the start. */
  isAided: z.boolean(),
  hasPassed: z.boolean(),
});
const write = (draft: z.output<typeof draftSchema>) => ({
  text: JSON.stringify(draft),
  isFinished: draft.hasPassed,
});

interface Props {
  name: TaskName;
  /** Of a task that is another one with each seed: the seed. */
  seed: string | undefined;
  scenario: Scenario;
  board: RunningBoard;
  hintsShown: number;
  onHints: (shown: number) => void;
  /** The last attempt; another object with each. */
  judged: { readonly verdict: Verdict } | undefined;
}

/** Keeps how far a scenario is, what came of its attempts and how many hints it took, and says what is kept. */
export function KeptTask({ name, seed, scenario, board, hintsShown, onHints, judged }: Props) {
  const { rig, start, solution } = scenario;
  const now = board.snapshot.context.setup.board;
  const sitting = useRef({ isAided: false, hasPassed: false });
  if (movesBetween(rig, start, now).length === 0) {
    sitting.current = { isAided: false, hasPassed: false };
  } else if (now === solution) {
    sitting.current = { ...sitting.current, isAided: true };
  }

  // What was checked before this code was there is told as well.
  const told = useRef<{ hints: number; judged: Props['judged'] }>({ hints: 0, judged: undefined });
  useEffect(() => {
    if (told.current.judged === judged || !judged) return;
    told.current.judged = judged;
    const { passed, score, of } = judged.verdict;
    const { isAided } = sitting.current;
    if (passed) sitting.current = { isAided, hasPassed: true };
    tellAttempt(name, { passed, score: score / of, isAided });
  }, [name, judged]);
  useEffect(() => {
    const asked = hintsShown - told.current.hints;
    told.current.hints = hintsShown;
    if (asked > 0)
      void theMemory()
        .then((memory) => memory?.hinted(name))
        .catch(() => undefined);
  }, [name, hintsShown]);
  const { isAided } = sitting.current;
  useEffect(() => {
    if (isAided)
      void theMemory()
        .then((memory) => memory?.solutionShown(name))
        .catch(() => undefined);
  }, [name, isAided]);

  const keeping = useKeeping(
    {
      shelf: (memory) => taskShelf(memory, name, seed),
      pristine: write({ board: boardData(start), hintsShown: 0, isAided: false, hasPassed: false })
        .text,
      write: () => write({ board: boardData(now), hintsShown, ...sitting.current }),
      read: (text) => {
        const draft = readDraft(name.id, text, draftSchema);
        const kept = boardOf(name.id, rig, draft.board);
        sitting.current = { isAided: draft.isAided, hasPassed: draft.hasPassed };
        // Hints that are shown again are not asked for again.
        told.current.hints = draft.hintsShown;
        onHints(draft.hintsShown);
        board.send({ type: 'setup.load', setup: { rig, board: kept } });
      },
    },
    [now, hintsShown, judged],
  );
  return (
    <KeptWord
      keeping={keeping}
      back="Start again leads back to the beginning."
      record={keeping.state?.record}
    />
  );
}
