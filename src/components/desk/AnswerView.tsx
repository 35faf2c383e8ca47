import {
  type Answer,
  type Checked,
  markAnswer,
  markQuestion,
  type Question,
} from '../../../simulator/index.ts';
import { answerSentence, optionHead, optionHeardSentence, resultWord } from '../../text/index.ts';
import type { Judged } from './use-task.ts';

/** Marks an answer as it is kept. @throws InputError for one that the question cannot take. */
export function judgeAnswer(question: Question, answer: Answer): Judged {
  const { passed, score, of } = markAnswer(question.id, question, answer);
  return { passed, score: score / of };
}

interface Props {
  question: Question;
  checked: Checked;
}

/** What the simulator says to an answer, and why. */
export function AnswerView({ question, checked: { answer, attempt } }: Props) {
  const marked = markQuestion(question.id, question, answer);
  const passed = marked.parts.every((part) => part.passed);
  return (
    <div class={passed ? 'check check-passed' : 'check check-not-yet'}>
      <p>
        Attempt {attempt}. <strong class="check-word">{resultWord(passed)}</strong>{' '}
        {answerSentence(question, marked)}
      </p>
      {marked.told.map((option) => {
        const heard = optionHeardSentence(question, option);
        return (
          <p key={option.id}>
            {optionHead(question, option)} {option.reason}
            {heard && <span class="check-heard"> {heard}</span>}
          </p>
        );
      })}
      {passed && <p>{question.explain}</p>}
    </div>
  );
}
