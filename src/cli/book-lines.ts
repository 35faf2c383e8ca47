import type { GradedHandIn } from '../class/grade-hand-in.ts';
import type { Gradebook } from '../class/gradebook.ts';
import { pointersIn } from '../class/pointers.ts';
import {
  counted,
  handInNoteSentence,
  itemNoteSentence,
  noMarkSentence,
  pointerSentence,
  resultWord,
  shareText,
} from '../text/index.ts';
import { tableLines } from './terminal.ts';

/** A gradebook as lines: a table of learners, then whatever an instructor should know. */
export function bookLines(book: Gradebook): string[] {
  const { assignment, rows, superseded, aside } = book;
  const titleOf = (id: string) => book.words.find((words) => words.id === id)?.title ?? id;
  const passed = rows.filter((row) => row.passed).length;
  const remarks = [
    ...rows.flatMap((row) => rowRemarks(row, titleOf)),
    ...pointersIn(book).map((pointer) => pointerSentence(pointer, titleOf)),
    ...superseded.map(({ file, learner }) => `${file}: ${learner} has a newer hand-in.`),
  ];
  return [
    assignment.title,
    `Passed by ${passed} of ${counted(rows.length, 'learner')}, from ${assignment.passPercent} % on. Marked by course ${book.course}, simulator ${book.simulator}.`,
    ...(rows.length > 0 ? ['', ...tableLines([HEADER, ...rows.map(rowCells)])] : []),
    ...section('To know:', remarks),
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

function rowRemarks(
  { file, items, notes }: GradedHandIn,
  titleOf: (item: string) => string,
): string[] {
  return [
    ...notes.map((note) => `${file}: ${handInNoteSentence(note)}`),
    ...items.flatMap(({ id, noMark, notes: itemNotes }) =>
      [...(noMark ? [noMarkSentence(noMark)] : []), ...itemNotes.map(itemNoteSentence)].map(
        (words) => `${file}, ${titleOf(id)}: ${words}`,
      ),
    ),
  ];
}

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length > 0 ? ['', title, ...lines.map((line) => `  ${line}`)] : [];
