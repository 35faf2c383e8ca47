import type { DrillAsk } from '../../share/drill-link.ts';
import { startWorker } from '../start-worker.ts';
import type { DrillAnswer } from './drill-worker.ts';
import address from './drill-worker.ts?worker&url';

let worker: Worker | undefined;

/** Asks for a drill. Rejects when the worker cannot be fetched or breaks; the next who asks starts another. */
export function askForDrill(ask: DrillAsk): Promise<DrillAnswer> {
  worker ??= startWorker(address);
  const asked = worker;
  return new Promise((resolve, reject) => {
    const stop = new AbortController();
    const { signal } = stop;
    asked.addEventListener(
      'message',
      ({ data }: MessageEvent<DrillAnswer>) => {
        const isForThis = data.ask.concept === ask.concept && data.ask.level === ask.level;
        if (!isForThis || data.ask.seed !== ask.seed) return;
        stop.abort();
        resolve(data);
      },
      { signal },
    );
    asked.addEventListener(
      'error',
      () => {
        stop.abort();
        asked.terminate();
        worker = undefined;
        reject(new Error('The worker that makes drills did not start.'));
      },
      { signal },
    );
    asked.postMessage(ask);
  });
}
