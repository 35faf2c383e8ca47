import type { DrillAsk } from '../../share/drill-link.ts';
import type { DrillAnswer } from './drill-worker.ts';
import address from './drill-worker.ts?worker&url';

/** What makes addresses of scripts that a page may start, in browsers that ask for it. */
interface ScriptAddresses {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL(address: string): string };
}

let worker: Worker | undefined;

/** Asks for a drill. Rejects when the worker cannot be fetched or breaks; the next who asks starts another. */
export function askForDrill(ask: DrillAsk): Promise<DrillAnswer> {
  worker ??= new Worker(trusted(address), { type: 'module' });
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

/** The address of the worker as one that the page may start: this one alone. */
function trusted(only: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: ScriptAddresses };
  if (!trustedTypes) return only;
  policy ??= trustedTypes.createPolicy('tap-and-sum-drills', {
    createScriptURL: (wanted) => {
      if (wanted === only) return wanted;
      throw new TypeError(`Expected the address ${only}, but got ${wanted}.`);
    },
  });
  return policy.createScriptURL(only);
}
let policy: ReturnType<ScriptAddresses['createPolicy']> | undefined;
