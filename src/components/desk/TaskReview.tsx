import {
  type Answer,
  type Board,
  boardOf,
  grade,
  movesBetween,
  type Scenario,
  type Verdict,
} from '../../../simulator/index.ts';
import { parSentence, verdictSentence } from '../../text/index.ts';
import type { Against } from './DifferencePanel.tsx';
import type { Judged } from './use-task.ts';
import { VerdictView } from './VerdictView.tsx';

/** What came of a board. */
export interface JudgedBoard extends Judged {
  readonly board: Board;
  readonly verdict: Verdict;
  readonly sentence: string;
}

/** Grades a board as it is kept. @throws InputError for an answer that is none of the task's. */
export function judgeBoard(scenario: Scenario, answer: Answer): JudgedBoard {
  const board = boardOf(scenario.id, scenario.rig, answer.kind === 'board' ? answer.board : {});
  const verdict = grade(scenario, board);
  const { passed, score, of } = verdict;
  return { board, verdict, sentence: verdictSentence(verdict), passed, score: score / of };
}

/** The setups that a task's author vouches for, the solution first. */
export function solutionsOf({ rig, proofs }: Scenario): Against[] {
  return proofs
    .filter(({ fails }) => fails.length === 0)
    .map(({ name, board }, index) => ({
      name: index === 0 ? 'one solution' : name,
      setup: { rig, board },
    }));
}

interface Props {
  scenario: Scenario;
  solutions: readonly Against[];
  judged: JudgedBoard;
  /** Whether the desk was moved since. */
  isStale: boolean;
  /** Sets another board. */
  onLoad: (board: Board) => void;
}

/** What is said to an attempt: each check and why; after success the debrief, and another routing that passes. */
export function TaskReview({ scenario, solutions, judged, isStale, onLoad }: Props) {
  const { rig, debrief, par } = scenario;
  const { board, verdict } = judged;
  const others = solutions.filter(
    (other) => movesBetween(rig, board, other.setup.board).length > 0,
  );
  return (
    <>
      <VerdictView rig={rig} verdict={verdict} isStale={isStale} />
      {verdict.passed && (
        <>
          {par !== undefined && <p class="par">{parSentence(scenario, board, par)}</p>}
          <p class="debrief">{debrief}</p>
          {others.map((other) => (
            <p key={other.name} class="also-passes">
              Also passes: {other.name}.{' '}
              <button type="button" onClick={() => onLoad(other.setup.board)}>
                Set it
              </button>
            </p>
          ))}
        </>
      )}
    </>
  );
}
