import {
  levelAt,
  levelOf,
  movesBetween,
  outputPlace,
  type Setup,
  type Solution,
} from '../../simulator/index.ts';
import type { LevelScale } from './level-units.ts';
import { moveText } from './moves.ts';
import { gainText, levelText } from './quantities.ts';

/** A setup with what is heard in it. */
export interface Heard {
  readonly setup: Setup;
  readonly solution: Solution;
}

/** By how much the level at an output differs. */
export interface LevelDifference {
  readonly output: string;
  /** `+3.0 dBu → −7.0 dBu` */
  readonly levels: string;
  /** `−10.0 dB`; that it comes or goes; nothing where it is the same. */
  readonly change: string;
}

/** What was moved from one setup of a rig to another, a line each. */
export const differenceLines = ({ setup: { rig, board } }: Heard, after: Heard): string[] =>
  movesBetween(rig, board, after.setup.board).map((move) => moveText(rig, move));

/** The level of a source at every output, in one setup and in another; of all sources together when none is named. */
export function levelDifferences(
  before: Heard,
  after: Heard,
  source: string | undefined,
  scale?: LevelScale,
): LevelDifference[] {
  return after.setup.rig.outputs.map(({ id, label }) => {
    const [was, is] = [before, after].map(({ solution }) => {
      const place = outputPlace(id);
      return source === undefined ? levelAt(solution, place) : levelOf(solution, source, place);
    });
    const levels = [was, is].map((level) => levelText(level, 1, scale)).join(' → ');
    return { output: label, levels, change: changeText(was, is) };
  });
}

/** Levels closer than this, in dB, read alike. */
const ALIKE = 0.05;

function changeText(was: number | undefined, is: number | undefined): string {
  if (was === is) return '';
  if (was === undefined || is === undefined) return 'a loop decides';
  if (was === -Infinity) return 'comes';
  if (is === -Infinity) return 'goes';
  return Math.abs(is - was) < ALIKE ? '' : gainText(is - was);
}
