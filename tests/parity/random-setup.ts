import { Random } from './random.ts';
import { withBay } from './random-bay.ts';
import { type Kinds, randomRig } from './random-rig.ts';
import {
  type DeviceData,
  legs,
  type RigData,
  type SetupData,
  type StripData,
  type Value,
} from './setup-file.ts';

/**
 * A random setup file as plain data of the documented format. The same seed and kinds give the same one.
 *
 * Most tracks arrive on a strip; auxes feed devices whose outputs come up on strips, or outputs, or,
 * where loops are allowed, strips that send to them again; devices stand in inserts of strips,
 * subgroups and the main bus; some rooms have a patchbay. Some values stand in the defaults of the rig, the others on the board.
 */
export function randomSetup(seed: number, kinds: Kinds): SetupData {
  const random = new Random(seed);
  const rig = randomRig(random, kinds);
  const patch = new Patch();
  patchStrips(random, rig, patch);
  const returns = patchDevices(random, rig, patch, kinds);
  patchOutputs(random, rig, patch);
  const values = { ...settings(random, rig, kinds, returns), ...patch.cords };
  const defaults: Record<string, Value> = {};
  const board: Record<string, Value> = {};
  for (const [address, value] of Object.entries(values)) {
    const isCord = Object.hasOwn(patch.cords, address);
    if (random.chance(0.3)) defaults[address] = value;
    else board[address] = value;
    // A value on the board goes before one in the defaults; the jack of a cord must stay free, though.
    if (!isCord && typeof value === 'boolean' && random.chance(0.1)) {
      defaults[address] = !value;
      board[address] = value;
    }
  }
  const setup: SetupData = {
    format: 'tap-and-sum/setup',
    version: 1,
    title: `Random setup ${seed}`,
    rig: { ...rig, defaults },
    board,
  };
  return random.chance(WITH_BAY) ? withBay(random, setup) : setup;
}

/** The share of rooms that have a patchbay. */
const WITH_BAY = 0.4;

/** Cords, with each jack used once. */
class Patch {
  readonly cords: Record<string, string> = {};
  readonly #taken = new Set<string>();

  plug(inputs: readonly string[], outputs: readonly string[]): boolean {
    const pairs = inputs.map(
      (input, index) => [input, outputs[index] ?? outputs[0] ?? ''] as const,
    );
    if (pairs.some(([input, output]) => !this.isFree(input) || !this.isFree(output))) return false;
    if (new Set(pairs.map(([, output]) => output)).size < pairs.length) return false;
    for (const [input, output] of pairs) {
      this.cords[input] = output;
      this.#taken.add(output);
    }
    return true;
  }

  isFree(jack: string): boolean {
    return !(jack in this.cords) && !this.#taken.has(jack);
  }
}

const typeOf = (rig: RigData, strip: StripData) => {
  const type = rig.desk.stripTypes.find(({ id }) => id === strip.type);
  if (!type) throw new RangeError(`Expected a strip type, but got ${strip.type}.`);
  return type;
};

/** Strips that take what the box plays; the others are for what comes back. */
function patchStrips(random: Random, rig: RigData, patch: Patch): void {
  let line = 1;
  for (const strip of rig.desk.strips.slice(0, rig.box.tracks.length)) {
    for (const jack of legs(`desk.${strip.id}.in`, typeOf(rig, strip).stereo)) {
      if (line <= rig.converter.outputs && random.chance(0.95)) {
        patch.plug([jack], [`converter.out${line}`]);
        line += 1;
      }
    }
  }
}

/** @returns ids of the strips that something comes back on. */
function patchDevices(random: Random, rig: RigData, patch: Patch, kinds: Kinds): Set<string> {
  const { strips, auxes, subgroups } = rig.desk;
  const returns = new Set<string>();
  const inserts = [
    ...strips
      .filter((strip) => typeOf(rig, strip).stages.includes('insert'))
      .map((strip) => ({ owner: `desk.${strip.id}`, stereo: typeOf(rig, strip).stereo })),
    ...[...subgroups.map(({ id }) => id), 'main'].map((id) => ({
      owner: `desk.${id}`,
      stereo: true,
    })),
  ];
  const freeStrip = () =>
    strips.find(({ id, type }) =>
      legs(`desk.${id}.in`, type === 'wide').every((jack) => patch.isFree(jack)),
    );
  const comeUp = (outputs: readonly string[]) => {
    const strip = freeStrip();
    if (!strip) return;
    const jacks = legs(`desk.${strip.id}.in`, typeOf(rig, strip).stereo).slice(0, outputs.length);
    if (patch.plug(jacks, outputs)) returns.add(strip.id);
  };
  for (const device of rig.rack) {
    const [ins, outs] = [deviceJacks(device, 'in'), deviceJacks(device, 'out')];
    const aux = random.shuffled(auxes).find(({ id }) => patch.isFree(`desk.${id}.out`));
    const fits = inserts.filter(
      ({ owner, stereo }) =>
        stereo === (ins.length === 2) &&
        patch.isFree(legs(`${owner}.insert.send`, stereo)[0] ?? ''),
    );
    if (fits.length > 0 && (!aux || random.chance(0.5))) {
      const { owner, stereo } = random.pick(fits);
      const sends = legs(`${owner}.insert.send`, stereo);
      patch.plug(ins, sends);
      // Now and then nothing returns: the strip passes straight on then.
      if (random.chance(0.9))
        patch.plug(legs(`${owner}.insert.return`, stereo), outs.slice(0, sends.length));
    } else if (aux) {
      patch.plug(ins.slice(0, 1), [`desk.${aux.id}.out`]);
      comeUp(outs);
    }
  }
  if (kinds.loops) {
    const back = [
      ...auxes.map(({ id }) => [`desk.${id}.out`]),
      ...subgroups.map(({ id }) => legs(`desk.${id}.out`, true)),
    ];
    for (const outputs of random.shuffled(back).slice(0, 3))
      if (random.chance(0.6)) comeUp(outputs);
  }
  return returns;
}

const deviceJacks = ({ id, inputs, outputs }: DeviceData, side: 'in' | 'out') =>
  legs(`rack.${id}.${side}`, (side === 'in' ? inputs : outputs) === 2);

/** The main bus is captured; the other outputs get an aux, a subgroup or nothing. */
function patchOutputs(random: Random, rig: RigData, patch: Patch): void {
  patch.plug(legs('out.capture', true), legs('desk.main.out', true));
  for (const { id, stereo } of rig.outputs.slice(1)) {
    const jacks = legs(`out.${id}`, stereo);
    const buses = [
      ...rig.desk.auxes.map((aux) => [`desk.${aux.id}.out`]),
      ...rig.desk.subgroups.map((sub) => legs(`desk.${sub.id}.out`, true)),
    ].filter((outputs) => outputs.every((jack) => patch.isFree(jack)));
    if (buses.length === 0) continue;
    const outputs = random.pick(buses);
    patch.plug(jacks.slice(0, outputs.length), outputs);
  }
}

/** Where the controls stand that are no cords. */
function settings(
  random: Random,
  rig: RigData,
  kinds: Kinds,
  returns: ReadonlySet<string>,
): Record<string, Value> {
  const values: Record<string, Value> = {};
  const set = (share: number, address: string, value: () => Value) => {
    if (random.chance(share)) values[address] = value();
  };
  const gain = () => random.decimal(-18, 3);
  const fader = () => (random.chance(0.06) ? '-inf' : random.decimal(-20, 6));
  const pan = () => random.pick([-1, 1, random.decimal(-1, 1), random.decimal(-1, 1)]);
  const on = () => true;

  let line = 1;
  const channels = [
    ...rig.box.tracks.map(({ id, stereo }) => ({ id, stereo, buses: rig.box.buses })),
    ...rig.box.buses.map(({ id }, index) => ({
      id,
      stereo: true,
      buses: rig.box.buses.slice(index + 1),
    })),
  ];
  for (const { id, stereo, buses } of channels) {
    const at = `box.${id}`;
    set(0.5, `${at}.fader`, fader);
    set(0.04, `${at}.mute`, on);
    set(0.5, `${at}.pan`, pan);
    set(0.15, `${at}.main`, on);
    const first = 1 + ((line - 1) % (rig.converter.outputs - 1));
    const own = stereo ? `out${first}-${first + 1}` : `out${first}`;
    const bus = random.chance(0.25) && buses.length > 0 ? random.pick(buses).id : own;
    if (bus === own) line += stereo ? 2 : 1;
    set(0.97, `${at}.to`, () => bus);
  }
  set(0.5, 'box.main.fader', fader);
  const last = rig.converter.outputs;
  set(0.4, 'box.main.to', () => `out${last - 1}-${last}`);

  for (const strip of rig.desk.strips) {
    const at = `desk.${strip.id}`;
    const { stages } = typeOf(rig, strip);
    if (stages.includes('trim')) set(0.5, `${at}.trim`, () => random.decimal(-20, 6));
    if (stages.includes('polarity')) set(0.15, `${at}.polarity`, on);
    if (stages.includes('fader')) set(0.8, `${at}.fader`, fader);
    if (stages.includes('mute')) set(0.04, `${at}.mute`, on);
    set(0.6, `${at}.pan`, pan);
    set(0.15, `${at}.main`, () => false);
    // Without loops nothing that came back is sent anywhere again but to the main bus.
    const mayGoOn = kinds.loops || !returns.has(strip.id);
    for (const { id, tap } of rig.desk.auxes) {
      if (mayGoOn) set(0.5, `${at}.${id}`, gain);
      if (tap === 'switchable') set(0.6, `${at}.${id}.tap`, () => random.pick(['pre', 'post']));
    }
    for (const { id } of rig.desk.subgroups) if (mayGoOn) set(0.3, `${at}.${id}`, on);
  }
  for (const { id } of rig.desk.auxes) set(0.7, `desk.${id}.level`, fader);
  for (const { id } of rig.desk.subgroups) {
    set(0.7, `desk.${id}.fader`, fader);
    set(0.04, `desk.${id}.mute`, on);
    set(0.2, `desk.${id}.main`, () => false);
  }
  set(0.7, 'desk.main.fader', fader);
  for (const device of rig.rack) Object.assign(values, deviceSettings(random, device, kinds));
  return values;
}

const FREQUENCIES = ['250', '500', '800', '1250', '2000', '3150', '5000'];
const CORNERS = ['off', '30', '60', '90', '130', '200', '300'];
const TIMES = ['0.1', '0.5', '1', '2', '5', '8', '20', '60', '120', '250', '500'];
const RATIOS = ['1.5', '2', '3', '4', '6', '10', 'inf'];

function deviceSettings(random: Random, device: DeviceData, kinds: Kinds): Record<string, Value> {
  const at = (name: string) => `rack.${device.id}.${name}`;
  const band = () => (random.chance(0.3) ? 0 : random.decimal(-15, 15));
  switch (device.kind) {
    case 'gain':
      return { [at('gain')]: random.decimal(-20, 8) };
    case 'reverb':
      return { [at('level')]: random.decimal(-12, 6) };
    case 'compressor':
      return {
        [at('threshold')]: random.decimal(-30, 10),
        [at('ratio')]: random.pick(RATIOS),
        [at('knee')]: random.chance(0.4) ? 0 : random.decimal(0, 24),
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
