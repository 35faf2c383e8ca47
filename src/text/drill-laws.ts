import type { DrillConcept } from '../../simulator/index.ts';

interface ConceptWords {
  /** Where to look first. */
  readonly hint: string;
  /** The law that the drill trains. */
  readonly law: string;
}

/** What there is to know about each concept. */
export const DRILL_LAWS: Readonly<Record<DrillConcept, ConceptWords>> = {
  'insert-or-send': {
    hint: 'An insert is two cords, there and back. A send has no return of its own.',
    law: 'What is inserted takes the whole signal; what hangs on a send stands beside it.',
  },
  'pre-or-post': {
    hint: 'On which of the two wires of the strip does the send sit?',
    law: 'A send before the fader does not know of the fader; one after it goes along.',
  },
  'one-output-each': {
    hint: 'Follow a track out of the box. By which output does it leave, and which strip hangs on that?',
    law: 'A track leaves the box once, by the output that its strip hangs on.',
  },
  'shared-outputs': {
    hint: 'What else leaves by this output? Look at the mix of the box and at its buses.',
    law: 'An output of the converter is a sum: whatever is assigned to it comes in on one strip.',
  },
  'order-across': {
    hint: 'Plug-ins come before everything on the desk. Of devices, the cords say which comes first.',
    law: 'The order is box, converter, strip; within an insert it is the order of the cords.',
  },
  'returns-and-loops': {
    hint: 'Follow what the effect gives back. Where does the return lead, besides the mix?',
    law: 'A return is a source like any other: it has sends and assigns, and can feed what it came from.',
  },
  subgroups: {
    hint: 'Count the ways into the main bus. Main and subgroup at once are two.',
    law: 'In series a subgroup takes the place of the main assign; in parallel it stands beside it.',
  },
  'pan-and-pairs': {
    hint: 'Follow one side of the pair. On which sides of the mix does it arrive?',
    law: 'A pair stays one by two outputs, two strips and two pans that point apart.',
  },
  'gain-staging': {
    hint: 'Begin at the first stage that is off. What comes behind it shifts with it.',
    law: 'Every stage has its level. One that is made good later has lost something on the way.',
  },
  'bay-normals': {
    hint: 'Which input has a plug in it? A plug breaks a normal, in a full-normalled row from either jack.',
    law: 'Without a cord the normal feeds; a plug takes its place, even one with nothing behind it.',
  },
  'polarity-and-latency': {
    hint: 'Two ways of one signal add up. Is one of them inverted, late or missing?',
    law: 'Two alike in step are 6 dB more; inverted they cancel, and late they make a comb.',
  },
  'solo-and-mute': {
    hint: 'Is something soloed? And does solo cut the mix, or change what the monitors hear?',
    law: 'Solo in place changes the mix; PFL and AFL change what one listens to.',
  },
};
