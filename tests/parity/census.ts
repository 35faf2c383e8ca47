import { expect } from 'vitest';

/** In how many rigs at least a run has to have each feature that it claims. */
const LEAST_RIGS = 20;

/** In how many rigs each feature of the model was at work. */
export class Census {
  readonly #rigs = new Map<string, number>();

  /** @param features what was at work in one rig, by name. */
  add(features: readonly string[]): void {
    for (const one of new Set(features)) this.#rigs.set(one, (this.#rigs.get(one) ?? 0) + 1);
  }

  /** Prints the counts, and fails where one of these stood in too few rigs. */
  expectAll(features: readonly string[]): void {
    const counts = features.map((one) => [one, this.#rigs.get(one) ?? 0] as const);
    console.log(counts.map(([one, rigs]) => `${rigs} rigs: ${one}`).join('\n'));
    expect(counts.filter(([, rigs]) => rigs < LEAST_RIGS)).toEqual([]);
  }
}
