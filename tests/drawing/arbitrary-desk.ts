import * as fc from 'fast-check';
import { parseRig, type Rig, type StripStage } from '../../simulator/index.ts';

/** Seed and length of every property here, so that a run can be repeated. */
export const RUNS = { seed: 20261125, numRuns: 150 } as const;

const STAGES: readonly StripStage[] = ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'];

interface TypeShape {
  readonly stereo: boolean;
  readonly stages: readonly StripStage[];
  readonly pre: StripStage;
  readonly post: StripStage;
}

/** A strip of any stages in any order that a desk can have, with its taps on their sides of the fader. */
const arbitraryType: fc.Arbitrary<TypeShape> = fc
  .record({
    stereo: fc.boolean(),
    picked: fc.shuffledSubarray([...STAGES], { minLength: 1 }),
    taps: fc.tuple(fc.nat(), fc.nat()),
  })
  .map(({ stereo, picked, taps: [one, other] }) => {
    const withPan = picked.includes('pan') ? picked : [...picked, 'pan' as const];
    // Behind the pan of a mono strip there are two legs, and its insert has jacks for one.
    const isLate = !stereo && withPan.indexOf('insert') > withPan.indexOf('pan');
    const inOrder = isLate
      ? ['insert' as const, ...withPan.filter((stage) => stage !== 'insert')]
      : withPan;
    // A send before the fader needs a stage to be taken behind.
    const stages =
      inOrder[0] === 'fader'
        ? ['trim' as const, ...inOrder.filter((stage) => stage !== 'trim')]
        : inOrder;
    const fader = stages.indexOf('fader');
    const [before, after] =
      fader < 0 ? [stages, stages] : [stages.slice(0, fader), stages.slice(fader)];
    const pick = (from: readonly StripStage[], at: number) => from[at % from.length] ?? 'pan';
    return { stereo, stages, pre: pick(before, one), post: pick(after, other) };
  });

const named = (count: number, id: string) =>
  Array.from({ length: count }, (_, index) => ({ id: `${id}${index + 1}`, label: `${index + 1}` }));

/** What a desk may have more: each strip type its own way out and its own buses. */
const arbitraryExtras = fc.record({
  directOuts: fc.array(fc.option(fc.nat(), { nil: undefined }), { minLength: 3, maxLength: 3 }),
  withoutBus: fc.array(fc.option(fc.nat(), { nil: undefined }), { minLength: 3, maxLength: 3 }),
  inline: fc.array(fc.boolean(), { minLength: 32, maxLength: 32 }),
  takes: fc.array(fc.constantFrom('both', 'left', 'right'), { minLength: 8, maxLength: 8 }),
  goesOn: fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
  solo: fc.option(fc.shuffledSubarray(['in-place', 'pfl', 'afl'], { minLength: 1 }), {
    nil: undefined,
  }),
  controlRoom: fc.boolean(),
});

/** A random desk with up to 32 strips of up to three types, 8 auxes and 8 subgroups; as a file would hold it. */
export const arbitraryDesk: fc.Arbitrary<Rig> = fc
  .record({
    types: fc.array(arbitraryType, { minLength: 1, maxLength: 3 }),
    strips: fc.array(fc.nat(), { minLength: 1, maxLength: 32 }),
    taps: fc.array(fc.constantFrom('pre', 'post', 'switchable'), { maxLength: 8 }),
    subgroups: fc.nat({ max: 8 }),
    extras: arbitraryExtras,
  })
  .map(({ types, strips, taps, subgroups, extras }) => {
    const { directOuts, withoutBus, inline, takes, goesOn, controlRoom } = extras;
    const auxes = named(taps.length, 'aux').map((one, index) => ({
      ...one,
      // An id that is a control of something else; nothing forbids it.
      id: index === 1 ? 'to' : one.id,
      tap: taps[index],
    }));
    const groups = named(subgroups, 'sub').map((one, index) => ({
      ...one,
      takes: takes[index],
      main: goesOn[index],
    }));
    const canCut = types.every(({ stages }) => stages.includes('mute'));
    const solo = extras.solo?.filter((mode) => (mode === 'in-place' ? canCut : controlRoom));
    const typeOf = (index: number) => (strips[index] ?? 0) % types.length;
    // A second path follows its first one somewhere, and is as wide; each has a fader.
    const firstOf = (index: number) => {
      const [own, first] = [types[typeOf(index)], types[typeOf(index - 1)]];
      const isPair = index % 2 === 1 && inline[index] && own?.stereo === first?.stereo;
      const canSwap = [own, first].every((type) => type?.stages.includes('fader'));
      return isPair && canSwap ? `ch${index}` : undefined;
    };
    const allBut = (ids: readonly string[], index: number | undefined) =>
      index === undefined ? undefined : ids.filter((_, at) => at !== index % (ids.length + 1));
    const data = {
      id: 'random',
      label: 'A random desk',
      box: { tracks: [{ id: 'flute', label: 'Flute', levelDbfs: -20 }] },
      converter: { outputs: 1, fullScaleDbu: 18 },
      desk: {
        stripTypes: types.map(({ stereo, stages, pre, post }, index) => ({
          id: `type${index + 1}`,
          stereo,
          stages,
          taps: { pre, post },
          directOut: stages[(directOuts[index] ?? stages.length) % (stages.length + 1)],
          auxes: allBut(
            auxes.map(({ id }) => id),
            withoutBus[index],
          ),
          assigns: allBut([...groups.map(({ id }) => id), 'main'], withoutBus[index]),
        })),
        strips: named(strips.length, 'ch').map((one, index) => ({
          ...one,
          mark: one.label,
          type: `type${typeOf(index) + 1}`,
          inline: firstOf(index),
        })),
        auxes,
        subgroups: groups,
        ...(solo && solo.length > 0 ? { solo } : {}),
        ...(controlRoom ? { controlRoom: { inputs: [{ id: 'guest', label: 'Guest' }] } } : {}),
      },
      outputs: [{ id: 'end', label: 'End', stereo: true }],
    };
    return parseRig('random.yaml', JSON.stringify(data));
  });

/** A desk, and a choice of what to draw of it: nothing said means all. */
export const arbitraryView = arbitraryDesk.chain((rig) => {
  const { strips, auxes, subgroups } = rig.desk;
  const owners = [...strips, ...auxes, ...subgroups].map(({ id }) => `desk.${id}`);
  const rest = ['desk.main', ...(rig.desk.controlRoom ? ['desk.control'] : [])];
  const some = fc.subarray([...owners, ...rest], { minLength: 1 });
  return fc.record({
    rig: fc.constant(rig),
    show: fc.oneof(fc.constant(undefined), some),
  });
});
