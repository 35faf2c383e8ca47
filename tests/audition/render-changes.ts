import type { AudioGraph } from '../../src/audition/audio-graph.ts';
import { impulseResponse } from '../../src/audition/impulse-response.ts';
import { outputChain } from '../../src/audition/output-chain.ts';
import { SoundingGraph } from '../../src/audition/sounding-graph.ts';

/** Graphs to be heard one after the other, each for so many frames, with sines for recordings. */
export interface ChangeOrder {
  readonly graphs: readonly AudioGraph[];
  readonly frames: number;
  /** In hertz, and the amplitude. */
  readonly sine: { readonly frequency: number; readonly amplitude: number };
}

/** What came out of the loudspeakers: largest sample, and largest step between two, by graph. */
export interface Change {
  readonly peak: number;
  readonly step: number;
}

const RATE = 48_000;

/** Renders them through all that lies before the loudspeakers, at full volume. Runs in a page. */
export async function renderChanges({ graphs, frames, sine }: ChangeOrder): Promise<Change[]> {
  const context = new OfflineAudioContext(2, graphs.length * frames, RATE);
  const { ends, volume } = outputChain(context);
  volume.value = 1;
  const materials = {
    recordingOf: () =>
      bufferOf(RATE, (frame) => {
        return sine.amplitude * Math.sin((2 * Math.PI * sine.frequency * frame) / RATE);
      }),
    impulseResponseOf: (stage: string) => {
      const response = impulseResponse(stage, RATE);
      return bufferOf(response.length, (frame) => response[frame] ?? 0);
    },
  };
  const sounding = new SoundingGraph(context, materials, ends);
  graphs.forEach((graph, index) => {
    if (index === 0) sounding.follow(graph);
    else
      void context.suspend((index * frames) / RATE).then(() => {
        sounding.follow(graph);
        return context.resume();
      });
  });
  const recorded = await context.startRendering();
  return graphs.map((_, index) => {
    const changes = [0, 1].map((ear) => {
      const samples = recorded.getChannelData(ear).subarray(index * frames, (index + 1) * frames);
      return {
        peak: samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0),
        step: samples
          .subarray(1)
          .reduce(
            (most, sample, frame) => Math.max(most, Math.abs(sample - (samples[frame] ?? 0))),
            0,
          ),
      };
    });
    return {
      peak: Math.max(...changes.map(({ peak }) => peak)),
      step: Math.max(...changes.map(({ step }) => step)),
    };
  });
}

function bufferOf(length: number, sampleAt: (frame: number) => number): AudioBuffer {
  const buffer = new AudioBuffer({ length, sampleRate: RATE });
  buffer.copyToChannel(
    Float32Array.from({ length }, (_, frame) => sampleAt(frame)),
    0,
  );
  return buffer;
}
