import type { MarkedQuestion, OptionResult, Question } from '../../simulator/index.ts';
import { capitalised } from './capitalised.ts';
import { heardSentence } from './claims.ts';
import { findingSentence, mendingSentence } from './findings.ts';
import { goalName } from './places.ts';
import { gainText, levelText } from './quantities.ts';
import { counted } from './sentence.ts';

/** What of an answer is right, where it has parts or where nothing else is said to it; mostly nothing. */
export function answerSentence({ kind }: Question, { parts, told }: MarkedQuestion): string {
  const right = parts.filter(({ passed }) => passed).length;
  if (right === parts.length) return '';
  const are = right === 1 ? 'is' : 'are';
  if (kind === 'outputs') return `${right} of ${counted(parts.length, 'place')} ${are} right.`;
  if (kind === 'order') return `${right} of ${counted(parts.length, 'step')} ${are} right.`;
  if (kind === 'predict' && told.length === 0) {
    return 'Something else is heard there. Go along the way, and count each gain on it once.';
  }
  return '';
}

/** What an option is about, where its reason needs it in front: the output. */
export function optionHead({ kind, options, rig }: Question, { id }: OptionResult): string {
  const output = kind === 'outputs' && options.find((option) => option.id === id)?.output;
  return output ? `${capitalised(goalName(rig, output))}:` : '';
}

/** What the simulator found for an option that is answered, beside what its author says; mostly nothing. */
export function optionHeardSentence(question: Question, option: OptionResult): string {
  const { rig, kind } = question;
  const { judgement, finding, value, holds } = option;
  if (judgement) return heardSentence(rig, judgement);
  if (finding) return `${findingSentence(rig, finding)} ${mendingSentence(rig, finding)}`;
  if (kind !== 'predict' || !holds) return '';
  const isLevel = question.quantity.kind === 'level';
  return `Computed: ${isLevel ? levelText(value) : gainText(Number(value))}.`;
}
