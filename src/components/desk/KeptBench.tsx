import { InputError, type Rig, type Setup } from '../../../simulator/index.ts';
import { benchShelf } from '../../progress/shelf.ts';
import { SETUP_FRAGMENT } from '../../share/setup-fragment.ts';
import { setupOfText, setupText } from '../../share/setup-text.ts';
import { KeptWord } from './KeptWord.tsx';
import { useAskBeforeLeaving } from './use-ask-before-leaving.ts';
import { useKeeping } from './use-keeping.ts';

interface Props {
  /** The rig of the page. */
  rig: Rig;
  setup: Setup;
  onTakeUp: (setup: Setup) => void;
  /** Whether the setup lies in a file or a link, or is what the room begins with. */
  isElsewhere: boolean;
}

/** Keeps how a room of the bench stands. Where the browser keeps nothing, it asks before that is lost. */
export function KeptBench({ rig, setup, onTakeUp, isElsewhere }: Props) {
  const keeping = useKeeping(
    {
      shelf: (memory) => benchShelf(memory, rig.id),
      pristine: setupText({ rig, board: {} }, rig),
      // Who follows a link wants what is in it. What was kept is offered then.
      takesUp: () => !window.location.hash.startsWith(SETUP_FRAGMENT),
      write: () => ({ text: setupText(setup, rig), isFinished: false }),
      read: (text) => {
        const kept = setupOfText(`setup of ${rig.id}`, text, rig);
        if ('setup' in kept) return onTakeUp(kept.setup);
        const found = kept.otherRig;
        throw new InputError(`setup of ${rig.id}`, [{ place: 'rig', expected: rig.id, found }]);
      },
    },
    [setup],
  );
  const isKept = keeping.state?.isKept === true && !keeping.keepsNothing;
  useAskBeforeLeaving(!isElsewhere && !isKept);
  return <KeptWord keeping={keeping} back="Start again leads back to how the room begins." />;
}
