import type { Address, Rig, Verdict } from '../../simulator/index.ts';
import { placeName } from './places.ts';
import { counted, listedFirst, sentence } from './sentence.ts';

const MOST_NAMED = 4;

/** The words that stand beside a check. */
export const resultWord = (holds: boolean): string => (holds ? 'Passed' : 'Not yet');

/** A verdict in one sentence: `Passed: 3 of 3 points.` */
export function verdictSentence({ passed, score, of }: Verdict): string {
  return sentence(`${resultWord(passed)}: ${score} of ${counted(of, 'point')}`);
}

/** Which locked controls were moved; nothing when none was. */
export function movedLocksSentence(rig: Rig, moved: readonly Address[]): string | undefined {
  if (moved.length === 0) return undefined;
  const names = moved.map((address) => placeName(rig, address));
  const verb =
    moved.length === 1
      ? 'is locked in this task and was moved'
      : 'are locked in this task and were moved';
  return sentence(`${listedFirst(names, MOST_NAMED)} ${verb}`);
}
