import {
  optionResults,
  type Question,
  type QuestionKind,
  type Quiz,
} from '../../simulator/index.ts';
import {
  keyRemarks,
  lengthRemarks,
  nearnessRemarks,
  orderRemarks,
  outputRemarks,
  predictionRemarks,
} from './check-options.ts';
import type { Remark } from './remark.ts';

/** Numbers nearer to one another than this, in dB, are no choice. */
const LEAST_APART_DB = 0.5;

/** What is wrong with a quiz: a question without exactly one right answer, or options that are no choice. */
export function quizComplaints({ questions }: Quiz): Remark[] {
  return questions.flatMap((question) =>
    questionRemarks(question).map((remark) => ({
      ...remark,
      what: `question ${question.id}: ${remark.what}`,
    })),
  );
}

type Expected = Readonly<Record<Exclude<QuestionKind, 'outputs' | 'order'>, string>>;
const KEY: Expected = {
  statements: 'exactly one statement should hold',
  number: 'exactly one option without asIf',
  predict: 'exactly one option without asIf',
  explain: 'the desk should show the finding of exactly one option',
};

function questionRemarks(question: Question): Remark[] {
  const results = optionResults(question);
  switch (question.kind) {
    case 'statements':
    case 'explain':
      return [
        ...keyRemarks(results, KEY[question.kind]),
        ...lengthRemarks(question.options, results),
      ];
    case 'number':
      return [...keyRemarks(results, KEY.number), ...nearnessRemarks(results, LEAST_APART_DB)];
    case 'predict':
      return [
        ...keyRemarks(results, KEY.predict),
        ...predictionRemarks(results),
        // What lies between two of them must not be near enough to both.
        ...nearnessRemarks(results, 2 * question.toleranceDb),
      ];
    case 'outputs':
      return outputRemarks(results);
    case 'order':
      return orderRemarks(results);
  }
}
