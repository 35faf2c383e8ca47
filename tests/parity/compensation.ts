import type { Reading } from './reading.ts';
import type { BoxBusData, SetupData, TrackData } from './setup-file.ts';

/** How long what a channel of the box gives away is held back, in seconds. */
export interface Waits {
  /** On its way to a bus, or to `main`. */
  toBus(channel: string, bus: string): number;
  /** On its way out; the channel may be `main`. */
  toConverter(channel: string): number;
}

/**
 * The waits of a box that compensates: all that comes to a bus, to the main mix or to the converter waits for the
 * slowest that does. What is assigned, fed or sent counts, whether a fader or mute lets it through or not.
 */
export function compensation(reading: Reading, { rig }: SetupData): Waits {
  const { tracks, buses, compensates } = rig.box;
  if (!compensates) return { toBus: () => 0, toConverter: () => 0 };
  const goalOf = (id: string) => reading.value<string>(`box.${id}.to`, 'none');
  const latencyOf = ({ id, plugins }: TrackData | BoxBusData) =>
    plugins
      .filter((plugin) => reading.on(`box.${id}.${plugin.id}.on`, true))
      .reduce((sum, plugin) => sum + plugin.latencyMs / 1000, 0);

  /** When each channel has gone through its plug-ins, after the recordings start. */
  const ready = new Map<string, number>(tracks.map((track) => [track.id, latencyOf(track)]));
  const arrival = new Map<string, number>();
  const channelsInto = (goal: string, isSentTo: boolean): string[] =>
    [...ready.keys()].filter(
      (id) =>
        goalOf(id) === goal ||
        (isSentTo && reading.value<number | string>(`box.${id}.${goal}`, '-inf') !== '-inf'),
    );
  const slowest = (channels: readonly string[]) =>
    Math.max(0, ...channels.map((id) => ready.get(id) ?? 0));
  for (const bus of buses) {
    const arrives = slowest(channelsInto(bus.id, bus.tap !== undefined));
    arrival.set(bus.id, arrives);
    ready.set(bus.id, arrives + latencyOf(bus));
  }
  const fed = [...ready.keys()].filter((id) => reading.on(`box.${id}.main`));
  arrival.set('main', slowest(fed));
  ready.set('main', slowest(fed));
  const leaving = slowest([...ready.keys()].filter((id) => /^out\d/.test(goalOf(id))));
  return {
    // What is not assigned there may come later; nothing comes of it.
    toBus: (channel, bus) => Math.max(0, (arrival.get(bus) ?? 0) - (ready.get(channel) ?? 0)),
    toConverter: (channel) => leaving - (ready.get(channel) ?? 0),
  };
}
