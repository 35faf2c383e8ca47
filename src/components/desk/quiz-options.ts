import { type OptionResult, optionResults, type Question } from '../../../simulator/index.ts';
import { gainText, levelText } from '../../text/index.ts';

/** An option as it stands in a question. Whether it is right is not in it. */
export interface OptionText {
  readonly id: string;
  readonly text: string;
}

/** The options of a question, for the page: statements as written, numbers as computed, from low to high. */
export function optionsOf(question: Question): OptionText[] {
  if (question.kind === 'statements') {
    return question.options.map(({ id, text }) => ({ id, text }));
  }
  const inUnit = question.quantity.kind === 'level' ? levelText : gainText;
  // Their order says nothing then.
  const fromLowToHigh = (a: OptionResult, b: OptionResult) => Number(a.value) - Number(b.value);
  return optionResults(question)
    .sort(fromLowToHigh)
    .map(({ id, value }) => ({ id, text: inUnit(Number(value)) }));
}
