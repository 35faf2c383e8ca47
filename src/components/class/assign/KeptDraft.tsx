import { useEffect } from 'preact/hooks';
import { checkDocument, readJson } from '../../../../simulator/index.ts';
import { type AssignmentDraft, assignmentDraftSchema } from '../../../class/assignment-draft.ts';
import { benchShelf } from '../../../progress/shelf.ts';
import { KeptWord } from '../../desk/KeptWord.tsx';
import { useAskBeforeLeaving } from '../../desk/use-ask-before-leaving.ts';
import { useKeeping } from '../../desk/use-keeping.ts';
import { MAKING_ROOM } from '../rooms.ts';

interface Props {
  draft: AssignmentDraft;
  /** The draft that the page began with. */
  fresh: AssignmentDraft;
  onTakeUp: (draft: AssignmentDraft) => void;
  onReady: () => void;
}

/** Keeps the assignment that is being made in the browser. */
export function KeptDraft({ draft, fresh, onTakeUp, onReady }: Props) {
  const keeping = useKeeping(
    {
      shelf: (memory) => benchShelf(memory, MAKING_ROOM),
      pristine: JSON.stringify(fresh),
      write: () => ({ text: JSON.stringify(draft), isFinished: false }),
      read: (text) =>
        onTakeUp(
          checkDocument(readJson('The assignment that was kept', text), assignmentDraftSchema),
        ),
    },
    [draft],
  );
  const isKnown = keeping.state !== undefined || keeping.keepsNothing;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is told once.
  useEffect(() => {
    if (isKnown) onReady();
  }, [isKnown]);
  useAskBeforeLeaving(draft !== fresh && keeping.keepsNothing);
  return <KeptWord keeping={keeping} back="“New” begins another one; undo leads back." />;
}
