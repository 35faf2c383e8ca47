import type { PlaceInFile } from '../file/place.ts';
import { stripTypeContradictions } from './check-strip-types.ts';
import type { Contradiction } from './contradiction.ts';
import type { Rig, StripType } from './schema.ts';

/** What contradicts itself in the desk of a rig: strip types, in-line strips, and solo. */
export const deskContradictions = (rig: Rig): Contradiction[] => [
  ...stripTypeContradictions(rig),
  ...rig.desk.strips.flatMap((_, index) => inlineContradictions(rig, index)),
  ...rig.desk.stripTypes.flatMap((type, index) =>
    typeContradictions(rig, type, ['desk', 'stripTypes', index]),
  ),
  ...soloContradictions(rig),
];

/** What a type says of the rest of the desk: its direct out, its auxes and buses, and the mute that a solo closes. */
function typeContradictions({ desk }: Rig, type: StripType, at: PlaceInFile): Contradiction[] {
  const { stages, directOut, auxes = [], assigns = [] } = type;
  const found: Contradiction[] = [];
  const list = stages.join(', ');
  if (desk.solo?.includes('in-place') && !stages.includes('mute')) {
    found.push({
      at: [...at, 'stages'],
      expected: 'a mute stage, which the solo of another strip closes',
      found: list,
      hint: 'Add mute where the strip has it, or take in-place out of solo.',
    });
  }
  if (directOut !== undefined && !stages.includes(directOut)) {
    found.push({
      at: [...at, 'directOut'],
      expected: 'a stage of the strip',
      found: directOut,
      hint: `Name one of ${list}.`,
    });
  }
  const known = {
    auxes: { given: auxes, ids: desk.auxes.map(({ id }) => id) },
    assigns: { given: assigns, ids: [...desk.subgroups.map(({ id }) => id), 'main'] },
  };
  for (const [field, { given, ids }] of Object.entries(known)) {
    given.forEach((id, index) => {
      if (ids.includes(id)) return;
      const hint = ids.length > 0 ? `Name one of ${ids.join(', ')}.` : 'The desk has none.';
      const expected = field === 'auxes' ? 'an aux of this desk' : 'a bus of this desk';
      found.push({ at: [...at, field, index], expected, found: `"${id}"`, hint });
    });
  }
  return found;
}

/** What contradicts itself in the second path of an in-line strip. */
function inlineContradictions({ desk }: Rig, index: number): Contradiction[] {
  const { strips, stripTypes } = desk;
  const strip = strips[index];
  if (strip?.inline === undefined) return [];
  const typeOf = (id: string) => stripTypes.find((type) => type.id === id);
  const refused = (expected: string, found: string, hint: string): Contradiction[] => [
    { at: ['desk', 'strips', index, 'inline'], expected, found, hint },
  ];
  const first = strips.find(({ id }) => id === strip.inline);
  if (!first || first === strip) {
    return refused('the id of another strip', `"${strip.inline}"`, 'Name the strip that it is in.');
  }
  if (first.inline !== undefined) {
    const hint = `Name ${first.inline}, or a strip of its own.`;
    return refused('a first path', `"${first.id}", a second path itself`, hint);
  }
  const earlier = strips.findIndex(({ inline }) => inline === strip.inline);
  if (earlier < index) {
    const hint = 'A strip has two paths at most.';
    return refused('one second path to a strip', `"${first.id}" for a second time`, hint);
  }
  const [own, other] = [typeOf(strip.type), typeOf(first.type)];
  if (own && other && own.stereo !== other.stereo) {
    const width = (isStereo: boolean) => (isStereo ? 'stereo' : 'mono');
    const hint = 'Both paths are as wide as each other.';
    return refused(
      `a ${width(own.stereo)} strip`,
      `"${first.id}", which is ${width(other.stereo)}`,
      hint,
    );
  }
  const lacking = [own, other].find((type) => type && !type.stages.includes('fader'));
  const hint = 'Add a fader to its strip type.';
  return lacking ? refused('two paths with a fader each', `no fader in ${lacking.id}`, hint) : [];
}

function soloContradictions({ desk: { solo = [], controlRoom } }: Rig): Contradiction[] {
  const at = ['desk', 'solo'];
  const twice = solo.find((mode, order) => solo.indexOf(mode) !== order);
  if (twice)
    return [{ at, expected: 'each mode once', found: `${twice} twice`, hint: 'Take one out.' }];
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
