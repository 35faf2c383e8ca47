import { type Command, usageOf } from './command.ts';
import { tableLines } from './terminal.ts';

/** The help of the whole command line. */
export const helpLines = (commands: readonly Command[]): string[] => [
  'desk: the simulator without its drawing. Nothing is written but what grade-class is told to.',
  '',
  'Usage: npm run -s desk -- COMMAND ...',
  '',
  ...tableLines(
    commands.map(({ name, operands, summary }) => [`  ${[name, ...operands].join(' ')}`, summary]),
  ),
  '',
  'SETUP is a YAML or JSON file, or - for standard input.',
  'COMMAND --help says more. Exit codes: 0 done, 1 graded and not passed, 2 bad input, 3 files set aside.',
];

/** The help of one command. */
export function commandHelpLines(command: Command): string[] {
  const options = Object.entries({
    ...command.options,
    help: { type: 'boolean', help: 'this text' } as const,
  }).map(([name, option]) => [
    `  --${name}${'value' in option && option.value ? ` ${option.value}` : ''}`,
    option.help,
  ]);
  return [
    `desk ${command.name}: ${command.summary}`,
    '',
    `Usage: npm run -s desk -- ${usageOf(command).replace(/^desk /, '')}`,
    '',
    ...tableLines(options),
    '',
    ...command.notes,
  ];
}
