import { useEffect, useRef, useState } from 'preact/hooks';
import { InputError, markAnswer, type TaskDraft } from '../../../../simulator/index.ts';
import { workOn } from '../../../class/work.ts';
import type { KeptTaskProps } from '../../desk/KeptTask.tsx';
import { useNotes } from './use-notes.ts';
import type { WorkHand } from './work-hand.ts';

interface Props extends KeptTaskProps {
  hand: WorkHand;
}

/** Keeps how far one item of an assignment is in the work of the learner, and goes on from there. */
export function KeptWork({ hand, ...kept }: Props) {
  const { name, task, running, pristine, onTakeUp } = kept;
  const { snapshot, send } = running;
  const { answer, hintsShown, isAided, hasPassed } = snapshot.context;
  const { item, send: note, work } = hand;
  const begun = useRef(workOn(work, item.id)).current;
  const [stands, setStands] = useState<'coming' | 'as left' | 'anew'>('coming');

  // biome-ignore lint/correctness/useExhaustiveDependencies: it is taken up once, as the item is opened.
  useEffect(() => {
    // Who was quicker than this code goes on with what stands there.
    const isUntouched = snapshot.value === 'brief';
    const draft: TaskDraft = { ...begun, answer: begun.answer ?? pristine };
    try {
      if (begun.answer) markAnswer(name.id, task, begun.answer);
      if (isUntouched && (begun.answer || begun.hintsShown > 0)) {
        onTakeUp?.(draft);
        send({ type: 'draft.take-up', draft: pick(draft) });
      }
      setStands('as left');
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setStands('anew');
    }
  }, []);

  const written = useRef(JSON.stringify(pick({ ...begun, answer: begun.answer ?? pristine })));
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is noted when one of these changes.
  useEffect(() => {
    if (stands === 'coming') return;
    const draft: TaskDraft = { answer, hintsShown, isAided, hasPassed };
    const text = JSON.stringify(draft);
    if (text === written.current) return;
    written.current = text;
    note({ type: 'answer.change', item: item.id, draft });
  }, [stands, answer, hintsShown, isAided, hasPassed]);

  useNotes(kept, hand, stands !== 'coming');

  if (stands !== 'anew') return null;
  return (
    <p class="kept-word problem">
      The task has changed since you worked on it, and your earlier answer does not fit it any more.
      It begins anew; an answer that you checked before stays in the file until you check a better
      one.
    </p>
  );
}

/** What a task goes on from, and nothing else. */
const pick = ({ answer, hintsShown, isAided, hasPassed }: TaskDraft): TaskDraft => ({
  answer,
  hintsShown,
  isAided,
  hasPassed,
});
