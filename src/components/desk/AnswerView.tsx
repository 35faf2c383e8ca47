import { optionResults, type Question } from '../../../simulator/index.ts';
import { heardSentence, resultWord } from '../../text/index.ts';

interface Props {
  question: Question;
  /** Id of the option that was chosen. */
  chosen: string;
  /** From 1. */
  attempt: number;
}

/** What the simulator says to an answer, and why. */
export function AnswerView({ question, chosen, attempt }: Props) {
  const option = optionResults(question).find(({ id }) => id === chosen);
  if (!option) return null;
  const { holds, reason, judgement } = option;
  return (
    <div class={holds ? 'check check-passed' : 'check check-not-yet'}>
      <p>
        Attempt {attempt}. <strong class="check-word">{resultWord(holds)}</strong> {reason}
      </p>
      {judgement && <p class="check-heard">{heardSentence(question.rig, judgement)}</p>}
      {holds && <p>{question.explain}</p>}
    </div>
  );
}
