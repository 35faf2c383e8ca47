import { compensation, type Waits } from './compensation.ts';
import { deviceParts } from './device-parts.ts';
import type { Reading } from './reading.ts';
import { type BoxBusData, legs, type SetupData, type TrackData } from './setup-file.ts';

/** Reads the box and its converter: tracks, buses, the main mix, capture tracks. */
export function readBox(reading: Reading, setup: SetupData): void {
  const { box, converter } = setup.rig;
  const late = converter.latencyMs / 1000;
  for (let line = 1; line <= converter.outputs; line += 1) {
    const out = reading.place(`converter.out${line}`, false);
    reading.delay([`converter.dac${line}`], out, late);
    reading.hiss(out, converter.noiseDbfs + converter.fullScaleDbu);
  }
  for (let line = 1; line <= converter.inputs; line += 1) {
    reading.hiss(
      reading.place(`converter.in${line}`, false),
      converter.noiseDbfs + converter.fullScaleDbu,
    );
  }
  reading.place('box.main.sum', true);
  for (const { id } of box.buses) reading.place(`box.${id}.sum`, true);
  const waits = compensation(reading, setup);
  box.tracks.forEach((track) => {
    const nodes = reading.place(`box.${track.id}.source`, track.stereo);
    const levelDbu = track.levelDbfs + converter.fullScaleDbu;
    for (const node of nodes) reading.sources.push({ track: track.id, node, levelDbu });
    readChannel(reading, setup, track, nodes, box.buses, waits);
  });
  box.buses.forEach((bus, index) => {
    const later = box.buses.slice(index + 1);
    readChannel(reading, setup, bus, legs(`box.${bus.id}.sum`, true), later, waits);
  });
  const main = reading.chain(
    legs('box.main.sum', true),
    'box.main.fader',
    reading.ratio('box.main.fader'),
  );
  assign(reading, 'box.main', main, main, waits.toConverter('main'));

  for (const { id, stereo } of box.captures) {
    const heard = reading.place(`box.${id}.in`, stereo);
    const take = reading.value<string>(`box.${id}.in`, 'none');
    if (take !== 'none') reading.delay(lines(take, 'in'), heard, late);
    assign(reading, `box.${id}`, heard, heard, 0);
  }
}

/** What `out3`, `out3-4` or `in1-2` names at the converter. */
const lines = (name: string, side: 'dac' | 'in'): string[] =>
  name
    .replace(/^(out|in)/, '')
    .split('-')
    .map((line) => `converter.${side}${line}`);

/** One output takes what comes before the pan, two neighbours and a bus of the box what comes after it. */
function assign(
  reading: Reading,
  owner: string,
  direct: readonly string[],
  panned: readonly string[],
  wait: number,
): void {
  const goal = reading.value<string>(`${owner}.to`, 'none');
  if (goal === 'none') return;
  if (!/^out\d/.test(goal)) {
    reading.delay(panned, legs(`box.${goal}.sum`, true), wait);
    return;
  }
  const goals = lines(goal, 'dac');
  reading.delay(goals.length === 2 ? panned : direct, goals, wait);
}

/** Plug-ins, fader, mute, pan, sends, assignment and main feed of a track or bus. */
function readChannel(
  reading: Reading,
  setup: SetupData,
  { id, plugins }: TrackData | BoxBusData,
  from: readonly string[],
  buses: readonly BoxBusData[],
  waits: Waits,
): void {
  const at = `box.${id}`;
  const { panLaw } = setup.rig.box;
  let before = from;
  for (const { id: pluginId, kind, latencyMs } of plugins) {
    const own = `${at}.${pluginId}`;
    if (!reading.on(`${own}.on`, true)) continue;
    const treated = deviceParts(reading, own, kind, before, before.length === 2);
    before = legs(`${own}.later`, treated.length === 2);
    reading.delay(treated, before, latencyMs / 1000);
  }
  const fader = reading.chain(before, `${at}.fader`, reading.ratio(`${at}.fader`));
  const direct = reading.chain(fader, `${at}.mute`, reading.on(`${at}.mute`) ? 0 : 1);
  const panned = reading.place(`${at}.pan`, true) as readonly [string, string];
  const position = reading.value(`${at}.pan`, 0);
  const [left = '', right] = direct;
  reading.parts.push(
    right === undefined
      ? { kind: 'pan', from: left, to: panned, law: panLaw, position }
      : { kind: 'fold', from: [left, right], to: panned, position },
  );
  for (const bus of buses) {
    if (bus.tap === undefined) continue;
    const address = `${at}.${bus.id}`;
    const tap = bus.tap === 'switchable' ? reading.value(`${address}.tap`, 'post') : bus.tap;
    const source = tap === 'pre' ? before : direct;
    const level = legs(`${address}.level`, source.length === 2);
    reading.join(source, level, reading.ratio(address, '-inf'));
    // What is mono goes to the middle.
    const send = reading.place(address, true) as readonly [string, string];
    const [only = '', other] = level;
    if (other !== undefined) reading.join(level, send, 1);
    else reading.parts.push({ kind: 'pan', from: only, to: send, law: panLaw, position: 0 });
    reading.delay(send, legs(`box.${bus.id}.sum`, true), waits.toBus(id, bus.id));
  }
  const goal = reading.value<string>(`${at}.to`, 'none');
  const wait = /^out\d/.test(goal) ? waits.toConverter(id) : waits.toBus(id, goal);
  assign(reading, at, direct, panned, wait);
  const feed = reading.chain(panned, `${at}.main`, reading.on(`${at}.main`) ? 1 : 0);
  reading.delay(feed, legs('box.main.sum', true), waits.toBus(id, 'main'));
}
