import { type Complex, complex, cos, multiply, sin } from 'mathjs';
import { filterResponse } from './filter-response.ts';
import { type Network, nodesOf, type Part } from './network.ts';
import { foldRatios, panRatios } from './pan-ratios.ts';
import type { SetupData } from './setup-file.ts';
import { setupToNetwork } from './setup-to-network.ts';

/** One entry of the matrix A of x = A x + b: what of one unknown comes to another. */
export interface Entry {
  readonly from: number;
  readonly to: number;
  readonly ratio: Complex;
}

/** From one unknown to another. */
export interface Link {
  readonly from: number;
  readonly to: number;
}

/** The linear system of a setup file at one frequency: x = A x + b, the voltage at each node. */
export interface LinearSystem {
  readonly network: Network;
  /** The unknowns, by the index that entries name them by. */
  readonly nodes: readonly string[];
  readonly indexOf: ReadonlyMap<string, number>;
  /** Entries that are not 0. Several may stand at one place of the matrix; they add up. */
  readonly entries: readonly Entry[];
  /** Reverbs: a new signal at `to` of the power that stands at `from`. */
  readonly decorrelators: readonly Link[];
  /** From what each compressor hears to what it turns down: where the one has no level, neither has the other. */
  readonly sideChains: readonly Link[];
  /** Whether every entry is real. */
  readonly isReal: boolean;
}

/** Gain of each compressor part, in dB. */
export type CompressorGains = ReadonlyMap<Part, number>;

/** Builds the linear system of a setup file, at a frequency in hertz. */
export const setupToMatrix = (setup: SetupData, frequency: number): LinearSystem =>
  networkToMatrix(setupToNetwork(setup), frequency);

export function networkToMatrix(
  network: Network,
  frequency: number,
  gains: CompressorGains = new Map(),
): LinearSystem {
  const nodes = nodesOf(network);
  const indexOf = new Map(nodes.map((node, index) => [node, index]));
  const at = (node: string): number => indexOf.get(node) ?? -1;

  const entries: Entry[] = [];
  const decorrelators: Link[] = [];
  const sideChains: Link[] = [];
  const add = (from: string, to: string, ratio: number | Complex) => {
    const value = typeof ratio === 'number' ? complex(ratio, 0) : ratio;
    if (value.re !== 0 || value.im !== 0)
      entries.push({ from: at(from), to: at(to), ratio: value });
  };
  for (const part of network.parts) {
    switch (part.kind) {
      case 'gain':
        add(part.from, part.to, part.ratio);
        break;
      case 'pan':
        panRatios(part.law, part.position).forEach((ratio, leg) => {
          add(part.from, part.to[leg] ?? '', ratio);
        });
        break;
      case 'fold': {
        const { fromLeft, fromRight } = foldRatios(part.position);
        [fromLeft, fromRight].forEach((ratios, side) => {
          ratios.forEach((ratio, leg) => {
            add(part.from[side] ?? '', part.to[leg] ?? '', ratio);
          });
        });
        break;
      }
      case 'filters':
        add(
          part.from,
          part.to,
          part.filters.reduce<Complex>(
            (product, filter) => multiply(product, filterResponse(filter, frequency)) as Complex,
            complex(1, 0),
          ),
        );
        break;
      case 'delay': {
        const angle = -2 * Math.PI * frequency * part.seconds;
        add(part.from, part.to, complex(cos(angle), sin(angle)));
        break;
      }
      case 'reverb':
        decorrelators.push({ from: at(part.from), to: at(part.to) });
        break;
      case 'compressor':
        for (const from of part.from) {
          for (const to of part.to) sideChains.push({ from: at(from), to: at(to) });
        }
        part.from.forEach((from, leg) => {
          add(from, part.to[leg] ?? '', 10 ** ((gains.get(part) ?? 0) / 20));
        });
        break;
    }
  }
  const isReal = entries.every(({ ratio }) => ratio.im === 0);
  return { network, nodes, indexOf, entries, decorrelators, sideChains, isReal };
}
