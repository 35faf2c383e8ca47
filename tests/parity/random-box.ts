import type { Random } from './random.ts';
import { type Kinds, kin } from './random-kinds.ts';
import type { PluginData, RigData } from './setup-file.ts';

/** Whole frames at 48 kHz: a DelayNode draws straight lines between frames. */
const LATENCIES = [0, 0.5, 1, 1.5, 2.5, 4];

/** A random box with so many tracks, and a converter that has lines for all of them. */
export function randomBox(
  random: Random,
  { devices, latency }: Kinds,
  trackCount: number,
): Pick<RigData, 'box' | 'converter'> {
  const late = () => (latency ? random.pick(LATENCIES) : 0);
  const plugins = (share: number): PluginData[] =>
    random.chance(share)
      ? kin(random.int(1, 2), 'plug').map((one) => ({
          ...one,
          kind: random.pick(devices),
          latencyMs: late(),
        }))
      : [];
  const tracks = kin(trackCount, 't').map((one) => ({
    ...one,
    levelDbfs: random.decimal(-40, -3),
    stereo: random.chance(0.25),
    plugins: plugins(latency ? 0.5 : 0.3),
  }));
  const buses = kin(random.int(0, 3), 'bus').map((one) => ({
    ...one,
    ...(random.chance(0.6)
      ? { tap: random.pick(['pre', 'post', 'switchable', 'switchable'] as const) }
      : {}),
    plugins: plugins(0.4),
  }));
  const captures = kin(random.int(0, 2), 'take').map((one) => ({
    ...one,
    stereo: random.chance(0.4),
  }));
  const lines = tracks.reduce((sum, { stereo }) => sum + (stereo ? 2 : 1), 0);
  return {
    box: {
      tracks,
      buses,
      captures,
      compensates: random.chance(0.5),
      panLaw: random.pick(['equal-power', 'compromise', 'linear']),
    },
    converter: {
      outputs: Math.max(2, lines) + 2 + 2 * captures.length,
      inputs: 2 * captures.length,
      fullScaleDbu: random.pick([15, 18, 22, 24]),
      noiseDbfs: random.decimal(-125, -105),
      latencyMs: late(),
    },
  };
}
