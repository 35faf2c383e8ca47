import { assignsOf, typeOf } from './read-strip.ts';
import { Reading } from './reading.ts';
import type { SetupData, StripData } from './setup-file.ts';
import { isCut, soloMode } from './solo.ts';

type Feature = (setup: SetupData, reading: Reading) => boolean;

const isSoloed = (reading: Reading) => (owner: { readonly id: string }) =>
  reading.on(`desk.${owner.id}.solo`);

/** Whether something is plugged into an input from a jack whose address begins so. */
const isPlugged = ({ rig, board }: SetupData, from: RegExp): boolean =>
  Object.values({ ...rig.defaults, ...board }).some((value) => from.test(String(value)));

const listensTo =
  (mode: 'pfl' | 'afl'): Feature =>
  (setup, reading) =>
    soloMode(reading, setup.rig) === mode && setup.rig.desk.strips.some(isSoloed(reading));

const monoAssign =
  (side: string): Feature =>
  ({ rig }, reading) =>
    rig.desk.subgroups.some(
      ({ id, takes, main }) =>
        takes !== 'both' && main && reading.value<string>(`desk.${id}.main`, 'both') === side,
    );

const secondPath =
  (is: (reading: Reading, strip: StripData) => boolean): Feature =>
  ({ rig }, reading) =>
    rig.desk.strips.some((strip) => strip.inline !== undefined && is(reading, strip));

const FEATURES: Readonly<Record<string, Feature>> = {
  'solo in place that cuts a strip': ({ rig }, reading) =>
    rig.desk.strips.some((strip) => isCut(reading, rig, strip)),
  'a solo-safe strip that is not cut': ({ rig }, reading) =>
    rig.desk.strips.some((strip) => isCut(reading, rig, strip)) &&
    rig.desk.strips.some(
      (strip) => reading.on(`desk.${strip.id}.safe`) && !isSoloed(reading)(strip),
    ),
  'a solo mode that is not the first': ({ rig }, reading) =>
    rig.desk.solo !== undefined && soloMode(reading, rig) !== rig.desk.solo[0],
  'a strip before its fader (PFL)': listensTo('pfl'),
  'a strip after its stages (AFL)': listensTo('afl'),
  'an aux listened to': ({ rig }, reading) => rig.desk.auxes.some(isSoloed(reading)),
  'a subgroup listened to': ({ rig }, reading) => rig.desk.subgroups.some(isSoloed(reading)),
  'the control room on an input': (_, reading) =>
    reading.value<string>('desk.control.listen', 'main') !== 'main',
  'the control room in mono': (_, reading) => reading.on('desk.control.mono'),
  'the control room turned down or up': (_, reading) => reading.ratio('desk.control.level') !== 1,
  'a direct out that is plugged': (setup) => isPlugged(setup, /\.direct(\.[lr])?$/),
  'a direct out behind the pan, plugged': (setup) => isPlugged(setup, /\.direct\.[lr]$/),
  'a mono subgroup to the left': monoAssign('left'),
  'a mono subgroup to the right': monoAssign('right'),
  'a mono subgroup to both sides': monoAssign('both'),
  'a mono subgroup to neither side': monoAssign('none'),
  'a subgroup without an assign to the main bus': ({ rig }) =>
    rig.desk.subgroups.some(({ main }) => !main),
  'a subgroup whose jacks are plugged': (setup) => isPlugged(setup, /^desk\.sub\d+\.out/),
  'strips with sends to some auxes alone': ({ rig }) =>
    rig.desk.strips.some((strip) => {
      const { auxes } = typeOf(rig, strip);
      return auxes !== undefined && auxes.length < rig.desk.auxes.length;
    }),
  'strips with assigns to some buses alone': ({ rig }) =>
    rig.desk.strips.some(
      (strip) => assignsOf(rig, typeOf(rig, strip)).length <= rig.desk.subgroups.length,
    ),
  'a second path fed from the first': secondPath(
    (reading, { id }) => reading.value<string>(`desk.${id}.path`, 'jack') === 'first',
  ),
  'a second path fed from its own jack': secondPath(
    (reading, { id }) => reading.value<string>(`desk.${id}.path`, 'jack') === 'jack',
  ),
  'two paths with their faders swapped': secondPath((reading, { inline }) =>
    reading.on(`desk.${inline}.swap`),
  ),
  'strips with the mute before the pre tap': ({ rig }) =>
    rig.desk.strips.some((strip) => {
      const { stages, taps } = typeOf(rig, strip);
      return stages.includes('mute') && stages.indexOf('mute') <= stages.indexOf(taps.pre);
    }),
  'a −10 dBV device': ({ rig }) => rig.rack.some(({ level }) => level === 'minus10'),
};

export const DESK_FEATURES = Object.keys(FEATURES);

/** The names of what is at work on the desk and in the rack of a setup. */
export function deskFeaturesOf(setup: SetupData): string[] {
  const reading = new Reading(setup);
  return Object.entries(FEATURES).flatMap(([name, isAtWork]) =>
    isAtWork(setup, reading) ? [name] : [],
  );
}
