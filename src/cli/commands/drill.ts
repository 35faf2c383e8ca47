import { drillOf, movesBetween } from '../../../simulator/index.ts';
import { readDrillName } from '../../share/drill-link.ts';
import { claimSentence, drillScenario, moveText } from '../../text/index.ts';
import { ArgumentError } from '../argument-error.ts';
import type { Command } from '../command.ts';

/** A generated drill: its brief, its checks, and how few moves will do. */
export const drill: Command = {
  name: 'drill',
  summary: 'a generated drill, the same for the same seed',
  operands: ['CONCEPT', 'LEVEL', 'SEED'],
  options: {
    solution: { type: 'boolean', help: 'one shortest solution and the debrief as well' },
  },
  notes: [],
  run: ({ operands, flag }) => {
    const ask = readDrillName(operands.join('.'));
    if ('expected' in ask) throw new ArgumentError('desk drill', ask.expected, ask.found);
    const made = drillOf(ask.concept, ask.level, ask.seed);
    const { title, brief, debrief } = drillScenario(made);
    const solution = [
      '',
      'Solution:',
      ...movesBetween(made.rig, made.start, made.solution).map(
        (move) => `  ${moveText(made.rig, move)}`,
      ),
      '',
      debrief,
    ];
    return {
      lines: [
        `${title}, level ${made.level}, seed ${made.seed}`,
        '',
        ...brief,
        '',
        ...made.checks.map(({ claim }) => `- ${claimSentence(made.rig, claim)}`),
        '',
        `Par: ${made.par}`,
        ...(flag('solution') ? solution : []),
      ],
    };
  },
};
