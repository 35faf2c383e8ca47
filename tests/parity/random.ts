/** Random numbers that are the same for the same seed, on every machine. */
export class Random {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
    // Seeds that are neighbours start apart.
    for (let turn = 0; turn < 4; turn += 1) this.next();
  }

  /** From 0 up to, but not, 1: an additive step of a fixed odd number, its bits well mixed. */
  next(): number {
    this.#state = (this.#state + 0x9e3779b9) >>> 0;
    let bits = this.#state;
    bits = Math.imul(bits ^ (bits >>> 16), 0x21f0aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 2 ** 32;
  }

  /** A whole number from `min` to `max`, both included. */
  int(min: number, max: number): number {
    return min + Math.floor(this.next() * (max - min + 1));
  }

  /** A number from `min` to `max` with two decimals. */
  decimal(min: number, max: number): number {
    return this.int(Math.round(min * 100), Math.round(max * 100)) / 100;
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  /** @throws RangeError when there is nothing to pick from. */
  pick<T>(list: readonly T[]): T {
    const picked = list[this.int(0, list.length - 1)];
    if (picked === undefined) throw new RangeError('Expected something to pick from.');
    return picked;
  }

  shuffled<T>(list: readonly T[]): T[] {
    const left = [...list];
    return list.map(() => left.splice(this.int(0, left.length - 1), 1)[0] as T);
  }
}
