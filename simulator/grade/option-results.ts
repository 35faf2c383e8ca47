import { type Board, withValues } from '../board/board.ts';
import { fromFile } from '../board/file-values.ts';
import type { Rig } from '../rig/schema.ts';
import { type Level, levelOf } from '../solve/levels.ts';
import { simulate } from '../solve/simulate.ts';
import type { Finding } from '../trace/findings/finding.ts';
import { findings } from '../trace/findings.ts';
import { isWithin } from '../trace/path.ts';
import { type Db, gainBetween, SILENCE } from '../units/level.ts';
import { type Hearing, placeNamed } from './hearing.ts';
import { judge } from './judge.ts';
import { orderMet } from './order-met.ts';
import { carryOut } from './probe.ts';
import type { Quantity, Question, QuestionKind, QuestionOf } from './question.ts';
import type { Judgement } from './verdict.ts';

/** What an option turned out to be. */
export interface OptionResult {
  readonly id: string;
  /** Whether it is true: of a statement, a number, an output that is reached, a stop that is met, a finding that is there. */
  readonly holds: boolean;
  readonly reason: string;
  /** What was heard, for a statement and an output. */
  readonly judgement?: Judgement;
  /** For a number: a level in dBu or a change in dB. Nothing where there is no level. */
  readonly value?: Level | Db;
  /** For a stop: after how many of the others it is met. */
  readonly position?: number;
  /** The finding of the desk that the option means. */
  readonly finding?: Finding;
}

type Computing = { [Kind in QuestionKind]: (question: QuestionOf<Kind>) => OptionResult[] };

const computing: Computing = {
  statements: (question) => {
    const hearing = hear(question.rig, question.board);
    return question.options.map(({ id, claim, reason }) => {
      const judgement = judge(claim, hearing);
      return { id, reason, judgement, holds: judgement.holds };
    });
  },
  number: numbers,
  predict: numbers,
  outputs: (question) => {
    const hearing = hear(question.rig, question.board);
    return question.options.map(({ id, output, reason }) => {
      const judgement = judge({ kind: 'absent', source: question.follow, output }, hearing);
      return { id, reason, judgement, holds: !judgement.holds };
    });
  },
  order: (question) => {
    const { rig, board, follow, output, options } = question;
    const met = orderMet(
      simulate({ rig, board }),
      follow,
      placeNamed(rig, output),
      options.map(({ stop }) => stop),
    );
    return options.map(({ id, stop, reason }) => {
      const position = met?.indexOf(stop);
      return position === undefined
        ? { id, reason, holds: false }
        : { id, reason, position, holds: true };
    });
  },
  explain: (question) => {
    const { setup, solution } = hear(question.rig, question.board);
    const found = findings(setup, solution);
    return question.options.map(({ id, finding: code, at, reason }) => {
      const finding = found.find(
        (one) => one.code === code && (at === undefined || isWithin(one.mendAt, at)),
      );
      return finding ? { id, reason, holds: true, finding } : { id, reason, holds: false };
    });
  },
};

/** Computes every option of a question, in the order of the file. */
export function optionResults(question: Question): OptionResult[] {
  const compute = computing[question.kind] as (question: Question) => OptionResult[];
  return compute(question);
}

const hear = (rig: Rig, board: Board): Hearing => {
  const setup = { rig, board };
  return { setup, solution: simulate(setup) };
};

function numbers({ rig, board, quantity, options }: QuestionOf<'number' | 'predict'>) {
  return options.map(({ id, asIf, reason }): OptionResult => {
    const imagined = asIf ? withValues(rig, board, fromFile(rig, asIf)) : board;
    const value = quantityOf(quantity, hear(rig, imagined));
    return { id, reason, holds: asIf === undefined, ...(value === undefined ? {} : { value }) };
  });
}

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
