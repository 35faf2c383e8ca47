import { findings } from '../trace/findings.ts';
import { loudestAt } from '../trace/loudest.ts';
import { paths } from '../trace/paths.ts';
import type { ClaimOf } from './check.ts';
import type { Hearing } from './hearing.ts';
import { hasHeadroom, isNamedBy, leastHeadroom } from './holds.ts';
import { changesMost, loopReasons, unstableLoops } from './reasons.ts';
import type { Judgement, Reason } from './verdict.ts';

/** Judgements of claims about the setup as a whole: no source is asked about, and no output. */

export function judgeNoLoop(claim: ClaimOf<'no-loop'>, { solution }: Hearing): Judgement {
  const { loops } = solution;
  return {
    claim,
    holds: loops.length === 0,
    heard: { kind: 'loops', count: loops.length },
    reasons: loopReasons(solution),
  };
}

export function judgeHeadroom(claim: ClaimOf<'headroom'>, hearing: Hearing): Judgement {
  const { solution } = hearing;
  const least = leastHeadroom(claim, hearing);
  const unstable = unstableLoops(solution);
  const holds = hasHeadroom(claim, hearing);
  if (unstable.length > 0) {
    return { claim, holds, heard: { kind: 'headroom', least: undefined }, reasons: unstable };
  }
  const heard = { kind: 'headroom', least } as const;
  if (!least || least.headroom === Infinity) return { claim, holds, heard, reasons: [] };
  const loudest = loudestAt(hearing, least.place);
  const [way] = paths(solution, loudest[0] ?? '', least.stage);
  const reasons: Reason[] = [
    { code: 'driven', by: least, loudest },
    ...(way ? changesMost(way, 'raises') : []),
  ];
  return { claim, holds, heard, reasons };
}

export function judgeNoFinding(
  claim: ClaimOf<'no-finding'>,
  { setup, solution }: Hearing,
): Judgement {
  const found = findings(setup, solution).filter((finding) => isNamedBy(claim, finding));
  return {
    claim,
    holds: found.length === 0,
    heard: { kind: 'findings', found },
    reasons: found.map((finding) => ({ code: 'finding', finding })),
  };
}
