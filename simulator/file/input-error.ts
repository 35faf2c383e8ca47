/** One thing that is wrong with a file, in words for the person who wrote it. */
export interface Problem {
  /** Where it stands in the file, such as `rig.desk.strips[2].id`; empty for the file as a whole. */
  readonly place: string;
  /** Line in the file, from 1; absent where there is none to point at. */
  readonly line?: number;
  readonly expected: string;
  readonly found: string;
  /** What to do about it. */
  readonly hint?: string;
}

/** A file that cannot be used. It lists every problem that was found, at least one. */
export class InputError extends Error {
  override readonly name = 'InputError';
  /** Name of the file, as the caller gave it. */
  readonly file: string;
  readonly problems: readonly Problem[];

  constructor(file: string, problems: readonly Problem[]) {
    super(problems.map((problem) => sentenceOf(file, problem)).join('\n'));
    this.file = file;
    this.problems = problems;
  }
}

/** A problem as one line: file, line, place, what was expected, what was found, a hint. */
function sentenceOf(file: string, { place, line, expected, found, hint }: Problem): string {
  const where = [file, line].filter((part) => part !== undefined).join(':');
  const at = place === '' ? '' : ` at ${place}`;
  return `${where}${at}: expected ${expected}, but found ${found}.${hint ? ` ${hint}` : ''}`;
}
