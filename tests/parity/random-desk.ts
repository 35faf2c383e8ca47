import type { Random } from './random.ts';
import { kin } from './random-kinds.ts';
import type { DeskData, SoloMode, StripData, StripStage, StripTypeData } from './setup-file.ts';

/** A random desk, of which the first `trackCount` strips are for what the box plays. */
export function randomDesk(random: Random, stripCount: number, trackCount: number): DeskData {
  const most = Math.floor(stripCount / 4);
  const auxes = kin(random.int(1, Math.min(8, 2 + most)), 'aux').map((one) => ({
    ...one,
    tap: random.pick(['pre', 'post', 'switchable', 'switchable'] as const),
  }));
  const subgroups = kin(random.int(0, Math.min(8, 1 + most)), 'sub').map((one) => ({
    ...one,
    takes: random.pick(['both', 'both', 'left', 'right'] as const),
    main: random.chance(0.75),
  }));
  const solo = random.chance(0.6) ? soloModes(random) : undefined;
  const listens = solo?.some((mode) => mode !== 'in-place') ?? false;
  const controlRoom =
    listens || random.chance(0.4) ? { inputs: kin(random.int(0, 2), 'deck') } : undefined;
  const routes = {
    auxes: auxes.map(({ id }) => id),
    assigns: [...subgroups.map(({ id }) => id), 'main'],
  };
  const stripTypes = (['narrow', 'other', 'wide'] as const).map((id) => ({
    ...stripType(random, id, id === 'wide', solo?.includes('in-place') ?? false),
    ...(random.chance(0.3) ? { auxes: routes.auxes.filter(() => random.chance(0.6)) } : {}),
    ...(random.chance(0.3) ? { assigns: routes.assigns.filter(() => random.chance(0.7)) } : {}),
  }));
  const strips = kin(stripCount, 'ch').map((one, index) => ({
    ...one,
    mark: String(index + 1),
    type: random.chance(index < trackCount ? 0.2 : 0.6) ? 'wide' : random.pick(['narrow', 'other']),
  }));
  return {
    panLaw: random.pick(['equal-power', 'compromise', 'linear']),
    noise: {
      line: random.decimal(-105, -85),
      fader: random.decimal(-110, -90),
      bus: random.decimal(-120, -100),
    },
    stripTypes,
    strips: random.chance(0.4) ? withSecondPaths(random, strips, stripTypes, trackCount) : strips,
    auxes,
    subgroups,
    ...(solo ? { solo } : {}),
    ...(controlRoom ? { controlRoom } : {}),
  };
}

function soloModes(random: Random): SoloMode[] {
  const modes: readonly SoloMode[] = ['in-place', 'pfl', 'afl'];
  return random.shuffled(modes).slice(0, random.int(1, modes.length));
}

/** Makes some strips the second path of one that a track comes up on. */
function withSecondPaths(
  random: Random,
  strips: readonly StripData[],
  types: readonly StripTypeData[],
  trackCount: number,
): StripData[] {
  const typeOf = ({ type }: StripData) => types.find(({ id }) => id === type);
  const hasFader = (strip: StripData) => typeOf(strip)?.stages.includes('fader') ?? false;
  const taken = new Set<string>();
  return strips.map((strip) => {
    if (taken.has(strip.id) || !hasFader(strip) || random.chance(0.4)) return strip;
    const first = strips
      .slice(0, trackCount)
      .find(
        (one) =>
          one !== strip &&
          !taken.has(one.id) &&
          hasFader(one) &&
          typeOf(one)?.stereo === typeOf(strip)?.stereo,
      );
    if (!first) return strip;
    taken.add(first.id).add(strip.id);
    return { ...strip, inline: first.id };
  });
}

/** A strip type with its stages in any order that a desk can have. */
function stripType(random: Random, id: string, stereo: boolean, needsMute: boolean): StripTypeData {
  const all: readonly StripStage[] = ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'];
  const usual = all.filter(
    (stage) => stage === 'pan' || (stage === 'mute' && needsMute) || random.chance(0.9),
  );
  const shuffled = random.chance(0.5) ? usual : random.shuffled(usual);
  // The insert of a mono strip has jacks for one leg, so it stands before the pan.
  const inserted =
    stereo || shuffled.indexOf('insert') < shuffled.indexOf('pan')
      ? shuffled
      : (['insert', ...shuffled.filter((stage) => stage !== 'insert')] as const);
  // Something has to stand before the fader, where a send can be taken.
  const stages =
    inserted[0] === 'fader'
      ? [...inserted.slice(1, 2), 'fader' as const, ...inserted.slice(2)]
      : inserted;
  const fader = stages.indexOf('fader');
  return {
    id,
    stereo,
    stages,
    taps: {
      pre: random.pick(fader > 0 ? stages.slice(0, fader) : stages),
      post: random.pick(fader > 0 ? stages.slice(fader) : stages),
    },
    ...(random.chance(0.5) ? { directOut: random.pick(stages) } : {}),
  };
}
