import { type Board, withValues } from '../board/board.ts';
import { fromFile } from '../board/file-values.ts';
import type { Rig } from '../rig/schema.ts';
import { type Level, levelOf } from '../solve/levels.ts';
import { simulate } from '../solve/simulate.ts';
import { type Db, gainBetween, SILENCE } from '../units/level.ts';
import { type Hearing, placeNamed } from './hearing.ts';
import { judge } from './judge.ts';
import { carryOut } from './probe.ts';
import type { Quantity, Question } from './quiz.ts';
import type { Judgement } from './verdict.ts';

/** What an option turned out to be. */
export interface OptionResult {
  readonly id: string;
  /** Whether it is right. A sound question has one such option. */
  readonly holds: boolean;
  readonly reason: string;
  /** For a statement: what was heard. */
  readonly judgement?: Judgement;
  /** For a number: a level in dBu or a change in dB. Nothing where there is no level. */
  readonly value?: Level | Db;
}

/** Computes every option of a question, in the order of the file. */
export function optionResults(question: Question): OptionResult[] {
  const { rig, board } = question;
  if (question.kind === 'statements') {
    const hearing = hear(rig, board);
    return question.options.map(({ id, claim, reason }) => {
      const judgement = judge(claim, hearing);
      return { id, reason, judgement, holds: judgement.holds };
    });
  }
  return question.options.map(({ id, asIf, reason }) => {
    const imagined = asIf ? withValues(rig, board, fromFile(rig, asIf)) : board;
    const value = quantityOf(question.quantity, hear(rig, imagined));
    return { id, reason, holds: asIf === undefined, ...(value === undefined ? {} : { value }) };
  });
}

const hear = (rig: Rig, board: Board): Hearing => {
  const setup = { rig, board };
  return { setup, solution: simulate(setup) };
};

function quantityOf(quantity: Quantity, hearing: Hearing): Level | Db {
  const output = placeNamed(hearing.setup.rig, quantity.output);
  const level = levelOf(hearing.solution, quantity.source, output);
  if (quantity.kind === 'level') return level;
  const probing = carryOut(quantity.probe, hearing.setup, hearing.solution);
  const after = probing && levelOf(probing.after, quantity.source, output);
  // What is silent has nothing to move, and two silences no difference.
  if (level === undefined || level === SILENCE || after === undefined) return undefined;
  return gainBetween(level, after);
}
