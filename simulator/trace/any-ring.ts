import type { OpenWires } from './open-wires.ts';

/** The stages of some ring of open wires, against the signal; nothing where there is none. */
export function anyRing({ onwards, backwards }: OpenWires): number[] | undefined {
  // What nothing feeds lies on no ring, nor does what only such stages feed, and so on.
  const feeders = backwards.map(({ length }) => length);
  const loose = feeders.flatMap((count, stage) => (count === 0 ? [stage] : []));
  for (const stage of loose) {
    for (const to of onwards[stage] ?? []) {
      feeders[to] = (feeders[to] ?? 0) - 1;
      if (feeders[to] === 0) loose.push(to);
    }
  }
  if (loose.length === backwards.length) return undefined;
  const isLeft = (stage: number) => (feeders[stage] ?? 0) > 0;
  // What is left is fed by something that is left: walked against the signal, it comes back to itself.
  const walked: number[] = [];
  for (let here = feeders.findIndex((count) => count > 0); ; ) {
    const before = walked.indexOf(here);
    if (before >= 0) return walked.slice(before);
    walked.push(here);
    here = backwards[here]?.find(isLeft) ?? here;
  }
}
