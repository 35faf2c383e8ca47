/** Arguments that a command cannot be run with. */
export class ArgumentError extends Error {
  override readonly name = 'ArgumentError';

  /** In the manner of a bad file: what was expected, what was found, and what to do about it. */
  constructor(where: string, expected: string, found: string, hint?: string) {
    super(`${where}: expected ${expected}, but found ${found}.${hint ? ` ${hint}` : ''}`);
  }
}
