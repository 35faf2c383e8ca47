import { noMarkSentence } from '../text/index.ts';
import { type Cell, toCsv } from './csv.ts';
import type { GradedHandIn } from './grade-hand-in.ts';
import type { GradedItem } from './grade-item.ts';
import type { Gradebook } from './gradebook.ts';

/** What a row of a table stands for: a learner, an item of a learner, or a check of an item of a learner. */
export const CSV_DEPTHS = ['learner', 'item', 'check'] as const;
export type CsvDepth = (typeof CSV_DEPTHS)[number];

/**
 * A gradebook as CSV. Shares are from 0 to 1, moments are UTC by ISO 8601, times in seconds. Every row says
 * which course and simulator marked it.
 */
export const gradebookCsv = (book: Gradebook, depth: CsvDepth): string =>
  toCsv(TABLES[depth](book));

const TABLES: Readonly<Record<CsvDepth, (book: Gradebook) => Cell[][]>> = {
  learner: (book) => [
    [...LEARNER, 'claimed', 'computed', 'passed', ...book.words.map(({ id }) => id), ...VERSIONS],
    ...book.rows.map((row) => [
      ...learnerCells(row),
      row.claimed,
      row.share,
      yesNo(row.passed),
      ...row.items.map(({ share }) => share),
      ...versionCells(book),
    ]),
  ],
  item: (book) => [
    [
      ...LEARNER,
      ...ITEM,
      'claimed',
      'computed',
      'passed',
      'no mark because',
      ...EFFORT,
      ...VERSIONS,
    ],
    ...eachItem(book, (row, item, title) => [
      [
        ...learnerCells(row),
        ...itemCells(item, title),
        item.claimed,
        item.share,
        yesNo(item.passed),
        item.noMark && noMarkSentence(item.noMark),
        item.attempts,
        item.hints,
        item.spentMs / 1000,
        item.seed,
        item.option,
        ...versionCells(book),
      ],
    ]),
  ],
  check: (book) => [
    [...LEARNER, ...ITEM, 'check', 'check weight', 'passed', ...VERSIONS],
    ...eachItem(book, (row, item, title) =>
      item.parts.map((part) => [
        ...learnerCells(row),
        ...itemCells(item, title),
        part.id,
        part.weight,
        yesNo(part.passed),
        ...versionCells(book),
      ]),
    ),
  ],
};

const LEARNER = ['learner', 'name', 'file', 'handed in'];
const ITEM = ['item', 'title', 'weight'];
const EFFORT = ['attempts', 'hints', 'seconds', 'seed', 'option'];
const VERSIONS = ['course version', 'simulator version'];

const learnerCells = ({ learner, name, file, handedInAt }: GradedHandIn): Cell[] => [
  learner,
  name,
  file,
  new Date(handedInAt).toISOString(),
];

const itemCells = ({ id, weight }: GradedItem, title: string): Cell[] => [id, title, weight];

const versionCells = ({ course, simulator }: Gradebook): Cell[] => [course, simulator];

const eachItem = (
  { rows, words }: Gradebook,
  cells: (row: GradedHandIn, item: GradedItem, title: string) => Cell[][],
): Cell[][] =>
  rows.flatMap((row) =>
    row.items.flatMap((item, index) => cells(row, item, words[index]?.title ?? item.id)),
  );

const yesNo = (is: boolean): string => (is ? 'yes' : 'no');
