import { InputError, nearestNames } from '../../simulator/index.ts';
import { ArgumentError } from './argument-error.ts';
import { type Command, type Outcome, readCall, type StandardInput, type Tell } from './command.ts';
import { checkLessons } from './commands/check-lessons.ts';
import { controls } from './commands/controls.ts';
import { drill } from './commands/drill.ts';
import { findings } from './commands/findings.ts';
import { grade } from './commands/grade.ts';
import { gradeClass } from './commands/grade-class.ts';
import { hunt } from './commands/hunt.ts';
import { levels } from './commands/levels.ts';
import { paths } from './commands/paths.ts';
import { schema } from './commands/schema.ts';
import { start } from './commands/start.ts';
import { commandHelpLines, helpLines } from './help.ts';
import { visible } from './terminal.ts';

const COMMANDS: readonly Command[] = [
  levels,
  paths,
  findings,
  start,
  grade,
  gradeClass,
  hunt,
  controls,
  checkLessons,
  drill,
  schema,
];

/** What the command line says on either stream, and the code that it ends with. */
export interface DeskResult {
  /** 0 done, 1 graded and not passed, 2 bad input, 3 done but for files that were set aside. */
  readonly exitCode: 0 | 1 | 2 | 3;
  readonly stdout: string;
  readonly stderr: string;
}

/**
 * Runs the command line. Never throws because of what it was given.
 *
 * @param tell takes how far it is, while it runs.
 */
export async function runDesk(
  args: readonly string[],
  input: StandardInput,
  tell: Tell = () => {},
): Promise<DeskResult> {
  try {
    const { lines, exitCode = 0 } = await run(args, input, tell);
    return { exitCode, stdout: textOf(lines), stderr: '' };
  } catch (error) {
    const complaints = complaintsIn(error);
    if (!complaints) throw error;
    return { exitCode: 2, stdout: '', stderr: textOf(complaints) };
  }
}

async function run(
  [name, ...rest]: readonly string[],
  input: StandardInput,
  tell: Tell,
): Promise<Outcome> {
  if (name === '--help' || name === 'help') return { lines: helpLines(COMMANDS) };
  const names = COMMANDS.map((command) => command.name);
  const command = COMMANDS.find((one) => one.name === name);
  if (!command) {
    const hint = name ? `Nearest: ${nearestNames(name, names)[0]}.` : 'Try --help.';
    const found = name ? `"${name}"` : 'nothing';
    throw new ArgumentError('desk', `one of the commands ${names.join(', ')}`, found, hint);
  }
  const options = rest.includes('--') ? rest.slice(0, rest.indexOf('--')) : rest;
  if (options.includes('--help')) return { lines: commandHelpLines(command) };
  return command.run(readCall(command, rest, input, tell));
}

/** What is wrong with what was given, line by line; nothing when it is the program that is at fault. */
function complaintsIn(error: unknown): string[] | undefined {
  if (error instanceof ArgumentError) return [error.message];
  if (error instanceof AggregateError)
    return error.errors.flatMap((one) => complaintsIn(one) ?? []);
  if (!(error instanceof InputError)) return undefined;
  // One line a problem, whatever the file has put into it.
  return error.problems.map((problem) => new InputError(error.file, [problem]).message);
}

const textOf = (lines: readonly string[]): string => `${lines.map(visible).join('\n')}\n`;
