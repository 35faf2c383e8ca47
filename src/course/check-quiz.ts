import {
  type OptionResult,
  optionResults,
  type Question,
  type Quiz,
} from '../../simulator/index.ts';
import { signed } from '../text/index.ts';
import type { Remark } from './remark.ts';

/** Numbers nearer to one another than this, in dB, are no choice. */
const LEAST_APART_DB = 0.5;
/** A key that is longer than the next option by this factor gives itself away. */
const MOST_LONGER = 1.6;

/** What is wrong with a quiz: a question without exactly one key, or options that are no choice. */
export function quizComplaints({ questions }: Quiz): Remark[] {
  return questions.flatMap((question) => {
    const options = optionResults(question);
    return [...keyRemarks(question, options), ...choiceRemarks(question, options)].map(
      (remark) => ({ ...remark, what: `question ${question.id}: ${remark.what}` }),
    );
  });
}

function keyRemarks({ kind }: Question, options: readonly OptionResult[]): Remark[] {
  const keys = options.filter(({ holds }) => holds).map(({ id }) => id);
  if (keys.length === 1) return [];
  const expected =
    kind === 'number' ? 'exactly one option without asIf' : 'exactly one statement should hold';
  return [{ what: `${expected}, but found ${keys.length === 0 ? 'none' : keys.join(', ')}` }];
}

function choiceRemarks(question: Question, options: readonly OptionResult[]): Remark[] {
  return question.kind === 'number' ? nearnessRemarks(options) : lengthRemarks(question, options);
}

function nearnessRemarks(options: readonly OptionResult[]): Remark[] {
  const hasNumber = ({ value }: OptionResult) => value !== undefined && !Number.isNaN(value);
  const uncomputed = options
    .filter((option) => !hasNumber(option))
    .map(({ id }) => ({ what: `the option ${id} has no number` }));
  const known = options.filter(hasNumber);
  const near = known.flatMap((one, index) =>
    known.slice(index + 1).flatMap((other): Remark[] => {
      const [a, b] = [Number(one.value), Number(other.value)];
      if (a !== b && Math.abs(a - b) >= LEAST_APART_DB) return [];
      const numbers = `${signed(a, 2)} and ${signed(b, 2)} dB`;
      return [
        {
          what: `the options ${one.id} and ${other.id} are less than ${LEAST_APART_DB} dB apart: ${numbers}`,
        },
      ];
    }),
  );
  return [...uncomputed, ...near];
}

function lengthRemarks(question: Question, options: readonly OptionResult[]): Remark[] {
  if (question.kind !== 'statements') return [];
  const key = options.find(({ holds }) => holds)?.id;
  const lengthOf = (isKey: boolean) =>
    question.options.filter(({ id }) => (id === key) === isKey).map(({ text }) => text.length);
  const [own = 0] = lengthOf(true);
  const next = Math.max(...lengthOf(false));
  if (own <= MOST_LONGER * next) return [];
  return [
    {
      isWarning: true,
      what: `the key ${key} has ${own} letters, the next longest option ${next}: it gives itself away`,
    },
  ];
}
