import type { PlaceInFile } from '../file/read-document.ts';
import type { Contradiction } from './contradiction.ts';
import type { Rig, StripType } from './schema.ts';

/** What contradicts itself in the desk of a rig: strip types, in-line strips, and solo. */
export const deskContradictions = (rig: Rig): Contradiction[] => [
  ...rig.desk.strips.flatMap((_, index) => stripContradictions(rig, index)),
  ...rig.desk.stripTypes.flatMap((type, index) =>
    typeContradictions(rig, type, ['desk', 'stripTypes', index]),
  ),
  ...soloContradictions(rig),
];

function typeContradictions({ desk }: Rig, type: StripType, at: PlaceInFile): Contradiction[] {
  const { stages, taps, stereo, directOut, auxes = [], assigns = [] } = type;
  const found: Contradiction[] = [];
  const inStages = [...at, 'stages'];
  const list = stages.join(', ');
  const twice = stages.find((stage, order) => stages.indexOf(stage) !== order);
  if (twice) found.push({ at: inStages, expected: 'each stage once', found: `${twice} twice` });
  if (!stages.includes('pan')) {
    found.push({ at: inStages, expected: 'a pan stage', found: list });
  }
  // Behind the pan of a mono strip there are two legs, and its insert has jacks for one.
  const isLate = stages.includes('pan') && stages.indexOf('insert') > stages.indexOf('pan');
  if (!stereo && isLate) {
    found.push({ at: inStages, expected: 'the insert before the pan', found: list });
  }
  if (desk.solo?.includes('in-place') && !stages.includes('mute')) {
    found.push({
      at: inStages,
      expected: 'a mute stage, which a solo in place of other strips closes',
      found: list,
    });
  }
  const taken = { 'taps.pre': taps.pre, 'taps.post': taps.post, directOut };
  for (const [field, stage] of Object.entries(taken)) {
    if (stage === undefined || stages.includes(stage)) continue;
    found.push({
      at: [...at, ...field.split('.')],
      expected: `one of the stages ${list}`,
      found: stage,
      hint: 'A tap is a place in the list of stages.',
    });
  }
  const known = {
    auxes: { given: auxes, ids: desk.auxes.map(({ id }) => id) },
    assigns: { given: assigns, ids: [...desk.subgroups.map(({ id }) => id), 'main'] },
  };
  for (const [field, { given, ids }] of Object.entries(known)) {
    given.forEach((id, index) => {
      if (ids.includes(id)) return;
      found.push({
        at: [...at, field, index],
        expected: `one of ${ids.join(', ') || 'none: the desk has none'}`,
        found: `"${id}"`,
      });
    });
  }
  return found;
}

function stripContradictions({ desk }: Rig, index: number): Contradiction[] {
  const { strips, stripTypes } = desk;
  const strip = strips[index];
  if (!strip) return [];
  const at = ['desk', 'strips', index];
  const typeOf = (id: string) => stripTypes.find((type) => type.id === id);
  const own = typeOf(strip.type);
  const ids = stripTypes.map(({ id }) => id).join(', ');
  if (!own) {
    const expected = `one of the strip types ${ids}`;
    return [{ at: [...at, 'type'], expected, found: `"${strip.type}"` }];
  }
  if (strip.inline === undefined) return [];
  const refused = (expected: string, found: string): Contradiction[] => [
    { at: [...at, 'inline'], expected, found },
  ];
  const first = strips.find(({ id }) => id === strip.inline);
  if (!first || first === strip) return refused('the id of another strip', `"${strip.inline}"`);
  if (first.inline !== undefined) {
    return refused('a strip that is not itself a second path', `"${first.id}"`);
  }
  const earlier = strips.findIndex(({ inline }) => inline === strip.inline);
  if (earlier < index) {
    return refused('one second path to a strip', `"${first.id}" for a second time`);
  }
  if (typeOf(first.type)?.stereo !== own.stereo) {
    return refused(`a ${own.stereo ? 'stereo' : 'mono'} strip, as this one is`, `"${first.id}"`);
  }
  const lacking = [own, typeOf(first.type)].find((type) => !type?.stages.includes('fader'));
  return lacking
    ? refused('two paths with a fader each, to be swapped', `${lacking.stages.join(', ')}`)
    : [];
}

function soloContradictions({ desk: { solo = [], controlRoom } }: Rig): Contradiction[] {
  const at = ['desk', 'solo'];
  const twice = solo.find((mode, order) => solo.indexOf(mode) !== order);
  if (twice) return [{ at, expected: 'each mode once', found: `${twice} twice` }];
  const listening = solo.find((mode) => mode !== 'in-place');
  if (!listening || controlRoom) return [];
  return [
    {
      at,
      expected: 'a control room to listen in',
      found: `${listening} without one`,
      hint: 'Add controlRoom: {} to the desk.',
    },
  ];
}
