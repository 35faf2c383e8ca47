import type { Part, Source } from './network.ts';
import { legs, type SetupData, type Value } from './setup-file.ts';

/** Reads controls and cords of a setup file, and collects what they make. */
export class Reading {
  readonly sources: Source[] = [];
  readonly parts: Part[] = [];
  readonly places = new Map<string, readonly string[]>();
  readonly #setup: SetupData;

  constructor(setup: SetupData) {
    this.#setup = setup;
  }

  /** Where a control stands: on the board, else by the defaults of the rig, else where it usually does. */
  value<T extends Value>(address: string, usual: T): T {
    return (this.#setup.board[address] ?? this.#setup.rig.defaults[address] ?? usual) as T;
  }

  /** Voltage ratio of a gain in dB. */
  ratio(address: string, usual: number | '-inf' = 0): number {
    const value = this.value<number | string>(address, usual);
    return value === '-inf' ? 0 : 10 ** (Number(value) / 20);
  }

  on(address: string, usual = false): boolean {
    return this.value<boolean>(address, usual);
  }

  place(name: string, stereo: boolean): readonly string[] {
    const nodes = legs(name, stereo);
    this.places.set(name, nodes);
    return nodes;
  }

  /** From leg to leg; one leg to both; both into one. */
  join(from: readonly string[], to: readonly string[], ratio: number): void {
    const pairs =
      from.length === to.length
        ? from.map((node, leg) => [node, to[leg] ?? ''] as const)
        : from.flatMap((node) => to.map((target) => [node, target] as const));
    for (const [source, target] of pairs) {
      this.parts.push({ kind: 'gain', from: source, to: target, ratio });
    }
  }

  /** A place of the same width behind another one. */
  chain(from: readonly string[], name: string, ratio: number): readonly string[] {
    const to = this.place(name, from.length === 2);
    this.join(from, to, ratio);
    return to;
  }
}
