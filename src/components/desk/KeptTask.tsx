import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import {
  markAnswer,
  type Question,
  readTaskDraft,
  type Scenario,
  type TaskDraft,
  taskDraftText,
} from '../../../simulator/index.ts';
import { draftData, draftName } from '../../progress/read-draft.ts';
import { taskShelf } from '../../progress/shelf.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { KeptWord } from './KeptWord.tsx';
import { tellAttempt } from './tell-attempt.ts';
import { theMemory, useKeeping } from './use-keeping.ts';
import type { RunningTask } from './use-task.ts';

/** What is needed to keep a task of any kind. */
export interface KeptTaskProps {
  name: TaskName;
  /** Of a task that is another one with each seed: the seed. */
  seed?: string | undefined;
  task: Scenario | Question;
  running: RunningTask;
  /** How it stands before anybody touched it. */
  pristine: TaskDraft['answer'];
  /** Puts back what is not the machine's own; it stands there before the machine goes on from the draft. */
  onTakeUp?: (draft: TaskDraft) => void;
  /** How one leads back to the beginning. Left out, an answer comes back without a word: it is quickly given. */
  back?: string;
}

/**
 * Keeps how far a task of any kind is, what came of its attempts and how many hints it took, and says what is kept.
 * What was passed is not filled in again.
 */
export function KeptTask({ name, seed, task, running, pristine, onTakeUp, back }: KeptTaskProps) {
  const { snapshot, send, judged } = running;
  const { answer, hintsShown, isAided, hasPassed } = snapshot.context;

  // What was checked before this code was there is told as well.
  const told = useRef<{ hints: number; judged: typeof judged }>({ hints: 0, judged: undefined });
  // Before the verdict is painted: the page may be left as soon as it can be read.
  useLayoutEffect(() => {
    if (told.current.judged === judged || !judged) return;
    told.current.judged = judged;
    void tellAttempt(name, { passed: judged.passed, score: judged.score, isAided });
  }, [name, judged, isAided]);
  useEffect(() => {
    const asked = hintsShown - told.current.hints;
    told.current.hints = hintsShown;
    if (asked > 0)
      void theMemory()
        .then((memory) => memory?.hinted(name))
        .catch(() => undefined);
  }, [name, hintsShown]);
  useEffect(() => {
    if (isAided)
      void theMemory()
        .then((memory) => memory?.solutionShown(name))
        .catch(() => undefined);
  }, [name, isAided]);

  const keeping = useKeeping(
    {
      shelf: (memory) => taskShelf(memory, name, seed),
      pristine: taskDraftText({
        answer: pristine,
        hintsShown: 0,
        isAided: false,
        hasPassed: false,
      }),
      write: () => ({
        text: taskDraftText({ answer, hintsShown, isAided, hasPassed }),
        isFinished: hasPassed,
      }),
      read: (text) => {
        const draft = readTaskDraft(draftName(name.id), draftData(name.id, text));
        // Throws where the answer does not fit the task.
        if (draft.answer) markAnswer(draftName(name.id), task, draft.answer);
        // Hints that are shown again are not asked for again.
        told.current.hints = draft.hintsShown;
        onTakeUp?.(draft);
        send({ type: 'draft.take-up', draft });
      },
    },
    [answer, hintsShown, isAided, hasPassed],
  );
  const { state } = keeping;
  const isQuiet = back === undefined;
  const shown =
    isQuiet && state
      ? { ...keeping, state: { ...state, other: undefined, takenUpAt: undefined } }
      : keeping;
  return <KeptWord keeping={shown} back={back ?? ''} record={state?.record} />;
}
