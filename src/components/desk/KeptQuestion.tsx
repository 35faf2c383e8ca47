import { useEffect, useRef } from 'preact/hooks';
import * as z from 'zod/mini';
import { InputError, optionResults, type Question } from '../../../simulator/index.ts';
import { readDraft } from '../../progress/read-draft.ts';
import { taskShelf } from '../../progress/shelf.ts';
import type { TaskName } from '../../progress/task-record.ts';
import { KeptWord } from './KeptWord.tsx';
import { tellAttempt } from './tell-attempt.ts';
import { useKeeping } from './use-keeping.ts';

/** How far a question is, as it is kept. */
const draftSchema = z.strictObject({
  chosen: z.optional(z.string().check(z.maxLength(60))),
  hasPassed: z.boolean(),
});
const write = (draft: z.output<typeof draftSchema>) => ({
  text: JSON.stringify(draft),
  isFinished: draft.hasPassed,
});

interface Props {
  name: TaskName;
  question: Question;
  /** Id of the option that is chosen. */
  chosen: string | undefined;
  onChoose: (chosen: string | undefined) => void;
  /** The last attempt; another object with each. */
  checked: { readonly chosen: string } | undefined;
}

/** Keeps what is chosen in a question, and what came of its attempts. Right answers are not filled in again. */
export function KeptQuestion({ name, question, chosen, onChoose, checked }: Props) {
  const isRight = (id: string | undefined) =>
    optionResults(question).some((option) => option.id === id && option.holds);
  const told = useRef<typeof checked>();
  useEffect(() => {
    if (told.current === checked || !checked) return;
    told.current = checked;
    const passed = optionResults(question).some(({ id, holds }) => id === checked.chosen && holds);
    void tellAttempt(name, { passed, score: passed ? 1 : 0, isAided: false });
  }, [name, question, checked]);
  const keeping = useKeeping(
    {
      shelf: (memory) => taskShelf(memory, name),
      pristine: write({ chosen: undefined, hasPassed: false }).text,
      write: () => {
        const isChecked = checked !== undefined && checked.chosen === chosen;
        return write({ chosen, hasPassed: isChecked && isRight(chosen) });
      },
      read: (text) => {
        const { chosen: kept } = readDraft(name.id, text, draftSchema);
        if (kept !== undefined && question.options.every(({ id }) => id !== kept)) {
          const expected = `one of ${question.options.map(({ id }) => id).join(', ')}`;
          throw new InputError(`draft of ${name.id}`, [{ place: 'chosen', expected, found: kept }]);
        }
        onChoose(kept);
      },
    },
    [chosen, checked],
  );
  // An answer is one click: there is no need to offer another one, nor to say how it came back.
  const { state } = keeping;
  const quiet = {
    ...keeping,
    state: state && { ...state, other: undefined, takenUpAt: undefined },
  };
  return <KeptWord keeping={quiet} back="" record={state?.record} />;
}
