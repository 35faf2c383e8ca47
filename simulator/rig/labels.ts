import { type Address, type Owner, ownerOf } from './address.ts';
import { pluginAt, sendBusAt } from './box-channels.ts';
import type { Rig } from './schema.ts';

const SIDES: Readonly<Record<string, string>> = { l: 'left', r: 'right' };

const PARTS: Readonly<Record<string, string>> = {
  source: 'recording',
  fader: 'fader',
  mute: 'mute',
  pan: 'pan',
  to: 'goes to',
  sum: 'sum',
  trim: 'trim',
  polarity: 'polarity',
  insert: 'insert',
  'insert.send': 'insert send',
  'insert.return': 'insert return',
  level: 'level',
  gain: 'gain',
  threshold: 'threshold',
  ratio: 'ratio',
  knee: 'knee width',
  makeup: 'make-up',
  compress: 'gain reduction',
  reverb: 'reverberation',
  highpass: 'high-pass',
  low: 'low shelf',
  'mid-frequency': 'middle frequency',
  mid: 'middle band',
  high: 'high shelf',
  equalise: 'filters',
  time: 'time',
  delay: 'delay',
  feedback: 'feedback',
  pad: 'pad to −10 dBV',
  end: 'output at −10 dBV',
  in: 'input',
  out: 'output',
  on: 'on',
  solo: 'solo',
  safe: 'solo-safe',
  cut: 'cut by the solo of others',
  swap: 'swap of the two faders',
  direct: 'direct out',
};

/** Parts of the control room. */
const CONTROL_ROOM_PARTS: Readonly<Record<string, string>> = {
  listen: 'listens to',
  solo: 'what is soloed',
  mode: 'solo mode',
  mono: 'mono',
  level: 'level',
  out: 'output',
};

/** Name of an owner as a person reads it: `Strip 3 Tenor`, `Tenor track`, `Main bus`. Its id where it has none. */
export function ownerLabel(rig: Rig, owner: Owner): string {
  const [section, id = ''] = owner.split('.');
  const labelIn = (kin: readonly { id: string; label: string }[]) =>
    kin.find((one) => one.id === id)?.label;
  switch (section) {
    case 'box': {
      if (id === 'main') return 'Main mix of the box';
      const track = labelIn(rig.box.tracks);
      if (track) return `${track} track`;
      const capture = labelIn(rig.box.captures);
      return capture ? `${capture} (capture track)` : `${labelIn(rig.box.buses) ?? id} (box bus)`;
    }
    case 'converter':
      return id.replace(/^out/, 'Output ').replace(/^in/, 'Converter input ');
    case 'desk': {
      if (id === 'main') return 'Main bus';
      if (id === 'control') return 'Control room';
      const strip = rig.desk.strips.find((one) => one.id === id);
      if (strip) return `Strip ${strip.mark} ${strip.label}`;
      const aux = labelIn(rig.desk.auxes);
      if (aux) return /^aux\b/i.test(aux) ? aux : `Aux ${aux}`;
      return labelIn(rig.desk.subgroups) ?? id;
    }
    case 'bay':
      return labelIn(rig.bay?.mults ?? []) ?? id;
    case 'rack':
      return labelIn(rig.rack) ?? id;
    default:
      return labelIn(rig.outputs) ?? id;
  }
}

/** Name of a part of an owner, without the owner: `fader`, `send to Plate`, `insert return left`. */
export function partLabel(rig: Rig, address: Address): string {
  const steps = address.split('.');
  const side = SIDES[steps.at(-1) ?? ''];
  const name = (side ? steps.slice(2, -1) : steps.slice(2)).join('.');
  const label = boxPart(rig, address, name) ?? sideless(rig, steps[0] ?? '', steps[1] ?? '', name);
  return [label, side].filter(Boolean).join(' ');
}

function sideless(rig: Rig, section: string, id: string, name: string): string {
  if (section === 'converter') return id.startsWith('in') ? 'jack' : '';
  if (section === 'out') return 'input';
  if (section === 'desk' && id === 'control') {
    const input = rig.desk.controlRoom?.inputs.find((one) => one.id === name);
    return input ? `input ${input.label}` : (CONTROL_ROOM_PARTS[name] ?? name);
  }
  if (section === 'desk' && name === 'path') return 'fed from';
  if (section === 'bay') return name.replace(/^out/, 'output ').replace(/^in$/, 'input');
  if (name === 'in') return section === 'desk' ? 'line input' : 'input';
  if (name === 'main') return section === 'box' ? 'main feed' : 'assign to the main bus';
  if (name === 'pan' && isStereoStrip(rig, id)) return 'balance';
  const aux = rig.desk.auxes.find((one) => name === one.id || name === `${one.id}.tap`);
  if (aux) return sendLabel(aux.label, name !== aux.id);
  const subgroup = rig.desk.subgroups.find((one) => name === one.id);
  return subgroup ? `assign to ${subgroup.label}` : (PARTS[name] ?? name);
}

/** Name of a part of a plug-in or send in the box: `Compressor threshold`, `send to Room`. */
function boxPart(rig: Rig, address: Address, name: string): string | undefined {
  const [, ...rest] = name.split('.');
  const inner = rest.join('.');
  const plugin = pluginAt(rig, address)?.plugin;
  if (plugin) return [plugin.label, PARTS[inner] ?? inner].filter(Boolean).join(' ');
  const bus = sendBusAt(rig, address);
  return bus ? sendLabel(bus.label, inner === 'tap') : undefined;
}

const sendLabel = (goal: string, isTap: boolean): string =>
  `${isTap ? 'tap of the ' : ''}send to ${goal}`;

function isStereoStrip(rig: Rig, id: string): boolean {
  const strip = rig.desk.strips.find((one) => one.id === id);
  return rig.desk.stripTypes.some((type) => type.id === strip?.type && type.stereo);
}

/** Whole name of a control, place or jack: `Strip 3 Tenor fader`, `Output 3`. */
export function fullLabel(rig: Rig, address: Address): string {
  return [ownerLabel(rig, ownerOf(address)), partLabel(rig, address)].filter(Boolean).join(' ');
}
