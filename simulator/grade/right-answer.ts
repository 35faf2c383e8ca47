import type { Answer } from './answer.ts';
import { optionResults } from './option-results.ts';
import type { Question, QuestionKind } from './question.ts';

/** The kind of answer that each kind of question takes. */
export const ANSWER_KINDS = {
  statements: 'option',
  number: 'option',
  explain: 'option',
  predict: 'number',
  outputs: 'outputs',
  order: 'order',
} as const satisfies { [Kind in QuestionKind]: Answer['kind'] };

/** The answer to a question that the simulator gives. Nothing where it gives none, or more than one: a mistake of its author. */
export function rightAnswer(question: Question): Answer | undefined {
  const results = optionResults(question);
  const right = results.filter(({ holds }) => holds);
  const [only, ...more] = right;
  switch (ANSWER_KINDS[question.kind]) {
    case 'option':
      return only && more.length === 0 ? { kind: 'option', option: only.id } : undefined;
    case 'number': {
      const value = more.length === 0 ? only?.value : undefined;
      if (value === undefined) return undefined;
      return { kind: 'number', value: value === -Infinity ? '-inf' : value };
    }
    case 'outputs':
      return { kind: 'outputs', outputs: right.map(({ id }) => id) };
    case 'order': {
      if (right.length < results.length) return undefined;
      const inOrder = right.toSorted((one, other) => Number(one.position) - Number(other.position));
      return { kind: 'order', order: inOrder.map(({ id }) => id) };
    }
  }
}
