import { type AudioGraph, EARS } from '../../src/audition/audio-graph.ts';
import { transform } from '../../src/audition/fourier.ts';
import { impulseResponse } from '../../src/audition/impulse-response.ts';
import { SoundingGraph } from '../../src/audition/sounding-graph.ts';

/** A graph to be rendered, with the signals whose levels are wanted. */
export interface ResponseOrder {
  readonly graph: AudioGraph;
  readonly signals: readonly string[];
  /** Frames from one impulse to the next: a power of two, in which all dies away. */
  readonly frames: number;
}

const RATE = 48_000;
/** The third-octave bands from 20 Hz to 20 kHz, by their numbers. */
const [LOWEST, HIGHEST] = [-17, 13];

/**
 * Renders graphs with an impulse in place of each recording, one after the other. Runs in a page.
 *
 * @returns power at each ear of a signal that has a power of 1, equal in every third-octave band, by graph,
 * signal and ear.
 */
export async function renderResponses(orders: readonly ResponseOrder[]): Promise<number[][][]> {
  const rendered: number[][][] = [];
  for (const { graph, signals, frames } of orders) {
    // Where nothing plays there is nothing to render, but a context wants a frame.
    const length = Math.max(1, signals.length * frames);
    const context = new OfflineAudioContext(2, length, RATE);
    const merger = new ChannelMergerNode(context, { numberOfInputs: 2 });
    merger.connect(context.destination);
    const ends = new Map(
      EARS.map((id, side) => {
        const ear = new GainNode(context);
        ear.connect(merger, 0, side);
        return [id, ear] as const;
      }),
    );
    const materials = {
      recordingOf: (signal: string) => {
        const impulse = new Float32Array(length);
        impulse[signals.indexOf(signal) * frames] = 1;
        return bufferOf(impulse);
      },
      impulseResponseOf: (stage: string) => bufferOf(impulseResponse(stage, RATE)),
    };
    new SoundingGraph(context, materials, ends).follow(graph);
    const recorded = await context.startRendering();
    rendered.push(
      signals.map((_, index) =>
        EARS.map((_ear, side) => {
          const samples = recorded.getChannelData(side);
          return powerThrough(samples.subarray(index * frames, (index + 1) * frames));
        }),
      ),
    );
  }
  return rendered;
}

function bufferOf(samples: ArrayLike<number>): AudioBuffer {
  const buffer = new AudioBuffer({ length: samples.length, sampleRate: RATE });
  buffer.copyToChannel(Float32Array.from(samples), 0);
  return buffer;
}

/** Mean power of an impulse response over the bands, each of them as the mean over equal intervals. */
function powerThrough(samples: Float32Array): number {
  const { re, im } = { re: Float64Array.from(samples), im: new Float64Array(samples.length) };
  transform({ re, im });
  const bands = Array.from({ length: HIGHEST - LOWEST + 1 }, () => ({ power: 0, weight: 0 }));
  for (let bin = 1; bin < samples.length / 2; bin += 1) {
    const number = Math.round(10 * Math.log10((bin * RATE) / samples.length / 1000));
    const band = bands[number - LOWEST];
    if (!band) continue;
    band.power += ((re[bin] ?? 0) ** 2 + (im[bin] ?? 0) ** 2) / bin;
    band.weight += 1 / bin;
  }
  return bands.reduce((sum, { power, weight }) => sum + power / weight, 0) / bands.length;
}
