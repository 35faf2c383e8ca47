import {
  CONTROL_ROOM,
  controls,
  numberAt,
  ownerOf,
  type Path,
  type PathStep,
  type PluginAt,
  pluginAt,
  type Rig,
  type Setup,
  valueAt,
} from '../../simulator/index.ts';
import { IN_DBU } from './level-units.ts';
import { ownerName, sourceName } from './owners.ts';
import { deviceName, goalOfSend, placeName } from './places.ts';
import { levelText, panText } from './quantities.ts';
import { sentence } from './sentence.ts';
import { unsigned } from './signed.ts';

/** A gain below this, in dB, is none to a reader. */
const UNHEARD_DB = 0.05;

/**
 * A path in one sentence: `Cello leaves Output 3, is turned down 6.0 dB by the fader of Strip 3 Cello, goes
 * before the fader to Aux 1, and reaches Headphones A at −3.0 dBu.` Places where nothing happens to it, and
 * strips that it only comes in on, are passed over.
 */
export function pathStory(setup: Setup, path: Path, scale = IN_DBU): string {
  const clauses = path.steps.flatMap((step, index) => clauseOf(setup, path, step, index));
  const end = path.steps.at(-1)?.place ?? '';
  const arrives = `reaches ${placeName(setup.rig, end)} at ${levelText(path.level, 1, scale)}`;
  const told = clauses.length === 0 ? arrives : `${clauses.join(', ')}, and ${arrives}`;
  return sentence(`${sourceName(setup.rig, path.signal)} ${told}`);
}

/** What happens to a signal at one place, as a verb with its objects; nothing where it is not worth a word. */
function clauseOf(setup: Setup, path: Path, step: PathStep, index: number): string[] {
  const { rig } = setup;
  const { place } = step;
  if (index === 0 || index === path.steps.length - 1) return [];
  if (place.startsWith('converter.in')) return [`comes in at ${placeName(rig, place)}`];
  if (place.startsWith('converter.')) return [`leaves ${placeName(rig, place)}`];
  const goal = goalOfSend(rig, place);
  if (goal) return [sendClause(setup, path, step, index, goal.label)];

  const owner = ownerOf(place);
  const plugin = pluginAt(rig, place);
  // A plug-in does inside a track what a device does in the rack; a mult is a station like one.
  const device = plugin?.address ?? (/^(rack|bay)\./.test(owner) ? owner : undefined);
  const name = place.slice((device ?? owner).length + 1);
  const control = controls(rig).get(place);
  switch (name) {
    case 'polarity':
      return valueAt(setup, place) === true ? [`is inverted by ${ownerName(rig, owner)}`] : [];
    case 'pan': {
      const position = control ? numberAt(setup, place) : 0;
      return position === 0 ? [] : [`is panned ${panText(position)}`];
    }
    case 'path': {
      const before = path.steps[index - 1]?.place ?? '';
      return ownerOf(before) === owner
        ? []
        : [
            `goes after the fader of ${ownerName(rig, ownerOf(before))} to ${ownerName(rig, owner)}`,
          ];
    }
    case 'solo':
      return owner === CONTROL_ROOM ? [] : [`is soloed on ${ownerName(rig, owner)}`];
    case 'sum':
      // A send names its bus already, and the sum inside a device is no station.
      return cameBySend(setup, path, index) || device !== undefined
        ? []
        : [`goes to ${ownerName(rig, owner)}`];
    case 'in':
      if (plugin) return [pluginClause(rig, plugin)];
      return device === undefined
        ? []
        : [`goes${insertBefore(setup, path, index)} to ${ownerName(rig, owner)}`];
    case 'insert.return':
      // By its normal it comes from its own send, and has not been away.
      if (path.steps[index - 1]?.place === `${owner}.insert.send`) return [];
      return [`comes back into the insert of ${ownerName(rig, owner)}`];
    case 'reverb':
      return ['is turned into reverberation'];
    case 'equalise':
      return [`is filtered${changed(step, ' and ')} there`];
    case 'delay':
      return [`is held back by ${String(valueAt(setup, `${device}.time`))} ms`];
    case 'compress':
      return Math.abs(step.gain) < UNHEARD_DB ? [] : [`is${changed(step, ' ')} by its compression`];
    default:
      return Math.abs(step.gain) < UNHEARD_DB
        ? []
        : [`is${changed(step, ' ')} by ${placeName(rig, place)}`];
  }
}

/** ` turned down 6.0 dB`, with what stands before it; nothing where nothing was changed. */
function changed({ gain }: PathStep, before: string): string {
  if (Math.abs(gain) < UNHEARD_DB) return '';
  return `${before}turned ${gain < 0 ? 'down' : 'up'} ${unsigned(gain)} dB`;
}

/** `passes the compressor of the Cello track`, and by how much later that is where it takes time. */
function pluginClause(rig: Rig, { plugin, address }: PluginAt): string {
  const late = plugin.latencyMs === 0 ? '' : `, ${plugin.latencyMs} ms later`;
  return `passes ${deviceName(rig, address)}${late}`;
}

function sendClause(setup: Setup, path: Path, step: PathStep, index: number, goal: string): string {
  const owner = ownerOf(step.place);
  const fader = `${owner}.fader`;
  const hasFader = controls(setup.rig).has(fader);
  const hasPassed = path.steps.slice(0, index).some(({ place }) => place === fader);
  const side = hasFader ? ` ${hasPassed ? 'after' : 'before'} the fader` : '';
  const gain = changed(step, ', ');
  return `goes${side} of ${ownerName(setup.rig, owner)} to ${goal}${gain}`;
}

/** ` from the insert of Strip 3 Cello`, where a path comes out of an insert; else nothing. */
function insertBefore({ rig }: Setup, path: Path, index: number): string {
  const before = path.steps[index - 1]?.place ?? '';
  return before.endsWith('.insert.send')
    ? ` from the insert of ${ownerName(rig, ownerOf(before))}`
    : '';
}

/** Whether a path comes into a bus by a send, which names the bus already. */
const cameBySend = ({ rig }: Setup, path: Path, index: number): boolean =>
  goalOfSend(rig, path.steps[index - 1]?.place ?? '') !== undefined;
