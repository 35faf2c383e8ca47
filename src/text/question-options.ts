import { type OptionResult, optionResults, type Question } from '../../simulator/index.ts';
import { capitalised } from './capitalised.ts';
import { goalName, placeName } from './places.ts';
import { gainText, levelText } from './quantities.ts';

/** An option as it stands in a question. Whether it is right is not in it. */
export interface OptionText {
  readonly id: string;
  readonly text: string;
}

/**
 * The options of a question, for the page: statements as written, numbers as computed, from low to high, outputs
 * and stops by their names. None where a number is to be said, since they would say it.
 */
export function optionsOf(question: Question): OptionText[] {
  const { rig } = question;
  switch (question.kind) {
    case 'statements':
    case 'explain':
      return question.options.map(({ id, text }) => ({ id, text }));
    case 'predict':
      return [];
    case 'outputs':
      return question.options.map(({ id, output }) => ({
        id,
        text: capitalised(goalName(rig, output)),
      }));
    case 'order':
      return question.options.map(({ id, stop }) => ({
        id,
        text: capitalised(placeName(rig, stop)),
      }));
    case 'number': {
      const inUnit = question.quantity.kind === 'level' ? levelText : gainText;
      // Their order says nothing then.
      const fromLowToHigh = (a: OptionResult, b: OptionResult) => Number(a.value) - Number(b.value);
      return optionResults(question)
        .sort(fromLowToHigh)
        .map(({ id, value }) => ({ id, text: inUnit(Number(value)) }));
    }
  }
}
