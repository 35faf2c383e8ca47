import { grade, isPar, movesBetween, type Scenario, type Verdict } from '../../simulator/index.ts';
import type { Remark } from './remark.ts';

/** The most boards that are looked at to prove par, which takes some seconds. */
const MOST_STANDS = 2_000;

/** What is wrong with a scenario: its start passes, or a board that its author vouches for does otherwise. */
export function scenarioComplaints(scenario: Scenario): Remark[] {
  const { proofs } = scenario;
  return [
    ...startRemarks(scenario),
    ...parRemarks(scenario),
    ...proofs.flatMap(({ name, board, fails }) => {
      const verdict = grade(scenario, board);
      return [...lockRemarks(name, verdict), ...failRemarks(name, verdict, fails)];
    }),
  ];
}

function startRemarks(scenario: Scenario): Remark[] {
  const { kind, start } = scenario;
  const { passed, results } = grade(scenario, start);
  if (passed) return [{ what: 'the start passes already: there is nothing to do' }];
  if (kind === 'patch') return [];
  const isEmpty = Object.keys(start).length === 0;
  return [
    ...(isEmpty ? [{ what: 'it is to be completed, but nothing is set at its start' }] : []),
    ...(results.some(({ holds }) => holds)
      ? []
      : [{ what: 'it is to be completed, but its start passes no check' }]),
  ];
}

/** Whether some vouched board takes as many moves as par says, and no board takes fewer. */
function parRemarks(scenario: Scenario): Remark[] {
  const { rig, start, par, proofs } = scenario;
  if (par === undefined) return [];
  const counts = proofs
    .filter(({ fails }) => fails.length === 0)
    .map(({ board }) => movesBetween(rig, start, board).length);
  if (!counts.includes(par)) {
    return [{ what: `no solution takes ${par} moves, which is par, but ${counts.join(', ')}` }];
  }
  const isRight = isPar(scenario, par, MOST_STANDS);
  if (isRight) return [];
  if (isRight === false) return [{ what: `fewer than ${par} moves solve it, which is par` }];
  return [
    { isWarning: true, what: `par not proven: the search for fewer than ${par} moves is too long` },
  ];
}

function lockRemarks(name: string, { movedLocks }: Verdict): Remark[] {
  if (movedLocks.length === 0) return [];
  return [{ what: `“${name}” moves what is locked: ${movedLocks.join(', ')}` }];
}

function failRemarks(name: string, { results }: Verdict, expected: readonly string[]): Remark[] {
  const found = results.filter(({ holds }) => !holds).map(({ check }) => check.id);
  const isAlike =
    found.length === new Set(expected).size && found.every((id) => expected.includes(id));
  if (isAlike) return [];
  return [{ what: `“${name}” should fail ${named(expected)}, but fails ${named(found)}` }];
}

const named = (ids: readonly string[]): string => (ids.length === 0 ? 'nothing' : ids.join(', '));
