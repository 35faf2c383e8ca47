import { cordsAndNormals, multOuts } from './cords.ts';
import { deviceParts } from './device-parts.ts';
import type { Network } from './network.ts';
import { balanceRatios } from './pan-ratios.ts';
import { Reading } from './reading.ts';
import { legs, type SetupData, type StripData } from './setup-file.ts';

/** What a setup file describes, read by the documentation of its format alone. */
export function setupToNetwork(setup: SetupData): Network {
  const reading = new Reading(setup);
  readBox(reading, setup);
  readDesk(reading, setup);
  for (const { id, kind, inputs, outputs } of setup.rig.rack) {
    const at = `rack.${id}`;
    const input = reading.place(`${at}.in`, inputs === 2);
    const treated = deviceParts(reading, at, kind, input, outputs === 2);
    reading.chain(treated, `${at}.out`, 1);
  }
  for (const { id, stereo } of setup.rig.outputs) reading.place(`out.${id}`, stereo);
  for (const mult of setup.rig.bay?.mults ?? []) {
    const input = reading.place(`bay.${mult.id}.in`, false);
    for (const out of multOuts(mult)) reading.chain(input, out, 1);
  }
  const inputs = [...reading.places.values()].flat().filter(isInputJack);
  for (const { input, output, ratio } of cordsAndNormals(setup, inputs)) {
    reading.join([output], [input], ratio);
  }
  const { sources, parts, places } = reading;
  return { sources, parts, places };
}

const isInputJack = (address: string): boolean =>
  /^out\.|^(desk|rack|bay)\.[^.]+\.in(\.[lr])?$|\.insert\.return(\.[lr])?$/.test(address);

function readBox(reading: Reading, { rig }: SetupData): void {
  const { tracks, buses, panLaw } = rig.box;
  const busIds = buses.map(({ id }) => id);
  for (let line = 1; line <= rig.converter.outputs; line += 1) {
    reading.place(`converter.out${line}`, false);
  }
  const mainSum = reading.place('box.main.sum', true);
  const assign = (address: string, direct: readonly string[], panned: readonly string[]) => {
    const goal = reading.value<string>(address, 'none');
    if (busIds.includes(goal)) reading.join(panned, legs(`box.${goal}.sum`, true), 1);
    else if (goal !== 'none') {
      const lines = goal
        .replace('out', '')
        .split('-')
        .map((line) => `converter.out${line}`);
      reading.join(lines.length === 2 ? panned : direct, lines, 1);
    }
  };
  const channel = (id: string, from: readonly string[]) => {
    const at = `box.${id}`;
    const fader = reading.chain(from, `${at}.fader`, reading.ratio(`${at}.fader`));
    const direct = reading.chain(fader, `${at}.mute`, reading.on(`${at}.mute`) ? 0 : 1);
    const to = reading.place(`${at}.pan`, true) as readonly [string, string];
    const position = reading.value(`${at}.pan`, 0);
    const [left = '', right] = direct;
    reading.parts.push(
      right === undefined
        ? { kind: 'pan', from: left, to, law: panLaw, position }
        : { kind: 'fold', from: [left, right], to, position },
    );
    assign(`${at}.to`, direct, to);
    const feed = reading.chain(to, `${at}.main`, reading.on(`${at}.main`) ? 1 : 0);
    reading.join(feed, mainSum, 1);
  };
  for (const { id, stereo, levelDbfs } of tracks) {
    const nodes = reading.place(`box.${id}.source`, stereo);
    const levelDbu = levelDbfs + rig.converter.fullScaleDbu;
    for (const node of nodes) reading.sources.push({ track: id, node, levelDbu });
    channel(id, nodes);
  }
  for (const id of busIds) channel(id, reading.place(`box.${id}.sum`, true));
  const main = reading.chain(mainSum, 'box.main.fader', reading.ratio('box.main.fader'));
  assign('box.main.to', main, main);
}

function readDesk(reading: Reading, setup: SetupData): void {
  const { auxes, subgroups, strips } = setup.rig.desk;
  for (const { id } of auxes) {
    const at = `desk.${id}`;
    const sum = reading.place(`${at}.sum`, false);
    const level = reading.chain(sum, `${at}.level`, reading.ratio(`${at}.level`));
    reading.chain(level, `${at}.out`, 1);
  }
  for (const strip of strips) readStrip(reading, setup, strip);
  for (const { id } of subgroups) {
    const at = `desk.${id}`;
    const mute = reading.chain(
      readBus(reading, at),
      `${at}.mute`,
      reading.on(`${at}.mute`) ? 0 : 1,
    );
    reading.chain(mute, `${at}.out`, 1);
    const feed = reading.chain(mute, `${at}.main`, reading.on(`${at}.main`, true) ? 1 : 0);
    reading.join(feed, legs('desk.main.sum', true), 1);
  }
  reading.chain(readBus(reading, 'desk.main'), 'desk.main.out', 1);
}

/** Sum, insert and fader of a subgroup or of the main bus. */
function readBus(reading: Reading, at: string): readonly string[] {
  const insert = readInsert(reading, at, reading.place(`${at}.sum`, true));
  return reading.chain(insert, `${at}.fader`, reading.ratio(`${at}.fader`));
}

/** What comes into the return goes on: what a cord brings, else what the send passes straight on. */
function readInsert(reading: Reading, at: string, from: readonly string[]): readonly string[] {
  const stereo = from.length === 2;
  reading.chain(from, `${at}.insert.send`, 1);
  return reading.chain(reading.place(`${at}.insert.return`, stereo), `${at}.insert`, 1);
}

function readStrip(reading: Reading, { rig }: SetupData, { id, type: typeId }: StripData): void {
  const type = rig.desk.stripTypes.find((one) => one.id === typeId);
  if (!type) throw new RangeError(`Expected a strip type, but got ${typeId}.`);
  const at = `desk.${id}`;
  let end = reading.place(`${at}.in`, type.stereo);
  const after = new Map<string, readonly string[]>();
  for (const stage of type.stages) {
    const address = `${at}.${stage}`;
    if (stage === 'insert') end = readInsert(reading, at, end);
    else if (stage === 'pan') end = readPan(reading, address, end, rig.desk.panLaw);
    else if (stage === 'polarity') end = reading.chain(end, address, reading.on(address) ? -1 : 1);
    else if (stage === 'mute') end = reading.chain(end, address, reading.on(address) ? 0 : 1);
    else end = reading.chain(end, address, reading.ratio(address));
    after.set(stage, end);
  }
  for (const aux of rig.desk.auxes) {
    const address = `${at}.${aux.id}`;
    const tap = aux.tap === 'switchable' ? reading.value(`${address}.tap`, 'post') : aux.tap;
    const send = reading.place(address, false);
    const from = after.get(tap === 'pre' ? type.taps.pre : type.taps.post) ?? end;
    reading.join(from, send, reading.ratio(address, '-inf'));
    reading.join(send, [`desk.${aux.id}.sum`], 1);
  }
  for (const bus of [...rig.desk.subgroups.map((sub) => sub.id), 'main']) {
    const feed = reading.chain(
      end,
      `${at}.${bus}`,
      reading.on(`${at}.${bus}`, bus === 'main') ? 1 : 0,
    );
    reading.join(feed, legs(`desk.${bus}.sum`, true), 1);
  }
}

/** A pan on a mono strip, a balance on a stereo one. */
function readPan(
  reading: Reading,
  address: string,
  from: readonly string[],
  law: SetupData['rig']['desk']['panLaw'],
): readonly string[] {
  const to = reading.place(address, true) as readonly [string, string];
  const position = reading.value(address, 0);
  const [left = '', right] = from;
  if (right === undefined) reading.parts.push({ kind: 'pan', from: left, to, law, position });
  else {
    const ratios = balanceRatios(position);
    reading.join([left], [to[0]], ratios[0]);
    reading.join([right], [to[1]], ratios[1]);
  }
  return to;
}
