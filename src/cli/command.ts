import { type ParseArgsConfig, parseArgs } from 'node:util';
import { nearestNames } from '../../simulator/index.ts';
import { ArgumentError } from './argument-error.ts';

/** An option of a command. */
export interface CommandOption {
  readonly type: 'boolean' | 'string';
  readonly multiple?: boolean;
  /** The command cannot do without it; see {@link required}. */
  readonly isRequired?: boolean;
  /** Name of its value in the help: `PLACE`. */
  readonly value?: string;
  readonly help: string;
}

/** What comes in on standard input, piece by piece. */
export type StandardInput = AsyncIterable<Uint8Array | string>;

/** What a command was called with, after checking. */
export interface Call {
  readonly operands: readonly string[];
  readonly flag: (name: string) => boolean;
  /** The value of an option, the last one where it was given twice. */
  readonly option: (name: string) => string | undefined;
  readonly every: (name: string) => readonly string[];
  readonly input: StandardInput;
  /** Says how far a long piece of work is. */
  readonly tell: Tell;
}

/** Takes a line that the next one replaces. */
export type Tell = (line: string) => void;

/** What a command says, and whether all is well. */
export interface Outcome {
  readonly lines: readonly string[];
  /** 1: graded and not passed, or complaints. 3: done, but for files that were set aside. */
  readonly exitCode?: 0 | 1 | 3;
}

export interface Command {
  readonly name: string;
  readonly summary: string;
  /** What it is called with: `SETUP`. The last can stand for one or more: `FILES...`. */
  readonly operands: readonly string[];
  readonly options: Readonly<Record<string, CommandOption>>;
  /** More about it, line by line. */
  readonly notes: readonly string[];
  readonly run: (call: Call) => Promise<Outcome> | Outcome;
}

export const JSON_OPTION: CommandOption = {
  type: 'boolean',
  help: 'JSON; silence is "-inf", unknown is null',
};

/** `desk levels SETUP [--at PLACE]...` */
export function usageOf({ name, operands, options }: Command): string {
  const called = Object.entries(options).map(([option, { value, multiple, isRequired }]) => {
    const written = value ? `--${option} ${value}` : `--${option}`;
    return isRequired ? written : `[${written}]${multiple ? '...' : ''}`;
  });
  return ['desk', name, ...operands, ...called].join(' ');
}

/** Reads the arguments behind the name of a command. @throws ArgumentError when they do not fit it. */
export function readCall(
  command: Command,
  args: readonly string[],
  input: StandardInput,
  tell: Tell,
): Call {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, { type, multiple = false }]) => [
      name,
      { type, multiple },
    ]),
  ) satisfies ParseArgsConfig['options'];
  const { tokens, positionals } = parseArgs({
    args: [...args],
    options,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });

  const given = new Map<string, string[]>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const isKnown = Object.hasOwn(command.options, token.name);
    const option = isKnown ? command.options[token.name] : undefined;
    if (!option || token.rawName.length <= 2) throw unknownOption(command, token.rawName);
    if (option.type === 'boolean' && token.value !== undefined) {
      throw new ArgumentError(where(command), `--${token.name} alone`, `"${token.value}" with it`);
    }
    if (option.type === 'string' && !token.value) {
      throw new ArgumentError(where(command), `${option.value} after --${token.name}`, 'nothing');
    }
    given.set(token.name, [...(given.get(token.name) ?? []), token.value ?? '']);
  }
  checkOperands(command, positionals);
  return {
    operands: positionals,
    flag: (name) => given.has(name),
    option: (name) => given.get(name)?.at(-1),
    every: (name) => given.get(name) ?? [],
    input,
    tell,
  };
}

/** The value of an option that a command cannot do without. @throws ArgumentError when it is missing. */
export function required(command: Command, call: Call, name: string): string {
  const value = call.option(name);
  if (value !== undefined) return value;
  const { value: placeholder = '' } = command.options[name] ?? {};
  throw new ArgumentError(
    where(command),
    `--${name} ${placeholder}`,
    'no such option',
    hint(command),
  );
}

const where = ({ name }: Command): string => `desk ${name}`;
const hint = (command: Command): string => `Usage: ${usageOf(command)}`;

function checkOperands(command: Command, found: readonly string[]): void {
  const wanted = command.operands;
  const missing = wanted[found.length];
  if (missing) throw new ArgumentError(where(command), missing, 'nothing', hint(command));
  const surplus = found[wanted.length];
  if (surplus === undefined || wanted.at(-1)?.endsWith('...')) return;
  const expected = wanted.length === 0 ? 'no argument' : `only ${wanted.join(' ')}`;
  throw new ArgumentError(where(command), expected, `"${surplus}" as well`, hint(command));
}

function unknownOption(command: Command, rawName: string): ArgumentError {
  const known = [...Object.keys(command.options), 'help'].map((name) => `--${name}`);
  const [nearest] = nearestNames(rawName, known);
  return new ArgumentError(
    where(command),
    `one of the options ${known.join(', ')}`,
    `"${rawName}"`,
    `Nearest: ${nearest}.`,
  );
}
