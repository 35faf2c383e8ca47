import {
  type Finding,
  findings as findingsOf,
  type Rig,
  simulate,
} from '../../../simulator/index.ts';
import { findingSentence, mendingSentence, severityWord } from '../../text/index.ts';
import { type Command, JSON_OPTION } from '../command.ts';
import { readSetup } from '../read-input.ts';
import { toJson } from '../terminal.ts';

export const findings: Command = {
  name: 'findings',
  summary: 'what an engineer would point at, and how to mend it',
  operands: ['SETUP'],
  options: { json: JSON_OPTION },
  notes: [
    'A fault is hardly ever meant. What is worth a look is a trick when it is meant.',
    'The exit code is 0 whatever is found.',
  ],
  run: async (call) => {
    const { setup } = await readSetup(call.operands[0] ?? '', call.input);
    const found = findingsOf(setup, simulate(setup));
    if (call.flag('json')) return { lines: toJson({ findings: found }).split('\n') };
    if (found.length === 0) return { lines: ['Nothing to point at.'] };
    return { lines: found.flatMap((finding) => findingLines(setup.rig, finding)) };
  },
};

const findingLines = (rig: Rig, finding: Finding): string[] => [
  `${severityWord(finding.severity)} (${finding.code}): ${findingSentence(rig, finding)}`,
  `  ${mendingSentence(rig, finding)}`,
];
