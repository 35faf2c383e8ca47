import { existsSync } from 'node:fs';
import { nearestNames, parseScenario, type Scenario } from '../../simulator/index.ts';
import { readCourse } from '../course/index.ts';
import { ArgumentError } from './argument-error.ts';
import type { StandardInput } from './command.ts';
import { pathOf, readInput } from './read-input.ts';
import { ROOT } from './root.ts';

/**
 * Reads a scenario: one of the course by its id, or a file.
 *
 * @param command name of the command that asks, for messages.
 * @throws ArgumentError when there is neither. @throws InputError when the file cannot be used.
 */
export async function readScenario(
  command: string,
  named: string,
  input: StandardInput,
): Promise<Scenario> {
  const { rigs, scenarios } = readCourse(ROOT);
  const known = scenarios.get(named);
  if (known && !existsSync(pathOf(named))) return known;
  const looksLikeId = /^[a-z][a-z0-9-]*$/.test(named);
  if (looksLikeId && !existsSync(pathOf(named))) {
    const nearest = nearestNames(named, scenarios.keys()).join(', ');
    throw new ArgumentError(
      `desk ${command}`,
      'a file, or the id of a scenario of the course',
      `"${named}"`,
      nearest ? `Nearest: ${nearest}.` : undefined,
    );
  }
  const { file, text } = await readInput(named, input);
  return parseScenario(file, text, (id) => rigs.get(id));
}
