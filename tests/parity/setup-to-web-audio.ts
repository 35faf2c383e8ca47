import { type Filter, nodesOf } from './network.ts';
import { panRatios } from './pan-ratios.ts';
import type { SetupData } from './setup-file.ts';
import { setupToNetwork } from './setup-to-network.ts';

/** A graph of Web Audio nodes as plain data, to be sent into a page. Nodes are gains of unity that sum. */
export interface AudioGraph {
  readonly nodes: readonly string[];
  /** Nodes that an impulse enters, one after the other. */
  readonly inputs: readonly string[];
  /** Nodes that are recorded, each on a channel of its own. */
  readonly outputs: readonly string[];
  readonly parts: readonly AudioPart[];
  /** Frames from one impulse to the next. */
  readonly spacing: number;
}

export type AudioPart =
  | { readonly kind: 'gain'; readonly from: string; readonly to: string; readonly ratio: number }
  /** A StereoPannerNode, from one node or from two. */
  | {
      readonly kind: 'panner';
      readonly from: readonly string[];
      readonly to: readonly string[];
      readonly position: number;
    }
  | {
      readonly kind: 'filters';
      readonly from: string;
      readonly to: string;
      readonly filters: readonly Filter[];
    }
  | {
      readonly kind: 'delay';
      readonly from: string;
      readonly to: string;
      readonly seconds: number;
    };

/**
 * Writes a setup file as a graph of Web Audio nodes: equal-power pans and folding ones as StereoPannerNodes,
 * the other laws as gains, filters as BiquadFilterNodes, delays as DelayNodes.
 *
 * @param places which places are recorded. @throws RangeError for reverbs and compressors.
 */
export function setupToWebAudio(
  setup: SetupData,
  places: readonly string[],
  spacing: number,
): AudioGraph {
  const network = setupToNetwork(setup);
  const parts = network.parts.flatMap((part): AudioPart[] => {
    switch (part.kind) {
      case 'gain':
        return part.ratio === 0 ? [] : [part];
      case 'filters':
      case 'delay':
        return [part];
      case 'fold':
        return [{ kind: 'panner', from: part.from, to: part.to, position: part.position }];
      case 'pan':
        if (part.law === 'equal-power') {
          return [{ kind: 'panner', from: [part.from], to: part.to, position: part.position }];
        }
        return panRatios(part.law, part.position).map((ratio, leg) => ({
          kind: 'gain',
          from: part.from,
          to: part.to[leg] ?? '',
          ratio,
        }));
      default:
        throw new RangeError(`Expected what Web Audio can follow, but got a ${part.kind}.`);
    }
  });
  return {
    nodes: nodesOf(network),
    inputs: network.sources.map(({ node }) => node),
    outputs: places.flatMap((place) => network.places.get(place) ?? []),
    parts,
    spacing,
  };
}
