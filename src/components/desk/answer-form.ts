import type { Answer, Question } from '../../../simulator/index.ts';
import type { OptionText } from '../../text/question-options.ts';

/** What the form of a question needs. */
export interface AnswerFormProps {
  /** Id of the question on the page. */
  readonly id: string;
  readonly question: Question;
  readonly options: readonly OptionText[];
  readonly answer: Answer | undefined;
  readonly onAnswer: (answer: Answer | undefined) => void;
}

/** What stands in the form of a question before anybody touched it. */
export const firstAnswer = (
  { kind }: Question,
  options: readonly OptionText[],
): Answer | undefined =>
  kind === 'order' ? { kind: 'order', order: options.map(({ id }) => id) } : undefined;
