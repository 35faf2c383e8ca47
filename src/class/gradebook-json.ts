import type { Gradebook } from './gradebook.ts';
import { analyse } from './item-analysis.ts';
import { itemTable } from './item-table.ts';
import { pointersIn } from './pointers.ts';

/** A gradebook with all that is read off it, as data to be written as JSON. */
export const gradebookData = (book: Gradebook) => ({
  ...book,
  itemTable: itemTable(book),
  analysis: analyse(book),
  pointers: pointersIn(book),
});
