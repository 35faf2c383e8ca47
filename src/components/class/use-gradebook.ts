import { useEffect, useReducer, useRef } from 'preact/hooks';
import { askForGrading, type Grading } from './ask-grading.ts';
import { afterEvent, EMPTY, withFiles } from './gradebook-state.ts';
import type { AssignmentSource } from './grading-worker.ts';

/** The gradebook of a page: what it is, and what can be done with it. */
export function useGradebook() {
  const [state, tell] = useReducer(afterEvent, EMPTY);
  const grading = useRef<Grading>();
  useEffect(() => () => grading.current?.stop(), []);
  useEffect(keepFilesFromOpening, []);

  const grade = (source: AssignmentSource, files: readonly File[]): void => {
    grading.current?.stop();
    tell({ code: 'asked', source, files });
    grading.current = askForGrading({ source, files }, (answer) => {
      if (answer.code !== 'progress') grading.current = undefined;
      tell(answer);
    });
  };
  /** What is being marked, or else what was. */
  const { source, files } = state.grading ?? state;
  return {
    state,
    /** Takes an assignment, and marks what is there by it. */
    takeAssignment: (taken: AssignmentSource) => grade(taken, files),
    /** Takes files to those that are there. Without an assignment they wait for one. */
    takeFiles: (more: readonly File[]) => {
      const all = withFiles(files, more);
      if (source) grade(source, all);
      else tell({ code: 'files', files: all });
    },
    stop: () => {
      grading.current?.stop();
      grading.current = undefined;
      tell({ code: 'stopped' });
    },
  };
}

/** A file that is dropped beside its place does nothing: the browser would leave the page to show it. */
function keepFilesFromOpening(): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  for (const kind of ['dragover', 'drop'] as const) {
    window.addEventListener(kind, (event) => event.preventDefault(), { signal });
  }
  return () => stop.abort();
}
