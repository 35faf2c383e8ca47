import { InputError } from '../file/input-error.ts';
import type { Answer, AnswerOf } from './answer.ts';
import { type OptionResult, optionResults } from './option-results.ts';
import type { Question, QuestionOf } from './question.ts';
import { refuseOtherKind, refuseStrangers } from './refuse-answer.ts';

/** What came of an answer to a question. */
export interface MarkedQuestion {
  /** What was asked, and whether it was met: all of them make it right. */
  readonly parts: readonly { readonly id: string; readonly passed: boolean }[];
  /**
   * The options whose reasons answer it: the one that was chosen, the idea that leads to the number, the outputs
   * that are wrong, the first stop that stands elsewhere. Empty where there is nothing to say.
   */
  readonly told: readonly OptionResult[];
}

/** Marks an answer to a question. @throws InputError when the question cannot take it. */
export function markQuestion(where: string, question: Question, answer: Answer): MarkedQuestion {
  switch (question.kind) {
    case 'statements':
    case 'number':
    case 'explain':
      refuseOtherKind(where, 'option', answer);
      return markOption(where, question, answer);
    case 'predict':
      refuseOtherKind(where, 'number', answer);
      return markNumber(question, answer);
    case 'outputs':
      refuseOtherKind(where, 'outputs', answer);
      return markOutputs(where, question, answer);
    case 'order':
      refuseOtherKind(where, 'order', answer);
      return markOrder(where, question, answer);
  }
}

function markOption(where: string, question: Question, { option }: AnswerOf<'option'>) {
  refuseStrangers(where, 'option', question.options, [option]);
  const told = optionResults(question).filter(({ id }) => id === option);
  return { parts: [{ id: question.id, passed: told.every(({ holds }) => holds) }], told };
}

function markNumber(question: QuestionOf<'predict'>, answer: AnswerOf<'number'>) {
  const value = answer.value === '-inf' ? -Infinity : answer.value;
  const off = (result: OptionResult) =>
    result.value === value ? 0 : Math.abs(Number(result.value) - value);
  const told = optionResults(question)
    .filter((result) => off(result) <= question.toleranceDb)
    .sort((one, other) => off(one) - off(other))
    .slice(0, 1);
  return { parts: [{ id: question.id, passed: told.some(({ holds }) => holds) }], told };
}

function markOutputs(
  where: string,
  question: QuestionOf<'outputs'>,
  { outputs }: AnswerOf<'outputs'>,
) {
  refuseStrangers(where, 'outputs', question.options, outputs);
  const results = optionResults(question);
  const isRight = ({ id, holds }: OptionResult) => outputs.includes(id) === holds;
  return {
    parts: results.map((result) => ({ id: result.id, passed: isRight(result) })),
    told: results.filter((result) => !isRight(result)),
  };
}

/** Neighbours that are met one after the other are parts: a stop counts when it stands behind the one before it. */
function markOrder(where: string, question: QuestionOf<'order'>, { order }: AnswerOf<'order'>) {
  const { options } = question;
  refuseStrangers(where, 'order', options, order);
  if (order.length < options.length) {
    const expected = `all ${options.length} stops`;
    throw new InputError(where, [{ place: 'order', expected, found: String(order.length) }]);
  }
  const results = optionResults(question).toSorted(
    (one, other) => Number(one.position) - Number(other.position),
  );
  const isMet = results.every(({ holds }) => holds);
  return {
    parts: results.slice(1).map(({ id }, index) => ({
      id,
      passed: isMet && order.indexOf(results[index]?.id ?? '') < order.indexOf(id),
    })),
    told: results
      .filter(({ id, position }) => order.indexOf(id) !== position)
      .toSorted((one, other) => order.indexOf(one.id) - order.indexOf(other.id))
      .slice(0, 1),
  };
}
