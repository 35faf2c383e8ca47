import {
  type Control,
  controls,
  type Misfit,
  OPEN,
  type Refusal,
  type Rig,
} from '../../simulator/index.ts';
import { placeName } from './places.ts';
import { gainText, levelText } from './quantities.ts';
import { listed, sentence } from './sentence.ts';

type RefusalOf<Code extends Refusal['code']> = Extract<Refusal, { code: Code }>;
type RefusalSayings = { [Code in Refusal['code']]: (refusal: RefusalOf<Code>, rig: Rig) => string };

const refusals = {
  'no-such-control': ({ address }) => `there is no control called “${address}” here`,
  locked: ({ address }, rig) => `${placeName(rig, address)} is locked in this task`,
  misfit: ({ address, misfit }, rig) => {
    const control = controls(rig).get(address);
    return `${placeName(rig, address)} takes ${fitText(misfit, control)}`;
  },
  'output-in-use': ({ output, input }, rig) =>
    `${placeName(rig, output)} already feeds ${placeName(rig, input)}. An output jack takes one cord: pull that one first`,
  'input-in-use': ({ input, output }, rig) =>
    `${placeName(rig, input)} already holds ${output === OPEN ? 'an open plug' : `a cord from ${placeName(rig, output)}`}. Pull it first`,
} satisfies RefusalSayings;

/** Why an edit was refused, and what to do about it. */
export function refusalSentence(rig: Rig, refusal: Refusal): string {
  const say = refusals[refusal.code] as (refusal: Refusal, rig: Rig) => string;
  return sentence(say(refusal, rig));
}

type MisfitOf<Code extends Misfit['code']> = Extract<Misfit, { code: Code }>;
type MisfitSayings = {
  [Code in Misfit['code']]: (misfit: MisfitOf<Code>, control: Control | undefined) => string;
};

const misfits = {
  'wrong-type': ({ expected }) =>
    ({ number: 'a number', switch: 'on or off', option: 'one of its options' })[expected],
  'out-of-range': ({ min, max, closes }, control) => {
    if (control?.kind === 'pan') return 'a position from full left (−1) to full right (1)';
    const inUnit = control?.kind === 'gain' && control.unit === 'dBu' ? levelText : gainText;
    return `${inUnit(min)} to ${inUnit(max)}${closes ? ', or closed' : ''}`;
  },
  'no-such-option': ({ options }, control) =>
    control?.kind === 'cord'
      ? 'a cord from an output jack of this rig'
      : `one of its options: ${listed(optionLabels(control, options))}`,
} satisfies MisfitSayings;

/** What would fit a control. */
function fitText(misfit: Misfit, control: Control | undefined): string {
  const say = misfits[misfit.code] as (misfit: Misfit, control: Control | undefined) => string;
  return say(misfit, control);
}

const optionLabels = (control: Control | undefined, options: readonly string[]): string[] =>
  control?.kind === 'choice' ? control.options.map(({ label }) => label) : [...options];
