import type { Part, Source } from './network.ts';
import { legs, type SetupData, type Value } from './setup-file.ts';

/** Reads controls and cords of a setup file, and collects what they make. */
export class Reading {
  readonly sources: Source[] = [];
  readonly noises: Source[] = [];
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
    for (const [source, target] of pairs(from, to)) {
      this.parts.push({ kind: 'gain', from: source, to: target, ratio });
    }
  }

  /** As it is, so many seconds later. */
  delay(from: readonly string[], to: readonly string[], seconds: number): void {
    if (seconds === 0) {
      this.join(from, to, 1);
      return;
    }
    for (const [source, target] of pairs(from, to)) {
      this.parts.push({ kind: 'delay', from: source, to: target, seconds });
    }
  }

  /** A noise of its own at each leg of a place. */
  hiss(nodes: readonly string[], levelDbu: number): void {
    for (const node of nodes) this.noises.push({ track: node, node, levelDbu });
  }

  /** A place of the same width behind another one. */
  chain(from: readonly string[], name: string, ratio: number): readonly string[] {
    const to = this.place(name, from.length === 2);
    this.join(from, to, ratio);
    return to;
  }
}

const pairs = (from: readonly string[], to: readonly string[]) =>
  from.length === to.length
    ? from.map((node, leg) => [node, to[leg] ?? ''] as const)
    : from.flatMap((node) => to.map((target) => [node, target] as const));
