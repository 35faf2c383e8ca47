import {
  type Board,
  boardOf,
  type Claim,
  type Question,
  type Rig,
  type Scenario,
  type WalkThrough,
  type WalkThroughStep,
  withValues,
} from '../../simulator/index.ts';

/** Words about a desk, and all that a figure in them may speak of. */
export interface Words {
  readonly rig: Rig;
  readonly follow: string;
  /** How the desk stands where the words are. */
  readonly boards: readonly Board[];
  /** How else it stood before, or stands in a mistaken idea: what it may be compared with. */
  readonly others: readonly Board[];
  readonly claims: readonly Claim[];
  /** By how much a quantity that is asked for is probed, in dB. */
  readonly probedBy: readonly number[];
  readonly text: readonly string[];
}

export const ofScenario = (scenario: Scenario): Words => ({
  ...scenario,
  boards: [scenario.start, ...scenario.proofs.map(({ board }) => board)],
  others: [],
  claims: scenario.checks.map(({ claim }) => claim),
  probedBy: [],
  text: [...scenario.brief, ...scenario.hints, scenario.debrief],
});

export function ofQuestion(question: Question): Words {
  const { rig, board, options } = question;
  const imagined = options.flatMap((option) =>
    'asIf' in option && option.asIf ? [option.asIf] : [],
  );
  const quantity = 'quantity' in question ? question.quantity : undefined;
  return {
    ...question,
    boards: [board],
    others: imagined.map((asIf) => withValues(rig, board, boardOf('a mistaken idea', rig, asIf))),
    claims: question.kind === 'statements' ? question.options.map(({ claim }) => claim) : [],
    probedBy: quantity?.kind === 'move' ? [quantity.probe.byDb] : [],
    text: [
      question.ask,
      question.explain,
      ...options.map(({ reason }) => reason),
      ...options.flatMap((option) => ('text' in option ? [option.text] : [])),
    ],
  };
}

export function ofStep({ rig, steps }: WalkThrough, step: WalkThroughStep): Words {
  const [first, before] = [steps[0], steps[steps.indexOf(step) - 1]];
  return {
    ...step,
    rig,
    boards: [step.board],
    others: [first, before].flatMap((other) => (other ? [other.board] : [])),
    claims: step.heard,
    probedBy: [],
    text: [step.say],
  };
}
