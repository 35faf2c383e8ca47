import type { AudioAction, AudioGraph, AudioPart, AudioWire } from './audio-graph.ts';

/** How fast gains glide: time constant in seconds. */
export const GLIDE = 0.015;
/** Seconds after which what has glided to nothing is taken away: −87 dB of it are left. */
export const GONE_AFTER = 10 * GLIDE;
/** Frames of a block of Web Audio: a loop is never shorter. */
export const BLOCK = 128;
const MONO = { channelCount: 1, channelCountMode: 'explicit' } as const;

/** What a graph plays: recordings, all of one length, and impulse responses of reverbs. */
export interface Materials {
  /** Recording of a signal, mono, with an RMS of 1. */
  readonly recordingOf: (signal: string) => AudioBuffer;
  /** Impulse response of a stage that reverberates. */
  readonly impulseResponseOf: (stage: string) => AudioBuffer;
}

interface SoundingPart {
  readonly entry: AudioNode;
  readonly exit: AudioNode;
  readonly source: AudioBufferSourceNode | undefined;
}

interface SoundingWire {
  /** Its first node, and the last, which leads on: the same where it is not late. */
  readonly gain: GainNode;
  readonly last: AudioNode;
  readonly from: string;
  readonly to: string;
  /** The time from which nothing of it is heard; none while it belongs to the graph. */
  goneAt: number | undefined;
}

/**
 * Web Audio nodes that follow a graph. A wire that comes glides up from nothing, one that goes glides down to it,
 * and all others glide to their new ratio; so whatever changes on a desk, nothing clicks.
 */
export class SoundingGraph {
  readonly #context: BaseAudioContext;
  readonly #materials: Materials;
  readonly #ends: ReadonlyMap<string, AudioNode>;
  readonly #parts = new Map<string, SoundingPart>();
  readonly #wires = new Map<string, SoundingWire>();
  /** When the recordings began: one that joins in later does so where the others are. */
  readonly #begun: number;
  /** Whether the first graph has been made. */
  #hasBegun = false;

  /** @param ends nodes that are there already, by id of the part that each is. */
  constructor(
    context: BaseAudioContext,
    materials: Materials,
    ends: ReadonlyMap<string, AudioNode>,
  ) {
    this.#context = context;
    this.#materials = materials;
    this.#ends = ends;
    this.#begun = context.currentTime;
  }

  /** Glides to a graph. What is not in it any more is taken away by the next {@link sweep} that comes late enough. */
  follow({ parts, wires }: AudioGraph): void {
    this.sweep();
    const now = this.#context.currentTime;
    for (const part of parts) if (!this.#parts.has(part.id)) this.#make(part);
    const wanted = new Map(wires.map((wire) => [nameOf(wire), wire] as const));
    for (const [name, wire] of wanted) {
      const known = this.#wires.get(name) ?? this.#join(name, wire);
      known.goneAt = undefined;
      known.gain.gain.setTargetAtTime(wire.ratio, now, GLIDE);
    }
    for (const [name, wire] of this.#wires) {
      if (wanted.has(name) || wire.goneAt !== undefined) continue;
      wire.goneAt = now + GONE_AFTER;
      wire.gain.gain.setTargetAtTime(0, now, GLIDE);
    }
    this.#hasBegun = true;
  }

  /** Takes away what cannot be heard any more. */
  sweep(): void {
    const now = this.#context.currentTime;
    for (const [name, { goneAt, from, gain, last }] of this.#wires) {
      if (goneAt === undefined || goneAt > now) continue;
      this.#parts.get(from)?.exit.disconnect(gain);
      last.disconnect();
      this.#wires.delete(name);
    }
    const joined = new Set([...this.#wires.values()].flatMap(({ from, to }) => [from, to]));
    for (const [id, { source }] of this.#parts) {
      if (joined.has(id) || this.#ends.has(id)) continue;
      source?.stop();
      this.#parts.delete(id);
    }
  }

  #make({ id, action }: AudioPart): void {
    const end = this.#ends.get(id);
    if (end) {
      this.#parts.set(id, { entry: end, exit: end, source: undefined });
      return;
    }
    const nodes = this.#nodesFor(action);
    nodes.reduce((before, after) => before.connect(after));
    const [entry] = nodes;
    const exit = nodes.at(-1);
    if (!entry || !exit) throw new Error(`Expected nodes for ${id}, but found none.`);
    const source = entry instanceof AudioBufferSourceNode ? entry : undefined;
    if (source?.buffer) {
      source.start(0, (this.#context.currentTime - this.#begun) % source.buffer.duration);
    }
    this.#parts.set(id, { entry, exit, source });
  }

  /** Nodes in a row that do what a part does. */
  #nodesFor(action: AudioAction): AudioNode[] {
    const context = this.#context;
    switch (action.kind) {
      case 'play': {
        const buffer = this.#materials.recordingOf(action.signal);
        return [new AudioBufferSourceNode(context, { buffer, loop: true })];
      }
      case 'sum':
        return [new GainNode(context, MONO)];
      case 'filter':
        return [
          new GainNode(context, MONO),
          ...action.sections.map(
            ({ b, a }) => new IIRFilterNode(context, { feedforward: [...b], feedback: [1, ...a] }),
          ),
        ];
      case 'delay': {
        // Between frames a DelayNode draws straight lines, which dulls what is high.
        const delayTime = Math.round(action.time * context.sampleRate) / context.sampleRate;
        return [new DelayNode(context, { ...MONO, delayTime, maxDelayTime: action.time + 0.01 })];
      }
      case 'reverberate': {
        const buffer = this.#materials.impulseResponseOf(action.stage);
        return [
          new GainNode(context, MONO),
          new ConvolverNode(context, { buffer, disableNormalization: true }),
        ];
      }
    }
  }

  /** Makes a wire at a ratio of 0; of the first graph, at the whole ratio, since nothing has sounded yet. */
  #join(name: string, { from, to, ratio, isLate }: AudioWire): SoundingWire {
    const context = this.#context;
    const gain = new GainNode(context, { ...MONO, gain: this.#hasBegun ? 0 : ratio });
    const [source, target] = [this.#parts.get(from), this.#parts.get(to)];
    if (!source || !target) throw new Error(`Expected parts ${from} and ${to}, but found none.`);
    const last = isLate ? gain.connect(this.#blockOfDelay()) : gain;
    source.exit.connect(gain);
    last.connect(target.entry);
    const wire = { gain, last, from, to, goneAt: undefined };
    this.#wires.set(name, wire);
    return wire;
  }

  #blockOfDelay(): DelayNode {
    const time = BLOCK / this.#context.sampleRate;
    return new DelayNode(this.#context, { ...MONO, delayTime: time, maxDelayTime: 2 * time });
  }
}

const nameOf = ({ from, to, isLate }: AudioWire): string =>
  `${from} → ${to}${isLate ? ' late' : ''}`;
