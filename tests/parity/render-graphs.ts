import type { AudioGraph } from './setup-to-web-audio.ts';

/**
 * Renders graphs, in a page. Runs there alone: it may use nothing from outside itself.
 *
 * @returns power |Σ h[n] e^(−jωn)|² of the impulse responses, by graph, recorded node, input and frequency.
 */
export async function renderGraphs({
  graphs,
  frequencies,
}: {
  graphs: readonly AudioGraph[];
  frequencies: readonly number[];
}): Promise<number[][][][]> {
  const rendered: number[][][][] = [];
  for (const { nodes, inputs, outputs, parts, spacing } of graphs) {
    const length = Math.max(128, inputs.length * spacing);
    const context = new OfflineAudioContext(outputs.length, length, 48_000);
    const mono = { channelCount: 1, channelCountMode: 'explicit' } as const;
    const made = new Map(nodes.map((name) => [name, new GainNode(context, { gain: 1, ...mono })]));
    const at = (name: string): GainNode => {
      const node = made.get(name);
      if (!node) throw new Error(`There is no node ${name}.`);
      return node;
    };
    for (const part of parts) {
      if (part.kind === 'gain') {
        const gain = new GainNode(context, { gain: part.ratio, ...mono });
        at(part.from).connect(gain).connect(at(part.to));
      } else if (part.kind === 'delay') {
        const delay = new DelayNode(context, { delayTime: part.seconds, maxDelayTime: 1 });
        at(part.from).connect(delay).connect(at(part.to));
      } else if (part.kind === 'filters') {
        let last: AudioNode = at(part.from);
        for (const { type, frequency, q, gain } of part.filters) {
          const filter = new BiquadFilterNode(context, { type, frequency, Q: q, gain });
          last = last.connect(filter);
        }
        last.connect(at(part.to));
      } else {
        const panner = new StereoPannerNode(context, { pan: part.position });
        const splitter = new ChannelSplitterNode(context, { numberOfOutputs: 2 });
        const [left = '', right] = part.from;
        if (right === undefined) at(left).connect(panner);
        else {
          const merger = new ChannelMergerNode(context, { numberOfInputs: 2 });
          at(left).connect(merger, 0, 0);
          at(right).connect(merger, 0, 1);
          merger.connect(panner);
        }
        panner.connect(splitter);
        part.to.forEach((to, leg) => {
          splitter.connect(at(to), leg);
        });
      }
    }
    inputs.forEach((input, index) => {
      const buffer = new AudioBuffer({ length, sampleRate: 48_000 });
      buffer.getChannelData(0)[index * spacing] = 1;
      const source = new AudioBufferSourceNode(context, { buffer });
      source.connect(at(input));
      source.start();
    });
    const merger = new ChannelMergerNode(context, { numberOfInputs: outputs.length });
    outputs.forEach((output, channel) => {
      at(output).connect(merger, 0, channel);
    });
    context.destination.channelInterpretation = 'discrete';
    merger.connect(context.destination);
    const recorded = await context.startRendering();
    rendered.push(
      outputs.map((_, channel) => {
        const samples = recorded.getChannelData(channel);
        return inputs.map((_input, index) => {
          const response = samples.subarray(index * spacing, (index + 1) * spacing);
          return frequencies.map((frequency) => {
            const omega = (2 * Math.PI * frequency) / 48_000;
            let [re, im] = [0, 0];
            for (let frame = 0; frame < response.length; frame += 1) {
              const value = response[frame] ?? 0;
              if (value === 0) continue;
              re += value * Math.cos(omega * frame);
              im -= value * Math.sin(omega * frame);
            }
            return re ** 2 + im ** 2;
          });
        });
      }),
    );
  }
  return rendered;
}
