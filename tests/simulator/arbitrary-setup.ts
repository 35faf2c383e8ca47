import * as fc from 'fast-check';
import * as z from 'zod/mini';
import { type Board, type Setup, withValues } from '../../simulator/board/board.ts';
import { ROW_KINDS } from '../../simulator/rig/bay-schema.ts';
import { contradictionsIn } from '../../simulator/rig/check-rig.ts';
import { type Control, type ControlValue, NONE, OPEN } from '../../simulator/rig/control.ts';
import { controls } from '../../simulator/rig/controls.ts';
import { jacks } from '../../simulator/rig/jacks.ts';
import { normals } from '../../simulator/rig/normals.ts';
import { type Device, type Rig, rigSchema } from '../../simulator/rig/schema.ts';
import { AUX_TAPS } from '../../simulator/rig/schema-fields.ts';
import { PAN_LAWS } from '../../simulator/units/pan.ts';

/**
 * Random setups: from two tracks on one strip to a small room with subgroups, auxes and a rack, on
 * boards where most signals arrive somewhere. Cords go anywhere, so that inserts, returns, chains of
 * devices and loops all come up.
 */

/** Seed and length of every property here, so that a run can be repeated. */
export const RUNS = { seed: 20260417, numRuns: 120 } as const;

export interface SetupKinds {
  /** Kinds of devices that the rack may hold. */
  readonly devices?: readonly Device['kind'][];
  /** Whether cords lead from auxes and subgroups back into strips, so that most setups have loops. */
  readonly loops?: boolean;
}

export const LINEAR: SetupKinds = { devices: ['gain'] };

/** Stage orders that strips of these rigs come in; taps name stages of each. */
const NARROW = [
  { stages: ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'], pre: 'insert', post: 'mute' },
  { stages: ['polarity', 'trim', 'mute', 'insert', 'fader', 'pan'], pre: 'trim', post: 'fader' },
  { stages: ['insert', 'fader', 'pan', 'mute'], pre: 'insert', post: 'pan' },
] as const;
const WIDE = [
  { stages: ['trim', 'insert', 'fader', 'mute', 'pan'], pre: 'insert', post: 'mute' },
  { stages: ['pan', 'fader', 'insert', 'mute'], pre: 'pan', post: 'mute' },
] as const;

const named = (count: number, id: string) =>
  Array.from({ length: count }, (_, index) => ({
    id: `${id}${index + 1}`,
    label: `${id} number ${index + 1}`,
  }));

const counts = fc.record({
  tracks: fc.integer({ min: 1, max: 4 }),
  buses: fc.integer({ min: 0, max: 2 }),
  strips: fc.integer({ min: 1, max: 4 }),
  returns: fc.integer({ min: 0, max: 1 }),
  auxes: fc.integer({ min: 0, max: 2 }),
  subgroups: fc.integer({ min: 0, max: 2 }),
  extraOutputs: fc.integer({ min: 0, max: 2 }),
});

/** A random rig, checked as one from a file is. Its first output is a stereo one called `end`. */
export function arbitraryRig({ devices = ['gain', 'compressor', 'reverb'] }: SetupKinds = {}) {
  const rack = fc.array(
    fc.record({
      kind: fc.constantFrom(...devices),
      inputs: fc.constantFrom(1, 2),
      more: fc.boolean(),
    }),
    { maxLength: 3 },
  );
  const laws = fc.record({ box: fc.constantFrom(...PAN_LAWS), desk: fc.constantFrom(...PAN_LAWS) });
  const orders = fc.record({ narrow: fc.constantFrom(...NARROW), wide: fc.constantFrom(...WIDE) });
  const tracks = fc.array(
    fc.record({ level: fc.integer({ min: -40, max: -6 }), stereo: fc.boolean() }),
    {
      minLength: 4,
      maxLength: 4,
    },
  );
  const taps = fc.array(fc.constantFrom(...AUX_TAPS), { minLength: 2, maxLength: 2 });
  // Plug-ins of the first track and bus, sends to the last bus, and a way back into the box.
  const inBox = fc.record({
    plugins: fc.array(fc.constantFrom(...devices), { maxLength: 2 }),
    busPlugins: fc.array(fc.constantFrom(...devices), { maxLength: 1 }),
    tap: fc.constantFrom(...AUX_TAPS, undefined),
    captures: fc.boolean(),
  });
  // What larger desks have: solo and a control room, direct outs, an in-line strip, mono subgroups.
  const desk = fc.record({
    solo: fc.constantFrom(undefined, ['in-place'], ['afl', 'in-place'], ['pfl', 'afl', 'in-place']),
    isInline: fc.boolean(),
    hasDirect: fc.boolean(),
    subgroup: fc.constantFrom(
      {},
      { takes: 'left' },
      { takes: 'right', main: false },
      { main: false },
    ),
  });
  return fc
    .record({ counts, rack, laws, orders, tracks, taps, inBox, desk })
    .map(
      ({
        counts: many,
        rack: shelf,
        laws: law,
        orders: order,
        tracks: recorded,
        taps: tap,
        inBox: box,
        desk: { solo, isInline, hasDirect, subgroup },
      }) => {
        const plugins = (kinds: readonly Device['kind'][]) =>
          named(kinds.length, 'plugin').map((one, index) => ({ ...one, kind: kinds[index] }));
        const lines = many.tracks * 2;
        const strip = (type: string, count: number, id: string) =>
          named(count, id).map((one, index) => ({ ...one, mark: `${index + 1}`, type }));
        const type = (id: 'narrow' | 'wide') => ({
          id,
          stereo: id === 'wide',
          stages: order[id].stages,
          taps: { pre: order[id].pre, post: order[id].post },
          ...(hasDirect && id === 'narrow' ? { directOut: 'fader' } : {}),
        });
        const strips = strip('narrow', many.strips, 'ch').map((one) =>
          isInline && one.id === 'ch2' ? { ...one, inline: 'ch1' } : one,
        );
        const data = {
          id: 'random',
          label: 'A random room',
          box: {
            tracks: named(many.tracks, 'track').map((one, index) => ({
              ...one,
              levelDbfs: recorded[index]?.level ?? -20,
              stereo: recorded[index]?.stereo ?? false,
              plugins: index === 0 ? plugins(box.plugins) : [],
            })),
            buses: named(many.buses, 'bus').map((one, index) => ({
              ...one,
              ...(index === many.buses - 1 ? { tap: box.tap } : {}),
              plugins: index === 0 ? plugins(box.busPlugins) : [],
            })),
            captures: box.captures ? named(1, 'capture') : [],
            panLaw: law.box,
          },
          converter: { outputs: lines, inputs: box.captures ? 1 : 0, fullScaleDbu: 18 },
          desk: {
            panLaw: law.desk,
            stripTypes: [type('narrow'), type('wide')],
            strips: [...strips, ...strip('wide', many.returns, 'ret')],
            auxes: named(many.auxes, 'aux').map((one, index) => ({
              ...one,
              tap: tap[index] ?? 'pre',
            })),
            subgroups: named(many.subgroups, 'sub').map((one, index) =>
              index === 0 ? { ...one, ...subgroup } : one,
            ),
            ...(solo
              ? { solo, controlRoom: { inputs: [{ id: 'back', label: 'From the box' }] } }
              : {}),
          },
          rack: named(shelf.length, 'device').map((one, index) => {
            const { kind = 'gain', inputs = 1, more = false } = shelf[index] ?? {};
            return { ...one, kind, inputs, outputs: kind === 'reverb' && more ? 2 : inputs };
          }),
          outputs: [{ id: 'end', label: 'End', stereo: true }, ...named(many.extraOutputs, 'feed')],
          defaults: {
            ...Object.fromEntries(
              named(many.tracks, 'track').map(({ id }, index) => [
                `box.${id}.to`,
                `out${2 * index + 1}`,
              ]),
            ),
            ...Object.fromEntries(
              named(Math.min(many.tracks, many.strips), 'ch').map(({ id }, index) => [
                `desk.${id}.in`,
                `converter.out${2 * index + 1}`,
              ]),
            ),
            'out.end.l': 'desk.main.out.l',
            'out.end.r': 'desk.main.out.r',
          },
        };
        return checked(data);
      },
    )
    .chain(withBay);
}

/** A rig of these data. @throws Error where it is none. */
function checked(data: unknown): Rig {
  const rig = z.parse(rigSchema, data);
  const wrong = contradictionsIn(rig);
  if (wrong.length > 0) throw new Error(`A random rig is no rig: ${JSON.stringify(wrong)}`);
  return rig;
}

/** Gives some rigs a patchbay: inserts in its rows, a few points from anywhere to anywhere, a mult. */
function withBay(rig: Rig): fc.Arbitrary<Rig> {
  const { inputs, outputs } = jacks(rig);
  const sends = outputs.filter((jack) => jack.includes('.insert.send'));
  const kinds = fc.array(fc.constantFrom(...ROW_KINDS), { minLength: 8, maxLength: 8 });
  const bay = fc
    .record({
      sends: fc.shuffledSubarray(sends),
      tops: fc.shuffledSubarray(outputs.filter((jack) => !sends.includes(jack))),
      bottoms: fc.shuffledSubarray(inputs.filter((jack) => !jack.includes('.insert.return'))),
      kinds,
      mults: fc.integer({ min: 0, max: 2 }),
    })
    .map((chosen) => {
      const inserts = chosen.sends
        .slice(0, 4)
        .map((top) => ({ top, bottom: top.replace('send', 'return') }));
      const others = chosen.bottoms
        .slice(0, Math.min(4, chosen.tops.length))
        .map((bottom, index) => ({ top: chosen.tops[index], bottom }));
      const rows = [...inserts, ...others].map((point, index) => ({
        ...named(index + 1, 'row')[index],
        kind: chosen.kinds[index],
        points: [point],
      }));
      const mults = named(chosen.mults, 'mult').map((one) => ({ ...one, outputs: 2 }));
      return checked({ ...rig, bay: { rows, mults } });
    });
  return fc.oneof({ weight: 3, arbitrary: fc.constant(rig) }, { weight: 1, arbitrary: bay });
}

/** A random setup: a random rig on which about half of the controls were moved, and some cords. */
export const arbitrarySetup = (kinds: SetupKinds = {}): fc.Arbitrary<Setup> =>
  arbitraryRig(kinds).chain((rig) => arbitraryBoard(rig, kinds).map((board) => ({ rig, board })));

/** A random board for a rig. Gains stay low enough for most loops to die away. */
export function arbitraryBoard(rig: Rig, { loops = false }: SetupKinds = {}): fc.Arbitrary<Board> {
  const movable = [...controls(rig).values()].filter(({ kind }) => kind !== 'cord');
  const values = fc.tuple(...movable.map((control) => arbitraryMove(control)));
  return fc
    .record({ values, cords: arbitraryCords(rig, loops) })
    .map(({ values: moves, cords }) => {
      const moved = movable.flatMap(({ address }, index): [string, ControlValue][] => {
        const value = moves[index];
        return value === undefined ? [] : [[address, value]];
      });
      return withValues(rig, {}, { ...Object.fromEntries(moved), ...cords });
    });
}

/** A value of a control as a board may hold it; nothing where it is left alone. */
function arbitraryMove(control: Control): fc.Arbitrary<ControlValue | undefined> {
  const alone = fc.constant(undefined);
  switch (control.kind) {
    case 'gain': {
      const top = control.unit === 'dB' ? Math.min(6, control.max) : 0;
      const halves = fc.integer({ min: Math.max(-20, control.min) * 2, max: top * 2 });
      return fc.oneof(
        { weight: control.default === 0 ? 6 : 2, arbitrary: alone },
        { weight: 6, arbitrary: halves.map((half) => half / 2) },
        ...(control.closes ? [{ weight: 1, arbitrary: fc.constant(-Infinity) }] : []),
      );
    }
    case 'switch':
      return fc.oneof(
        { weight: ['mute', 'solo'].includes(control.label) ? 12 : 3, arbitrary: alone },
        { weight: 1, arbitrary: fc.constant(!control.default) },
      );
    case 'pan':
      return fc.oneof(
        alone,
        fc.integer({ min: -4, max: 4 }).map((quarter) => quarter / 4),
      );
    default:
      return fc.oneof(
        { weight: 4, arbitrary: alone },
        { weight: 1, arbitrary: fc.constantFrom(...control.options.map(({ value }) => value)) },
      );
  }
}

/**
 * Some cords: loops where they are asked for, devices where they usually go, and some from anywhere to
 * anywhere. Each jack takes the first cord that comes; an input whose own cord was taken stays empty.
 */
function arbitraryCords(rig: Rig, loops: boolean): fc.Arbitrary<Board> {
  const { inputs, outputs } = jacks(rig);
  const stripIns = loops ? inputs.filter((jack) => /^desk\.(ch|ret)\d\.in/.test(jack)) : [];
  const nothing = fc.constant(undefined);
  const normalled = [...normals(rig).into.keys()];
  const busOuts = loops ? outputs.filter((jack) => /^desk\.(aux|sub)\d\.out/.test(jack)) : [];
  return fc
    .record({
      back: fc.tuple(fc.shuffledSubarray(stripIns), fc.shuffledSubarray(busOuts)),
      patched: fc.tuple(...rig.rack.map((device) => arbitraryPatch(rig, device))),
      into: fc.shuffledSubarray([...inputs], { maxLength: Math.min(3, inputs.length) }),
      from: fc.shuffledSubarray([...outputs]),
      silenced:
        normalled.length > 0
          ? fc.oneof(
              { weight: 3, arbitrary: nothing },
              { weight: 1, arbitrary: fc.constantFrom(...normalled) },
            )
          : nothing,
    })
    .map(({ back: [backInto, backFrom], patched, into, from, silenced }) => {
      const cords: Record<string, string> = {};
      const taken = new Set<string>();
      const plug = (input: string | undefined, output: string | undefined) => {
        if (!input || !output || input in cords || taken.has(output)) return;
        cords[input] = output;
        taken.add(output);
      };
      backInto.forEach((input, index) => {
        plug(input, backFrom[index]);
      });
      for (const [input, output] of patched.flat()) plug(input, output);
      into.forEach((input, index) => {
        plug(input, from[index]);
      });
      for (const { kind, address, default: initial } of controls(rig).values()) {
        const isRobbed = kind === 'cord' && !(address in cords) && taken.has(String(initial));
        if (isRobbed) cords[address] = NONE;
      }
      if (silenced && !(silenced in cords)) cords[silenced] = OPEN;
      return cords;
    });
}

type Cord = readonly [input: string | undefined, output: string | undefined];

/** The cords of a device in the insert of a strip or bus, or behind an aux; none about every fourth time. */
function arbitraryPatch(rig: Rig, device: Device): fc.Arbitrary<readonly Cord[]> {
  const { inputs, outputs } = jacks(rig);
  const ends = {
    in: inputs.filter((jack) => jack.startsWith(`rack.${device.id}.`)),
    out: outputs.filter((jack) => jack.startsWith(`rack.${device.id}.`)),
  };
  const isWide = device.inputs === 2;
  const sends = outputs.filter((jack) => (isWide ? /send\.l$/ : /(send|aux\d\.out)$/).test(jack));
  const patches = sends.map((send): readonly Cord[] => {
    const legs = isWide ? [send, send.replace(/l$/, 'r')] : [send];
    const goals = send.includes('aux')
      ? inputs.filter((jack) => /^desk\.ret\d\.in/.test(jack))
      : legs.map((leg) => leg.replace('send', 'return'));
    return [
      ...legs.map((leg, index): Cord => [ends.in[index], leg]),
      ...goals.map((goal, index): Cord => [goal, ends.out[index]]),
    ];
  });
  const none: readonly Cord[] = [];
  if (patches.length === 0) return fc.constant(none);
  return fc.oneof(
    { weight: 1, arbitrary: fc.constant(none) },
    { weight: 3, arbitrary: fc.constantFrom(...patches) },
  );
}

/** Every place of a solution, and each leg of the stereo ones. */
export const placesAndLegs = (circuit: {
  readonly stages: readonly { readonly id: string; readonly place: string }[];
}): string[] => [...new Set(circuit.stages.flatMap(({ id, place }) => [place, id]))];
