import type { Setup } from '../board/board.ts';
import type { Solution } from '../solve/solution.ts';
import { findBoxFaders, findStrayFeeds } from './findings/box.ts';
import { findClipping } from './findings/clipping.ts';
import {
  findSendsNowhere,
  findTracksNowhere,
  findUnfedOutputs,
  findUnpatchedLines,
} from './findings/dead-ends.ts';
import { findDoubles } from './findings/doubles.ts';
import type { Finding } from './findings/finding.ts';
import { findInserts } from './findings/inserts.ts';
import { findLoops } from './findings/loops.ts';
import { findLowLevels } from './findings/low-level.ts';
import { findPairs } from './findings/pairs.ts';
import { findGhosts, findPostFaderHeadphones } from './findings/sends.ts';
import { type Survey, surveyOf } from './findings/survey.ts';

/** All searches, in the order in which their findings are told. */
const SEARCHES: readonly ((survey: Survey) => readonly Finding[])[] = [
  findLoops,
  findStrayFeeds,
  findDoubles,
  findTracksNowhere,
  findUnpatchedLines,
  findUnfedOutputs,
  findInserts,
  findPairs,
  findSendsNowhere,
  findGhosts,
  findPostFaderHeadphones,
  findClipping,
  findLowLevels,
  findBoxFaders,
];

/**
 * What an experienced engineer would point at in a setup: faults first, then what is worth a look. An
 * empty list means that there is nothing. A finding is no error: several are tricks when they are meant.
 *
 * @param solution what stands in the setup, by `simulate`.
 */
export function findings(setup: Setup, solution: Solution): Finding[] {
  const survey = surveyOf(setup, solution);
  const found = SEARCHES.flatMap((search) => search(survey));
  const ofSeverity = (wanted: Finding['severity']) =>
    found.filter(({ severity }) => severity === wanted);
  return [...ofSeverity('fault'), ...ofSeverity('note')];
}
