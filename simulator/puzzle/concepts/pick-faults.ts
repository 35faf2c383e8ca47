import type { RandomStream } from '../random-stream.ts';

/**
 * Puts some of several things wrong, each as likely as any other: so many, if there are as many that do not meet
 * at a control.
 */
export function pickFaults(
  stream: RandomStream,
  count: number,
  faults: readonly (() => boolean)[],
): void {
  let left = count;
  for (const put of stream.shuffled(faults)) {
    if (left > 0 && put()) left -= 1;
  }
}
