import { type Drill, grade, movesBetween, type Rig, type Scenario } from '../../simulator/index.ts';
import { faultSentence } from './drill-faults.ts';
import { DRILL_LAWS } from './drill-laws.ts';
import { DRILL_NAMES } from './drill-names.ts';
import { wishSentence } from './drill-wishes.ts';
import { moveText } from './moves.ts';
import { reasonSentence } from './reasons.ts';
import { counted } from './sentence.ts';

const OPENINGS = [
  'Somebody was at the desk while I was out.',
  'We go on in five minutes.',
  'The tide is coming in, and so are the players.',
  'I have written down how it should be. It is not.',
  'Before we record, something has to be put right.',
  'The whole shed is waiting for you.',
] as const;

/** A drill in words: a task that can be shown, played and graded like any other. */
export function drillScenario(drill: Drill): Scenario {
  const { concept, level, seed, par, rig, start, open, checks, follow, solution, voice } = drill;
  const words = DRILL_LAWS[concept];
  const asked = drill.wishes.map((wish, index) => wishSentence(rig, wish, voice + index));
  return {
    id: `drill-${concept}-${level}-${seed}`,
    revision: 1,
    title: DRILL_NAMES[concept],
    kind: 'patch',
    concept,
    rig,
    brief: [`${OPENINGS[voice % OPENINGS.length]} ${asked.join(' ')}`],
    follow,
    start,
    open,
    par,
    checks,
    hints: [words.hint, ...reasonHint(drill), firstMoveHint(rig, drill)],
    debrief: [
      ...drill.faults.map((fault) => faultSentence(rig, fault)),
      words.law,
      `${counted(par, 'move')} at least.`,
    ].join(' '),
    solution,
    proofs: [{ name: 'solution', board: solution, fails: [] }],
  };
}

/** Why the first check fails at the start. */
function reasonHint(drill: Drill): string[] {
  const failing = grade(drill, drill.start).results.find(({ holds }) => !holds);
  const [reason] = failing?.reasons ?? [];
  return reason ? [reasonSentence(drill.rig, reason)] : [];
}

function firstMoveHint(rig: Rig, { start, solution }: Drill): string {
  const [first] = movesBetween(rig, start, solution);
  return first ? `One of the moves: ${moveText(rig, first)}.` : '';
}
