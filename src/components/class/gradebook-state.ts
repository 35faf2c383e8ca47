import type { Gradebook } from '../../class/gradebook.ts';
import type { AssignmentSource, GradingAnswer } from './grading-worker.ts';

/** How it stands with the gradebook. */
export interface GradebookState {
  readonly source?: AssignmentSource;
  readonly files: readonly File[];
  /** While something is being marked: what was asked for, and how far it is. */
  readonly grading?: {
    readonly source: AssignmentSource;
    readonly files: readonly File[];
    readonly done: number;
    readonly of: number;
  };
  readonly problems: readonly string[];
  readonly book?: Gradebook;
  /** The book before the assignment was replaced, of the same files. */
  readonly before?: Gradebook;
}

export type GradebookEvent =
  | GradingAnswer
  | {
      readonly code: 'asked';
      readonly source: AssignmentSource;
      readonly files: readonly File[];
    }
  | { readonly code: 'files'; readonly files: readonly File[] }
  | { readonly code: 'stopped' };

export const EMPTY: GradebookState = { files: [], problems: [] };

/**
 * The state after something happened. What was marked stays until something else was: neither an assignment
 * that cannot be used nor a stop takes it away.
 */
export function afterEvent(state: GradebookState, event: GradebookEvent): GradebookState {
  const { grading, ...rest } = state;
  switch (event.code) {
    case 'files':
      return { ...state, files: event.files };
    case 'asked': {
      const { source, files } = event;
      return { ...rest, problems: [], grading: { source, files, done: 0, of: files.length } };
    }
    case 'progress':
      return grading
        ? { ...state, grading: { ...grading, done: event.done, of: event.of } }
        : state;
    case 'stopped':
      return rest;
    case 'refused':
      return { ...rest, problems: event.problems };
    case 'graded': {
      if (!grading) return state;
      const { source, files } = grading;
      const { before: _, ...others } = rest;
      const isReMark =
        state.source !== undefined && state.source !== source && state.files === files;
      const before = isReMark && state.book ? { before: state.book } : {};
      return { ...others, source, files, book: event.book, ...before };
    }
  }
}

/** Files with some more: the same file twice is one. */
export function withFiles(files: readonly File[], more: readonly File[]): File[] {
  const keyOf = ({ name, size, lastModified }: File) => `${size} ${lastModified} ${name}`;
  return [...new Map([...files, ...more].map((file) => [keyOf(file), file])).values()];
}
