import type { Db, Rig } from '../../simulator/index.ts';
import { impulseResponse } from './impulse-response.ts';
import { SAMPLE_RATE } from './instruments/piece.ts';
import { recordingOf } from './instruments/recordings.ts';
import type { Listening } from './listening.ts';
import { type OutputChain, outputChain } from './output-chain.ts';
import { GLIDE, GONE_AFTER, SoundingGraph } from './sounding-graph.ts';

/** Why an audition ended: it was asked to, another desk began, or the page went out of sight. */
export type End = 'asked' | 'another' | 'hidden';

/** Whether this browser can play anything. */
export const canPlay = (): boolean => typeof AudioContext !== 'undefined';

/** What sounds on this page: one desk at a time. */
let sounding: Audition | undefined;

/**
 * A desk that is being heard. It begins only when somebody asks, and ends when the page goes out of sight. It has
 * to be made while a click or a key is handled, since browsers play nothing else.
 */
export class Audition {
  readonly #context = new AudioContext({ sampleRate: SAMPLE_RATE });
  readonly #chain: OutputChain = outputChain(this.#context);
  readonly #onEnd: (end: End) => void;
  #graph: SoundingGraph | undefined;
  #hasEnded = false;

  /** @param onEnd is called once, when it ends. */
  constructor(onEnd: (end: End) => void) {
    sounding?.end('another');
    sounding = this;
    this.#onEnd = onEnd;
    void this.#context.resume();
    addEventListener('pagehide', this.#hide);
    document.addEventListener('visibilitychange', this.#hide);
  }

  /**
   * Makes what is to be played, and plays it. Between any two recordings the page can do other things.
   *
   * @param now what is to be heard when it has been made, and how loud.
   * @returns whether it plays: not where it has ended meanwhile.
   */
  async begin(rig: Rig, now: () => { listening: Listening; volume: Db }): Promise<boolean> {
    const materials = materialsOf(rig);
    for (const { action } of now().listening.graph.parts) {
      if (action.kind === 'play') materials.recordingOf(action.signal);
      if (action.kind === 'reverberate') materials.impulseResponseOf(action.stage);
      await new Promise((resolve) => setTimeout(resolve));
      if (this.#hasEnded) return false;
    }
    const { listening, volume } = now();
    this.#graph = new SoundingGraph(this.#context, materials, this.#chain.ends);
    this.setVolume(volume);
    this.follow(listening);
    return true;
  }

  /** Glides to what is heard now. Before it has begun, nothing. */
  follow({ graph }: Listening): void {
    this.#graph?.follow(graph);
    setTimeout(() => this.#graph?.sweep(), 1000 * GONE_AFTER + 50);
  }

  /** Before it has begun, nothing. */
  setVolume(volume: Db): void {
    if (!this.#graph) return;
    const ratio = 10 ** (volume / 20);
    this.#chain.volume.setTargetAtTime(ratio, this.#context.currentTime, GLIDE);
  }

  /** Glides to silence and gives the loudspeakers back. It cannot begin again. */
  end(end: End): void {
    if (this.#hasEnded) return;
    this.#hasEnded = true;
    if (sounding === this) sounding = undefined;
    removeEventListener('pagehide', this.#hide);
    document.removeEventListener('visibilitychange', this.#hide);
    this.#graph = undefined;
    this.#chain.volume.setTargetAtTime(0, this.#context.currentTime, GLIDE);
    setTimeout(() => void this.#context.close(), 1000 * GONE_AFTER);
    this.#onEnd(end);
  }

  readonly #hide = (event: Event) => {
    if (event.type === 'pagehide' || document.hidden) this.end('hidden');
  };
}

/** Recordings and impulse responses as buffers, each made once. */
function materialsOf(rig: Rig) {
  const buffers = new Map<string, AudioBuffer>();
  const bufferOf = (name: string, samples: () => ArrayLike<number>): AudioBuffer => {
    const known = buffers.get(name);
    if (known) return known;
    const made = Float32Array.from(samples());
    const buffer = new AudioBuffer({ length: made.length, sampleRate: SAMPLE_RATE });
    buffer.copyToChannel(made, 0);
    buffers.set(name, buffer);
    return buffer;
  };
  return {
    recordingOf: (signal: string) => bufferOf(signal, () => recordingOf(rig, signal)),
    impulseResponseOf: (stage: string) =>
      bufferOf(stage, () => impulseResponse(stage, SAMPLE_RATE)),
  };
}
