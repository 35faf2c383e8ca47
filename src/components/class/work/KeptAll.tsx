import { useEffect } from 'preact/hooks';
import { withRecordThatFits } from '../../../class/fit.ts';
import type { Work } from '../../../class/work.ts';
import { benchShelf } from '../../../progress/shelf.ts';
import { LONGEST_DRAFT } from '../../../progress/task-record.ts';
import { KeptWord } from '../../desk/KeptWord.tsx';
import { useAskBeforeLeaving } from '../../desk/use-ask-before-leaving.ts';
import { useKeeping } from '../../desk/use-keeping.ts';
import { workRoom } from '../rooms.ts';
import { readWork } from './kept-work.ts';

interface Props {
  work: Work;
  /** The work before anything was done. */
  fresh: Work;
  onTakeUp: (work: Work) => void;
  /** Called once it is known whether there was something to take up. */
  onReady: () => void;
}

/** Keeps the work of a learner in the browser, and asks before it is lost where the browser keeps nothing. */
export function KeptAll({ work, fresh, onTakeUp, onReady }: Props) {
  const textOf = (one: Work) => JSON.stringify(withRecordThatFits(one, LONGEST_DRAFT));
  const keeping = useKeeping(
    {
      shelf: (memory) => benchShelf(memory, workRoom(work.assignment, work.learner)),
      pristine: textOf(fresh),
      write: () => ({ text: textOf(work), isFinished: false }),
      read: (text) => onTakeUp(readWork(text)),
    },
    [work],
  );
  const isKnown = keeping.state !== undefined || keeping.keepsNothing;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is told once.
  useEffect(() => {
    if (isKnown) onReady();
  }, [isKnown]);
  useAskBeforeLeaving(work.hasMoved && keeping.keepsNothing);
  return <KeptWord keeping={keeping} back="" />;
}
