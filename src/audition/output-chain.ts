import { EARS } from './audio-graph.ts';
import { CEILING } from './calibration.ts';

/** What lies between the graph of a desk and the loudspeakers. */
export interface OutputChain {
  /** Where the two ears of the graph lead to, by their ids. */
  readonly ends: ReadonlyMap<string, AudioNode>;
  /** Volume as a voltage ratio; 0 at first. */
  readonly volume: AudioParam;
}

/**
 * Two ears, their volume, and a last guard that no sample passes above the ceiling, whatever comes: a straight
 * line up to it, and flat beyond.
 */
export function outputChain(context: BaseAudioContext): OutputChain {
  const merger = new ChannelMergerNode(context, { numberOfInputs: EARS.length });
  const volume = new GainNode(context, { gain: 0 });
  // A WaveShaperNode holds its input between −1 and 1, the ends of its curve.
  const toCurve = new GainNode(context, { gain: 1 / CEILING });
  const ceiling = new WaveShaperNode(context, { curve: [-CEILING, CEILING] });
  merger.connect(volume).connect(toCurve).connect(ceiling).connect(context.destination);
  const ends = new Map(
    EARS.map((id, side) => {
      const ear = new GainNode(context);
      ear.connect(merger, 0, side);
      return [id, ear] as const;
    }),
  );
  return { ends, volume: volume.gain };
}
