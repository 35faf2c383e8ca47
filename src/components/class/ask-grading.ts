import { startWorker } from '../start-worker.ts';
import type { GradingAnswer, GradingAsk } from './grading-worker.ts';
import address from './grading-worker.ts?worker&url';

/** Grading that goes on. */
export interface Grading {
  /** Ends it, wherever it is. */
  readonly stop: () => void;
}

let idle: Worker | undefined;

/**
 * Has files marked by an assignment.
 *
 * @param hear takes every answer of the worker; the last is what came of it.
 */
export function askForGrading(ask: GradingAsk, hear: (answer: GradingAnswer) => void): Grading {
  const worker = idle ?? startWorker(address);
  idle = undefined;
  const listening = new AbortController();
  const { signal } = listening;
  const stop = (): void => {
    listening.abort();
    worker.terminate();
  };
  worker.addEventListener(
    'message',
    ({ data }: MessageEvent<GradingAnswer>) => {
      if (data.code !== 'progress') {
        listening.abort();
        idle = worker;
      }
      hear(data);
    },
    { signal },
  );
  worker.addEventListener(
    'error',
    () => {
      stop();
      hear({ code: 'refused', problems: ['The code that marks hand-ins could not be fetched.'] });
    },
    { signal },
  );
  worker.postMessage(ask);
  return { stop };
}
