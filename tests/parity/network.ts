import type { PanLaw } from './setup-file.ts';

/** A filter of the W3C's BiquadFilterNode, by its type and parameters. */
export interface Filter {
  readonly type: 'highpass' | 'peaking' | 'lowshelf' | 'highshelf';
  readonly frequency: number;
  /** In dB for a high-pass, a plain number for a peaking filter, unused for shelves. */
  readonly q: number;
  readonly gain: number;
}

/** Something that a signal goes through from node to node. A node adds up what comes to it. */
export type Part =
  | { readonly kind: 'gain'; readonly from: string; readonly to: string; readonly ratio: number }
  | {
      readonly kind: 'pan';
      readonly from: string;
      readonly to: readonly [string, string];
      readonly law: PanLaw;
      readonly position: number;
    }
  /** A stereo panner that folds the far side into the near one. */
  | {
      readonly kind: 'fold';
      readonly from: readonly [string, string];
      readonly to: readonly [string, string];
      readonly position: number;
    }
  | {
      readonly kind: 'filters';
      readonly from: string;
      readonly to: string;
      readonly filters: readonly Filter[];
    }
  | { readonly kind: 'delay'; readonly from: string; readonly to: string; readonly seconds: number }
  /** Makes a new signal of the same power. */
  | { readonly kind: 'reverb'; readonly from: string; readonly to: string }
  /** Turns all its legs down alike, by the level of all that it hears. */
  | {
      readonly kind: 'compressor';
      readonly from: readonly string[];
      readonly to: readonly string[];
      readonly threshold: number;
      readonly ratio: number;
      readonly knee: number;
    };

export interface Source {
  /** Its track: the two sides of a stereo track are two sources. */
  readonly track: string;
  readonly node: string;
  readonly levelDbu: number;
}

/** What a setup file describes, as nodes and parts. Nodes carry the documented addresses. */
export interface Network {
  readonly sources: readonly Source[];
  /** What active stages add where they stand, when nothing plays. */
  readonly noises: readonly Source[];
  readonly parts: readonly Part[];
  /** Nodes of each documented place: one, or left and right. */
  readonly places: ReadonlyMap<string, readonly string[]>;
}

/** Every node of a network once: those of its sources, then of its places, then those between places. */
export function nodesOf({ sources, places, parts }: Network): string[] {
  const ends = parts.flatMap(({ from, to }) => [from, to].flat());
  return [
    ...new Set([...sources.map(({ node }) => node), ...[...places.values()].flat(), ...ends]),
  ];
}
