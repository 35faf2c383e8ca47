import type { Random } from './random.ts';
import type { Kinds } from './random-kinds.ts';
import { routesOf } from './random-patch.ts';
import { typeOf } from './read-strip.ts';
import type { DeskData, DeviceKind, PluginData, RigData, Value } from './setup-file.ts';

/** Where the controls of a random rig stand that are no cords, but for the capture tracks. */
export function settings(random: Random, rig: RigData, kinds: Kinds): Record<string, Value> {
  const turned = new Turned(random);
  turnBox(random, turned, rig, kinds);
  turnDesk(random, turned, rig, kinds);
  for (const { id, kind } of rig.rack) {
    Object.assign(turned.values, deviceSettings(random, `rack.${id}`, kind, kinds));
  }
  return turned.values;
}

/** Values by address; each is set with some chance. */
class Turned {
  readonly values: Record<string, Value> = {};
  readonly #random: Random;

  constructor(random: Random) {
    this.#random = random;
  }

  set(share: number, address: string, value: () => Value): void {
    if (this.#random.chance(share)) this.values[address] = value();
  }
  gain(share: number, address: string): void {
    this.set(share, address, () => this.#random.decimal(-18, 3));
  }
  fader(share: number, address: string): void {
    this.set(share, address, () =>
      this.#random.chance(0.06) ? '-inf' : this.#random.decimal(-20, 6),
    );
  }
  pan(share: number, address: string): void {
    const any = () => this.#random.decimal(-1, 1);
    this.set(share, address, () => this.#random.pick([-1, 1, any(), any()]));
  }
  on(share: number, address: string): void {
    this.set(share, address, () => true);
  }
  off(share: number, address: string): void {
    this.set(share, address, () => false);
  }
  tap(share: number, address: string): void {
    this.set(share, `${address}.tap`, () => this.#random.pick(['pre', 'post']));
  }
}

function turnBox(random: Random, turned: Turned, { box, converter }: RigData, kinds: Kinds): void {
  let line = 1;
  const lines = converter.outputs - 2 - 2 * box.captures.length;
  const channels = [
    ...box.tracks.map((track) => ({ ...track, buses: box.buses })),
    ...box.buses.map((bus, index) => ({
      ...bus,
      stereo: true,
      buses: box.buses.slice(index + 1),
    })),
  ];
  for (const { id, stereo, plugins, buses } of channels) {
    const at = `box.${id}`;
    turnPlugins(random, turned, at, plugins, kinds);
    turned.fader(0.5, `${at}.fader`);
    turned.on(0.04, `${at}.mute`);
    turned.pan(0.5, `${at}.pan`);
    turned.on(0.3, `${at}.main`);
    for (const { id: bus, tap } of buses) {
      if (tap) turned.gain(0.4, `${at}.${bus}`);
      if (tap === 'switchable') turned.tap(0.6, `${at}.${bus}`);
    }
    const first = 1 + ((line - 1) % Math.max(1, lines - 1));
    const own = stereo ? `out${first}-${first + 1}` : `out${first}`;
    const bus = random.chance(0.25) && buses.length > 0 ? random.pick(buses).id : own;
    if (bus === own) line += stereo ? 2 : 1;
    turned.set(0.97, `${at}.to`, () => bus);
  }
  turned.fader(0.5, 'box.main.fader');
  // On a pair of its own, or on one that tracks go to as well.
  const pair = random.chance(0.4) ? lines + 1 : 1;
  turned.set(0.7, 'box.main.to', () => `out${pair}-${pair + 1}`);
}

function turnPlugins(
  random: Random,
  turned: Turned,
  at: string,
  plugins: readonly PluginData[],
  kinds: Kinds,
): void {
  for (const { id, kind } of plugins) {
    turned.off(0.2, `${at}.${id}.on`);
    Object.assign(turned.values, deviceSettings(random, `${at}.${id}`, kind, kinds));
  }
}

function turnDesk(random: Random, turned: Turned, rig: RigData, kinds: Kinds): void {
  const { desk } = rig;
  for (const strip of desk.strips) {
    const at = `desk.${strip.id}`;
    const { stages } = typeOf(rig, strip);
    if (stages.includes('trim')) turned.set(0.5, `${at}.trim`, () => random.decimal(-20, 6));
    if (stages.includes('polarity')) turned.on(0.15, `${at}.polarity`);
    if (stages.includes('fader')) turned.fader(0.8, `${at}.fader`);
    if (stages.includes('mute')) turned.on(0.04, `${at}.mute`);
    turned.pan(0.6, `${at}.pan`);
    if (strip.inline !== undefined) {
      turned.set(0.6, `${at}.path`, () => 'first');
      turned.on(0.4, `desk.${strip.inline}.swap`);
    }
    const { auxes, sends, assigns, main } = routesOf(rig, strip, kinds);
    for (const { id, tap } of auxes) if (tap === 'switchable') turned.tap(0.6, `${at}.${id}`);
    for (const { id } of sends) turned.gain(0.5, `${at}.${id}`);
    for (const bus of assigns) turned.on(0.4, `${at}.${bus}`);
    if (main) turned.off(0.15, `${at}.main`);
  }
  for (const { id } of desk.auxes) turned.fader(0.7, `desk.${id}.level`);
  for (const { id, takes, main } of desk.subgroups) {
    turned.fader(0.7, `desk.${id}.fader`);
    turned.on(0.04, `desk.${id}.mute`);
    if (!main) continue;
    if (takes === 'both') turned.off(0.2, `desk.${id}.main`);
    else turned.set(0.7, `desk.${id}.main`, () => random.pick(['none', 'left', 'right', 'both']));
  }
  turned.fader(0.7, 'desk.main.fader');
  turnListening(random, turned, desk);
}

function turnListening(random: Random, turned: Turned, desk: DeskData): void {
  const { solo = [], controlRoom, strips, auxes, subgroups } = desk;
  if (solo.length > 1) turned.set(0.6, 'desk.control.mode', () => random.pick(solo));
  if (controlRoom) {
    const deck = controlRoom.inputs.map(({ id }) => id);
    if (deck.length > 0) turned.set(0.4, 'desk.control.listen', () => random.pick(deck));
    turned.on(0.3, 'desk.control.mono');
    turned.fader(0.6, 'desk.control.level');
  }
  if (solo.length === 0 || random.chance(0.25)) return;
  for (const { id } of strips) {
    turned.on(0.25, `desk.${id}.solo`);
    if (solo.includes('in-place')) turned.on(0.25, `desk.${id}.safe`);
  }
  if (!solo.some((mode) => mode !== 'in-place') || random.chance(0.3)) return;
  for (const { id } of [...auxes, ...subgroups]) turned.on(0.4, `desk.${id}.solo`);
}

const FREQUENCIES = ['250', '500', '800', '1250', '2000', '3150', '5000'];
const CORNERS = ['off', '30', '60', '90', '130', '200', '300'];
const TIMES = ['0.1', '0.5', '1', '2', '5', '8', '20', '60', '120', '250', '500'];
const RATIOS = ['1.5', '2', '3', '4', '6', '10', 'inf'];

function deviceSettings(
  random: Random,
  owner: string,
  kind: DeviceKind,
  kinds: Kinds,
): Record<string, Value> {
  const at = (name: string) => `${owner}.${name}`;
  const band = () => (random.chance(0.3) ? 0 : random.decimal(-15, 15));
  switch (kind) {
    case 'gain':
      return { [at('gain')]: random.decimal(-20, 8) };
    case 'reverb':
      return { [at('level')]: random.decimal(-12, 6) };
    case 'compressor':
      return {
        [at('threshold')]: random.decimal(-40, 5),
        [at('ratio')]: random.pick(RATIOS),
        [at('knee')]: random.chance(0.25) ? 0 : random.decimal(0, 24),
        [at('makeup')]: random.decimal(-6, 12),
      };
    case 'equaliser':
      return {
        [at('highpass')]: random.pick(CORNERS),
        [at('low')]: band(),
        [at('mid-frequency')]: random.pick(FREQUENCIES),
        [at('mid')]: band(),
        [at('high')]: band(),
      };
    case 'delay':
      return {
        [at('time')]: random.pick(kinds.delays ?? TIMES),
        ...(kinds.feedback && random.chance(0.6)
          ? { [at('feedback')]: random.decimal(-30, -1) }
          : {}),
        [at('level')]: random.decimal(-12, 6),
      };
  }
}
