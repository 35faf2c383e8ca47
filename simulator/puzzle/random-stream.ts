import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * Random numbers that are the same for the same name, on every machine. What is drawn for one thing has a
 * stream of its own, so that drawing more for it moves nothing else.
 */
export class RandomStream {
  readonly #name: string;
  readonly #generator: ReturnType<typeof xoroshiro128plus>;

  /** @param name what it is for, with its seed: `drill/insert/2/k7x2`. */
  constructor(name: string) {
    this.#name = name;
    this.#generator = xoroshiro128plus(hashOf(name));
  }

  /** A stream for a part of what this one is for. It is the same whatever was drawn before. */
  part(name: string): RandomStream {
    return new RandomStream(`${this.#name}/${name}`);
  }

  /** A whole number from `min` to `max`, both included. */
  int(min: number, max: number): number {
    return uniformInt(this.#generator, min, max);
  }

  /** True once in `times`. */
  onceIn(times: number): boolean {
    return this.int(1, times) === 1;
  }

  /** @throws RangeError when there is nothing to pick from. */
  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new RangeError('Expected something to pick from, found nothing.');
    return list[this.int(0, list.length - 1)] as T;
  }

  /** The list in an order in which each is as likely as any other (Fisher and Yates). */
  shuffled<T>(list: readonly T[]): T[] {
    const left = [...list];
    return list.map(() => left.splice(this.int(0, left.length - 1), 1)[0] as T);
  }
}

/** A name as 32 bits: FNV-1a over its UTF-16 code units, its bits then mixed so that neighbours lie apart. */
function hashOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < name.length; index += 1) {
    hash = Math.imul(hash ^ name.charCodeAt(index), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x21f0aaad);
  hash = Math.imul(hash ^ (hash >>> 15), 0x735a2d97);
  return hash ^ (hash >>> 15);
}
