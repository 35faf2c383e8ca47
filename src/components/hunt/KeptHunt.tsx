import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import {
  fromDraft,
  type Hunt,
  type HuntSnapshot,
  huntDraftSchema,
  scoreHunt,
  toDraft,
} from '../../../simulator/index.ts';
import { huntTask } from '../../progress/practice.ts';
import { readDraft } from '../../progress/read-draft.ts';
import { taskShelf } from '../../progress/shelf.ts';
import { KeptWord } from '../desk/KeptWord.tsx';
import { tellAttempt } from '../desk/tell-attempt.ts';
import { useKeeping } from '../desk/use-keeping.ts';

interface Props {
  hunt: Hunt;
  snapshot: HuntSnapshot;
  onTakeUp: (snapshot: HuntSnapshot) => void;
}

/** Keeps how far a hunt is and what came of it, and goes on from there when the page is opened at it again. */
export function KeptHunt({ hunt, snapshot, onTakeUp }: Props) {
  const name = useMemo(() => huntTask(hunt.level), [hunt]);
  const { steps } = snapshot.context;
  const isOver = snapshot.matches('found') || snapshot.matches('debriefing');
  // Each hunt is one attempt. One that is taken up when it was over has been counted.
  const isCounted = useRef(false);
  useLayoutEffect(() => {
    if (!isOver || isCounted.current) return;
    isCounted.current = true;
    const { isFound, score } = scoreHunt(hunt, steps);
    tellAttempt(name, { score, passed: isFound, isAided: false });
  }, [isOver, hunt, name, steps]);
  const keeping = useKeeping(
    {
      shelf: (memory) => taskShelf(memory, name, hunt.seed),
      pristine: textOf(snapshot),
      write: () => ({ text: textOf(snapshot), isFinished: isOver }),
      read: (text) => {
        const kept = fromDraft(hunt, readDraft(name.id, text, huntDraftSchema));
        isCounted.current ||= kept.matches('found') || kept.matches('debriefing');
        onTakeUp(kept);
      },
    },
    [snapshot],
  );
  return (
    <KeptWord
      keeping={keeping}
      back="“Another hunt” begins a new one."
      record={keeping.state?.record}
    />
  );
}

const textOf = (snapshot: HuntSnapshot): string => JSON.stringify(toDraft(snapshot));
