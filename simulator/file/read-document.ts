import {
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  type YAMLError,
  type YAMLWarning,
} from 'yaml';
import { InputError, type Problem } from './input-error.ts';
import { type PlaceInFile, placeText } from './place.ts';

/** Largest setup, scenario or quiz file that is read, in UTF-16 code units. */
export const MAX_FILE_LENGTH = 256 * 1024;

/** Keys that JavaScript treats specially. */
export const FORBIDDEN_KEYS: ReadonlySet<string> = new Set([
  '__proto__',
  'constructor',
  'prototype',
]);
/** How deep maps and lists may lie in one another. */
export const MAX_DEPTH = 24;
const TOO_DEEP = { expected: `at most ${MAX_DEPTH} levels`, found: 'deeper nesting' };

/** A YAML or JSON file as plain data: objects, arrays, strings, booleans, null and finite numbers. */
export interface FileDocument {
  readonly file: string;
  /** The data. `-.inf` and `.inf` stand as the strings `-inf` and `inf`, as JSON has to write them. */
  readonly data: unknown;
  /** Line of a place, from 1, or of the nearest place around it that stands in the file. */
  readonly lineOf: (place: PlaceInFile) => number | undefined;
}

/**
 * Reads the text of a YAML or JSON file as plain data.
 *
 * @param file its name, for messages.
 * @param longest how many characters are read.
 * @throws InputError when it is too long, malformed, too deep, uses aliases or tags, repeats a key or
 *   has one of the keys that JavaScript treats specially, or holds a number that is not a number.
 */
export function readDocument(file: string, text: string, longest = MAX_FILE_LENGTH): FileDocument {
  if (text.length > longest) {
    throw new InputError(file, [
      {
        place: '',
        expected: `at most ${longest} characters`,
        found: `${text.length}`,
        hint: 'Is this the right file?',
      },
    ]);
  }
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, uniqueKeys: false, version: '1.2' });
  const lineAt = (offset: number | undefined) =>
    offset === undefined ? undefined : lines.linePos(offset).line;

  const malformed = [...document.errors, ...document.warnings]
    .slice(0, 5)
    .map((error): Problem => ({ ...problemAt([], lineAt(error.pos[0])), ...malformation(error) }));
  if (malformed.length > 0) throw new InputError(file, malformed);

  const problems: Problem[] = [];
  const data = plain(document.contents, [], (problem, offset, place) => {
    problems.push({ ...problemAt(place, lineAt(offset)), ...problem });
  });
  if (problems.length > 0) throw new InputError(file, problems);

  return { file, data, lineOf: (place) => lineAt(offsetOf(document.contents, place)) };
}

/** Where a place begins in the text, at its key in a map; or else the nearest place around it that is there. */
function offsetOf(root: unknown, place: PlaceInFile): number | undefined {
  let node = root;
  let offset = isNode(root) ? root.range?.[0] : undefined;
  for (const step of place) {
    const pair = isMap(node)
      ? node.items.find(({ key }) => isScalar(key) && String(key.value) === step)
      : undefined;
    const begin = isSeq(node) ? node.items[Number(step)] : pair?.key;
    if (!isNode(begin) || !begin.range) return offset;
    offset = begin.range[0];
    node = pair ? pair.value : begin;
  }
  return offset;
}

/** What the parser found wrong. It gives up on very deep nesting when its stack is full. */
function malformation({
  message,
  code,
}: YAMLError | YAMLWarning): Pick<Problem, 'expected' | 'found'> {
  if (message.startsWith('Maximum call stack')) return TOO_DEEP;
  if (code === 'MULTIPLE_DOCS') return { expected: 'one document', found: 'a second one' };
  const [found = code] = message.split(/ at line|\n/);
  return { expected: 'well-formed YAML or JSON', found };
}

type Report = (
  problem: Pick<Problem, 'expected' | 'found' | 'hint'>,
  offset: number | undefined,
  place: PlaceInFile,
) => void;

/** A node as plain data. What may not be there is reported and left out. */
function plain(node: unknown, place: PlaceInFile, report: Report): unknown {
  const offset = isNode(node) ? node.range?.[0] : undefined;
  if (place.length > MAX_DEPTH) {
    report(TOO_DEEP, offset, place);
    return null;
  }
  if (isAlias(node)) {
    report({ expected: 'a value', found: `the alias *${node.source}` }, offset, place);
    return null;
  }
  if (isNode(node) && node.tag !== undefined && node.tag !== '') {
    report({ expected: 'a value without a tag', found: `the tag ${node.tag}` }, offset, place);
    return null;
  }
  if (isSeq(node)) return node.items.map((item, index) => plain(item, [...place, index], report));
  if (isMap(node)) {
    const entries = new Map<string, unknown>();
    for (const { key, value } of node.items) {
      const name = isScalar(key) ? String(key.value) : '(not a name)';
      const keyOffset = isNode(key) ? key.range?.[0] : offset;
      if (!isScalar(key) || FORBIDDEN_KEYS.has(name)) {
        const found = isScalar(key) ? `the key ${name}` : 'a key that is not text';
        report({ expected: 'a plain name as key', found, hint: 'Remove it.' }, keyOffset, place);
      } else if (entries.has(name)) {
        const found = `the key ${name} a second time`;
        report({ expected: 'each key once', found, hint: 'Remove one.' }, keyOffset, place);
      } else {
        entries.set(name, plain(value, [...place, name], report));
      }
    }
    return Object.fromEntries(entries);
  }
  return plainScalar(isScalar(node) ? node.value : node, (problem) =>
    report(problem, offset, place),
  );
}

function plainScalar(
  value: unknown,
  report: (problem: Pick<Problem, 'expected' | 'found'>) => void,
) {
  if (value === -Infinity) return '-inf';
  if (value === Infinity) return 'inf';
  const plainTypes = ['string', 'boolean', 'number'];
  if (value === null || value === undefined) return null;
  if (plainTypes.includes(typeof value) && !Number.isNaN(value)) return value;
  report({ expected: 'text, a number, true or false', found: String(value) });
  return null;
}

const problemAt = (place: PlaceInFile, line: number | undefined) => ({
  place: placeText(place),
  ...(line === undefined ? {} : { line }),
});
