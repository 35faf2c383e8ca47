import { existsSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { type Assignment, parseAssignment } from '../../class/assignment.ts';
import { assignmentFragment } from '../../class/assignment-fragment.ts';
import { assignmentOfLink } from '../../class/assignment-link.ts';
import {
  type DroppedFile,
  type Gradebook,
  gradeClass as gradeFiles,
} from '../../class/gradebook.ts';
import { CSV_DEPTHS, type CsvDepth, gradebookCsv } from '../../class/gradebook-csv.ts';
import { gradebookData } from '../../class/gradebook-json.ts';
import { readCourse } from '../../course/index.ts';
import { ArgumentError } from '../argument-error.ts';
import { bookLines } from '../book-lines.ts';
import type { Call, Command, Tell } from '../command.ts';
import { readDropped } from '../read-dropped.ts';
import { pathOf, readInput } from '../read-input.ts';
import { ROOT } from '../root.ts';
import { toJson } from '../terminal.ts';

export const gradeClass: Command = {
  name: 'grade-class',
  summary: 'all that a class handed in, marked anew',
  operands: ['ASSIGNMENT', 'FILES...'],
  options: {
    csv: { type: 'string', value: 'OUT', help: 'writes a table as CSV' },
    depth: {
      type: 'string',
      value: 'DEPTH',
      help: `what a row of it is: ${CSV_DEPTHS.join(', ')}; learner when left out`,
    },
    json: { type: 'string', value: 'OUT', help: 'writes everything as JSON' },
  },
  notes: [
    'ASSIGNMENT is a file, or the link of an assignment. FILES are hand-ins, or archives (zip) of them.',
    'A file that cannot be used is listed with the reason, and the rest is marked. The exit code is 3 if',
    'there was any. A file that exists is not written over.',
  ],
  run: async (call) => {
    const [named = '', ...names] = call.operands;
    const outputs = outputsOf(call);
    const { name, assignment } = await readAssignment(named, call);
    const { files, aside } = await readDropped(names);
    const graded = gradeAll(name, assignment, files, call.tell);
    const book = { ...graded, aside: [...aside, ...graded.aside] };
    for (const { path, textOf } of outputs) await writeFile(path, textOf(book), { flag: 'wx' });
    return { lines: bookLines(book), exitCode: book.aside.length > 0 ? 3 : 0 };
  },
};

interface Output {
  readonly path: string;
  readonly textOf: (book: Gradebook) => string;
}

/** What is to be written where. @throws ArgumentError for a name that is taken, or an unknown depth. */
function outputsOf(call: Call): Output[] {
  const asked = call.option('depth') ?? 'learner';
  const depth = CSV_DEPTHS.find((one): one is CsvDepth => one === asked);
  if (!depth) {
    throw new ArgumentError(
      'desk grade-class',
      `a depth of ${CSV_DEPTHS.join(', ')}`,
      `"${asked}"`,
    );
  }
  const textOf = {
    csv: (book: Gradebook) => gradebookCsv(book, depth),
    json: (book: Gradebook) => `${toJson(gradebookData(book))}\n`,
  };
  return (['csv', 'json'] as const).flatMap((kind) => {
    const name = call.option(kind);
    if (name === undefined) return [];
    const path = pathOf(name);
    if (!existsSync(path)) return [{ path, textOf: textOf[kind] }];
    const found = `the file ${name}`;
    throw new ArgumentError(
      'desk grade-class',
      `a new name after --${kind}`,
      found,
      'Choose another one.',
    );
  });
}

/** @throws InputError */
async function readAssignment(
  named: string,
  { input }: Call,
): Promise<{ readonly name: string; readonly assignment: Assignment }> {
  const link = assignmentFragment(named);
  if (link) return { name: 'The link', assignment: await assignmentOfLink(link) };
  const { file, text } = await readInput(named, input);
  return { name: file, assignment: parseAssignment(file, text) };
}

/** Marks everything, and tells after each tenth of it how far it is. */
function gradeAll(
  name: string,
  assignment: Assignment,
  files: readonly DroppedFile[],
  tell: Tell,
): Gradebook {
  const run = gradeFiles(name, assignment, readCourse(ROOT), files);
  let told = 0;
  for (let step = run.next(); ; step = run.next()) {
    if (step.done) return step.value;
    const { done, of } = step.value;
    const tenths = Math.floor((done / of) * 10);
    if (tenths > told) tell(`Marked ${done} of ${of}.`);
    told = tenths;
  }
}
