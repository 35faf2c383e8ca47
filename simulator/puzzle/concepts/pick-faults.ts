import type { RandomStream } from '../random-stream.ts';

/** Puts some of several things wrong, each as likely as any other. */
export function pickFaults(
  stream: RandomStream,
  count: number,
  faults: readonly (() => void)[],
): void {
  for (const put of stream.shuffled(faults).slice(0, count)) put();
}
