import { compensation } from './compensation.ts';
import { Reading } from './reading.ts';
import type { PluginData, SetupData } from './setup-file.ts';

type Feature = (setup: SetupData, reading: Reading) => boolean;

const channelsOf = ({ rig }: SetupData) => [...rig.box.tracks, ...rig.box.buses];

const somePlugin = (
  setup: SetupData,
  is: (plugin: PluginData, address: string, index: number) => boolean,
): boolean =>
  channelsOf(setup).some(({ id, plugins }) =>
    plugins.some((plugin, index) => is(plugin, `box.${id}.${plugin.id}`, index)),
  );

/** Whether a channel has an open send to a bus of the box, with this tap. */
const hasSend = (setup: SetupData, reading: Reading, tap: 'pre' | 'post'): boolean =>
  setup.rig.box.buses.some(
    (bus) =>
      bus.tap !== undefined &&
      channelsOf(setup).some(({ id }) => {
        const address = `box.${id}.${bus.id}`;
        const taken =
          bus.tap === 'switchable' ? reading.value<string>(`${address}.tap`, 'post') : bus.tap;
        return reading.ratio(address, '-inf') > 0 && taken === tap;
      }),
  );

const goalOf = (reading: Reading, id: string) => reading.value<string>(`box.${id}.to`, 'none');

/** What of the box can be at work in a setup without latency. */
const FEATURES: Readonly<Record<string, Feature>> = {
  'plug-ins one behind the other': (setup, reading) =>
    somePlugin(setup, (_, address, index) => index > 0 && reading.on(`${address}.on`, true)),
  'a plug-in switched off': (setup, reading) =>
    somePlugin(setup, (_, address) => !reading.on(`${address}.on`, true)),
  'a plug-in on a bus of the box': ({ rig }) =>
    rig.box.buses.some(({ plugins }) => plugins.length > 0),
  'a send in the box before the fader': (setup, reading) => hasSend(setup, reading, 'pre'),
  'a send in the box after the fader': (setup, reading) => hasSend(setup, reading, 'post'),
  'a switchable send in the box': ({ rig }) =>
    rig.box.buses.some(({ tap }) => tap === 'switchable'),
  'a bus of the box into a later one': ({ rig }, reading) =>
    rig.box.buses.some(({ id }) => rig.box.buses.some((bus) => goalOf(reading, id) === bus.id)),
  'a main feed and the main mix on one output': (setup, reading) => {
    const lines = (id: string) => goalOf(reading, id).replace('out', '').split('-');
    const mix = lines('main');
    return (
      mix.length === 2 &&
      channelsOf(setup).some(
        ({ id }) => reading.on(`box.${id}.main`) && lines(id).some((line) => mix.includes(line)),
      )
    );
  },
  'a capture track': ({ rig }) => rig.box.captures.length > 0,
  'a stereo capture track': ({ rig }) => rig.box.captures.some(({ stereo }) => stereo),
  'a capture track that plays back': ({ rig }, reading) =>
    rig.box.captures.some(({ id }) => goalOf(reading, id) !== 'none'),
};

/** What of the box takes time. */
const LATE_FEATURES: Readonly<Record<string, Feature>> = {
  'a plug-in with latency': (setup, reading) =>
    somePlugin(
      setup,
      ({ latencyMs }, address) => latencyMs > 0 && reading.on(`${address}.on`, true),
    ),
  'a way that waits for a slower one': (setup, reading) => {
    const { toBus, toConverter } = compensation(reading, setup);
    return channelsOf(setup).some(({ id }) => {
      const goal = goalOf(reading, id);
      return goal !== 'none' && (/^out\d/.test(goal) ? toConverter(id) : toBus(id, goal)) > 0;
    });
  },
  'latency of the converter': ({ rig }) => rig.converter.latencyMs > 0,
  'what comes back through the converter late': ({ rig }, reading) =>
    rig.converter.latencyMs > 0 &&
    rig.box.captures.some(({ id }) => goalOf(reading, id) !== 'none'),
};

export const BOX_FEATURES = Object.keys(FEATURES);
export const LATE_BOX_FEATURES = Object.keys(LATE_FEATURES);

/** The names of what is at work in the box of a setup. */
export function boxFeaturesOf(setup: SetupData): string[] {
  const reading = new Reading(setup);
  return Object.entries({ ...FEATURES, ...LATE_FEATURES }).flatMap(([name, isAtWork]) =>
    isAtWork(setup, reading) ? [name] : [],
  );
}
