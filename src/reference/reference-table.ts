/** A table of the reference: what it is of, and figures that were computed. */
export interface ReferenceTable {
  /** Its place on the page: `#levels`. */
  readonly id: string;
  readonly title: string;
  /** What it says and how it is read, in a sentence or two. */
  readonly about: string;
  readonly columns: readonly string[];
  /** As many cells as there are columns; the first names the row. */
  readonly rows: readonly (readonly string[])[];
  /** Ids of the sources that it rests on. */
  readonly sources: readonly string[];
}
