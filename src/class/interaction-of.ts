import {
  type Answer,
  boardOf,
  grade,
  markQuestion,
  type Question,
  type Scenario,
} from '../../simulator/index.ts';
import { answerSentence, claimSentence, heardSentence, optionsOf } from '../text/index.ts';
import { canonicalText } from './canonical-text.ts';
import type { Interaction } from './interaction.ts';

/** What is known of an attempt besides the task and its answer. */
export interface AttemptTold {
  /** Id of the item. */
  readonly item: string;
  /** Kind of the task. */
  readonly kind: string;
  readonly weight: number;
  /** From 1. */
  readonly attempt: number;
  /** Hints shown until then. */
  readonly hints: number;
  /** When the item was opened, or the attempt before was checked; when this one was. */
  readonly started: number;
  readonly answered: number;
}

const LONGEST = { id: 60, response: 4000, words: 400 } as const;

/** An attempt as it is recorded. @throws InputError for an answer that the task does not take. */
export function interactionOf(
  told: AttemptTold,
  task: Scenario | Question,
  answer: Answer,
): Interaction {
  const { item, kind, weight, attempt, hints, started, answered } = told;
  const checks = 'checks' in task ? boardChecks(task, answer) : questionChecks(task, answer);
  const weights = checks.map((check) => check.weight);
  const all = weights.reduce((sum, one) => sum + one, 0);
  const met = checks.reduce((sum, check) => sum + (check.pass ? check.weight : 0), 0);
  const number = `-${attempt}`;
  return {
    id: `${item.slice(0, LONGEST.id - number.length)}${number}`,
    kind,
    started,
    answered: Math.max(answered, started),
    latencyMs: Math.max(answered - started, 0),
    attempt,
    hints,
    weight,
    response: canonicalText(answer).slice(0, LONGEST.response),
    checks: checks.map(({ id, pass, expected, observed }) => ({
      id,
      pass,
      expected: expected.slice(0, LONGEST.words),
      observed: observed.slice(0, LONGEST.words),
    })),
    score: all > 0 ? met / all : 0,
  };
}

interface WeighedCheck {
  readonly id: string;
  readonly pass: boolean;
  readonly expected: string;
  readonly observed: string;
  readonly weight: number;
}

function boardChecks(scenario: Scenario, answer: Answer): WeighedCheck[] {
  const { rig } = scenario;
  const board = boardOf(scenario.id, rig, answer.kind === 'board' ? answer.board : {});
  const { results, movedLocks } = grade(scenario, board);
  return results.map((result) => ({
    id: result.check.id,
    // A moved lock fails the task, whatever is heard.
    pass: result.holds && movedLocks.length === 0,
    expected: claimSentence(rig, result.claim),
    observed: heardSentence(rig, result),
    weight: result.check.weight,
  }));
}

function questionChecks(question: Question, answer: Answer): WeighedCheck[] {
  const marked = markQuestion(question.id, question, answer);
  const texts = new Map(optionsOf(question).map(({ id, text }) => [id, text]));
  const observed = answerSentence(question, marked);
  return marked.parts.map(({ id, passed }) => ({
    id,
    pass: passed,
    expected: texts.get(id) ?? question.ask,
    observed,
    weight: 1,
  }));
}
