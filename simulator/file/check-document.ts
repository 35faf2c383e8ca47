import type * as z from 'zod/mini';
import { safeParse } from 'zod/mini';
import { InputError, type Problem } from './input-error.ts';
import { type PlaceInFile, placeText } from './place.ts';
import type { FileDocument } from './read-document.ts';

type Issue = z.core.$ZodIssue;

/**
 * The data of a document as its schema describes it.
 *
 * @throws InputError with every problem: place, line, what was expected, what was found.
 */
export function checkDocument<T>(document: FileDocument, schema: z.ZodMiniType<T>): T {
  const result = safeParse(schema, document.data);
  if (result.success) return result.data;
  throw new InputError(
    document.file,
    result.error.issues.flatMap((issue) => problemsOf(issue, document)),
  );
}

/** A problem at a place of a document, with its line. */
export function problemIn(
  document: FileDocument,
  place: PlaceInFile,
  problem: Omit<Problem, 'place' | 'line'>,
): Problem {
  const line = document.lineOf(place);
  return { place: placeText(place), ...(line === undefined ? {} : { line }), ...problem };
}

function problemsOf(issue: Issue, document: FileDocument): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) =>
      problemIn(document, [...issue.path, key], {
        expected: 'a key of the format',
        found: `the unknown key ${key}`,
        hint: 'Check its spelling, or remove it.',
      }),
    );
  }
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    return nearestBranch(issue.errors).flatMap((inner) =>
      problemsOf({ ...inner, path: [...issue.path, ...inner.path] }, document),
    );
  }
  const isKey = issue.code === 'invalid_key';
  const found = isKey
    ? `a key of ${String(issue.path.at(-1)).length} characters`
    : describe(valueAt(document.data, issue.path));
  return [problemIn(document, issue.path, { expected: expectedBy(issue), found })];
}

/** The branch of a union that the data came nearest to: the one whose first problem lies deepest. */
function nearestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (issues: readonly Issue[]) => Math.max(0, ...issues.map(({ path }) => path.length));
  return branches.reduce((best, next) => (depth(next) > depth(best) ? next : best));
}

const NAMES_OF_TYPES: Readonly<Record<string, string>> = {
  object: 'a map of keys',
  record: 'a map of keys',
  array: 'a list',
  int: 'a whole number',
  boolean: 'true or false',
  string: 'text',
};

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return NAMES_OF_TYPES[issue.expected] ?? `a ${issue.expected}`;
    case 'invalid_key':
      return issue.issues.map(expectedBy).join(', ');
    case 'too_small':
      return `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}${unitOf(issue.origin)}`;
    case 'too_big':
      return `${issue.inclusive ? 'at most' : 'less than'} ${issue.maximum}${unitOf(issue.origin)}`;
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'invalid_format':
      return issue.format === 'regex' ? 'lower-case letters, digits and hyphens' : issue.format;
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options)
        ? `one of ${issue.options.map(String).join(', ')}`
        : 'another kind of value';
    default:
      return issue.message;
  }
}

function unitOf(origin: string): string {
  if (origin === 'string') return ' characters';
  return origin === 'array' || origin === 'set' ? ' entries' : '';
}

function valueAt(data: unknown, place: PlaceInFile): unknown {
  return place.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PropertyKey, unknown>)[step]
        : undefined,
    data,
  );
}

/** A value in a few words. */
function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'an empty value';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return 'a map of keys';
  const text = typeof value === 'string' ? `"${value}"` : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
