import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { InputError, MAX_FILE_LENGTH, parseSetup, type SetupFile } from '../../simulator/index.ts';
import type { StandardInput } from './command.ts';

/** What stands for standard input in place of a file name. */
export const STANDARD_INPUT = '-';

/** A file as it was read: its name for messages, and its text. */
export interface InputText {
  readonly file: string;
  readonly text: string;
}

/** A setup, and the text that it was read from. */
export interface InputSetup extends InputText {
  readonly setup: SetupFile;
}

/** Reads a setup from a file or from standard input. @throws InputError */
export async function readSetup(name: string, input: StandardInput): Promise<InputSetup> {
  const { file, text } = await readInput(name, input);
  return { file, text, setup: parseSetup(file, text) };
}

/**
 * Reads a file, or standard input for `-`. What is larger than the cap is refused before it is read whole.
 *
 * @throws InputError when it cannot be read, is too large, or is not UTF-8.
 */
export async function readInput(name: string, input: StandardInput): Promise<InputText> {
  if (name === STANDARD_INPUT) {
    const file = 'standard input';
    return { file, text: await textOf(file, input) };
  }
  const path = pathOf(name);
  try {
    const { size } = await stat(path);
    if (size > MAX_FILE_LENGTH) throw tooLarge(name, `${size} bytes`);
    const text = await textOf(name, createReadStream(path, { end: MAX_FILE_LENGTH }));
    return { file: name, text };
  } catch (error) {
    if (!isSystemError(error)) throw error;
    throw unusable(name, 'a file that can be read', FOUND[error.code] ?? error.code);
  }
}

/** A path from where the command was called. npm runs scripts in the folder of the project. */
export const pathOf = (name: string): string =>
  process.env['npm_lifecycle_event'] === 'desk'
    ? resolve(process.env['INIT_CWD'] ?? '.', name)
    : resolve(name);

/** What a system error of reading a file means, by its code. */
export const FOUND: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'a folder',
  EACCES: 'one that may not be read',
};

async function textOf(file: string, stream: StandardInput): Promise<string> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const bytes = typeof chunk === 'string' ? Buffer.from(chunk) : chunk;
    size += bytes.length;
    if (size > MAX_FILE_LENGTH) throw tooLarge(file, 'more');
    chunks.push(bytes);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
  } catch {
    throw unusable(file, 'text in UTF-8', 'other bytes');
  }
}

const tooLarge = (file: string, found: string): InputError =>
  unusable(file, `at most ${MAX_FILE_LENGTH} bytes`, found, 'Is this the right file?');

const unusable = (file: string, expected: string, found: string, hint?: string): InputError =>
  new InputError(file, [{ place: '', expected, found, ...(hint ? { hint } : {}) }]);

export const isSystemError = (error: unknown): error is Error & { readonly code: string } =>
  error instanceof Error && 'code' in error && typeof error.code === 'string';
