import type { GradedHandIn } from '../class/grade-hand-in.ts';
import type { Gradebook } from '../class/gradebook.ts';
import { pointerRemarks, type Remark, remarksOn } from '../class/remarks.ts';
import { counted, listed, resultWord, shareText } from '../text/index.ts';
import { tableLines } from './terminal.ts';

/** A gradebook as lines: a table of learners, then whatever an instructor should know. */
export function bookLines(book: Gradebook): string[] {
  const { assignment, rows, superseded, aside } = book;
  const passed = rows.filter((row) => row.passed).length;
  return [
    assignment.title,
    `Passed by ${passed} of ${counted(rows.length, 'learner')}, from ${assignment.passPercent} % on. Marked by course ${book.course}, simulator ${book.simulator}.`,
    ...(rows.length > 0 ? ['', ...tableLines([HEADER, ...rows.map(rowCells)])] : []),
    ...section('To know:', remarksOn(book).map(remarkLine)),
    ...section('Alike:', pointerRemarks(book).map(remarkLine)),
    ...section(
      'Replaced by a newer hand-in of the same learner:',
      superseded.map(({ file, learner }) => `${file}, of ${learner}`),
    ),
    ...section(
      'Set aside:',
      aside.map(({ reason }) => reason),
    ),
  ];
}

const HEADER = ['learner', 'name', 'claimed', 'computed', 'result'];

const rowCells = ({ learner, name = '', claimed, share, passed }: GradedHandIn): string[] => [
  learner,
  name,
  claimed === undefined ? '' : shareText(claimed),
  shareText(share),
  resultWord(passed),
];

const remarkLine = ({ words, learners }: Remark): string =>
  learners.length > 0 ? `${words} (${listed(learners)})` : words;

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length > 0 ? ['', title, ...lines.map((line) => `  ${line}`)] : [];
