import type { Settled } from './settle.ts';
import { ringsOf } from './stability.ts';

export const COMPRESSOR_FEATURES = {
  works: 'a compressor that turns down by more than 0.1 dB',
  knee: 'one within its knee',
  linked: 'one that turns down two sides together',
  inLoop: 'one inside a loop that dies away',
} as const;

/** Which compressors of a rig are at work. */
export function workingCompressors({ elsewhere, gains }: Settled): string[] {
  const { system, unknown } = elsewhere;
  const rings = ringsOf(system);
  return [...gains].flatMap(([{ from, to, knee, ratio }, gain]) => {
    const indices = from.map((node) => system.indexOf.get(node) ?? -1);
    if (gain > -0.1 || indices.some((index) => unknown.has(index))) return [];
    // Above the knee the gain is at least that at its upper end.
    const isInKnee = knee > 0 && -gain < (1 - 1 / ratio) * (knee / 2);
    return [
      COMPRESSOR_FEATURES.works,
      ...(isInKnee ? [COMPRESSOR_FEATURES.knee] : []),
      ...(to.length === 2 ? [COMPRESSOR_FEATURES.linked] : []),
      ...(rings.some((ring) => indices.some((index) => ring.has(index)))
        ? [COMPRESSOR_FEATURES.inLoop]
        : []),
    ];
  });
}
