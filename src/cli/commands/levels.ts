import {
  type Address,
  clippingStages,
  firstToClip,
  type Headroom,
  headroomAt,
  judge,
  type Level,
  levelAt,
  levelOf,
  type NoiseShare,
  noiseAt,
  noiseShares,
  outputPlace,
  type Setup,
  type Solution,
  simulate,
} from '../../../simulator/index.ts';
import {
  capitalised,
  clippingSentence,
  firstToClipSentence,
  headroomFigure,
  levelFigure,
  noiseSentence,
  placeName,
  reasonSentence,
  sourceName,
} from '../../text/index.ts';
import { type Command, JSON_OPTION } from '../command.ts';
import { readSetup } from '../read-input.ts';
import { placeNamed } from '../rig-names.ts';
import { tableLines, toJson } from '../terminal.ts';

export const levels: Command = {
  name: 'levels',
  summary: 'the level of each source at each output',
  operands: ['SETUP'],
  options: {
    at: { type: 'string', multiple: true, value: 'PLACE', help: 'read this place instead' },
    all: { type: 'boolean', help: 'read every stage, one a line' },
    noise: { type: 'boolean', help: 'the noise there as well, and where it comes from' },
    headroom: { type: 'boolean', help: 'the headroom there as well, and what clips first' },
    json: JSON_OPTION,
  },
  notes: [
    'Levels are in dBu. A stereo place counts both its sides in power; desk.main.out.l is one side.',
    '−∞ is silence. Where an unstable loop reaches there is no level: unknown.',
    'Noise is RMS over a bandwidth of 20 kHz. Headroom is what is left between the peaks and the clip level;',
    'a dash stands where no stage can clip, ∞ where nothing comes.',
  ],
  run: async (call) => {
    const { setup } = await readSetup(call.operands[0] ?? '', call.input);
    const { rig } = setup;
    const solution = simulate(setup);
    const named = call.every('at').map((name) => placeNamed('desk levels', rig, solution, name));
    const outputs = rig.outputs.map(({ id }) => outputPlace(id));
    const all = call.flag('all');
    const places = all ? stageIds(solution) : named.length > 0 ? named : outputs;
    const asked = { noise: call.flag('noise'), headroom: call.flag('headroom') };
    const readings = places.map((place) => readPlace(setup, solution, place, asked));
    const loops = judge({ kind: 'no-loop' }, { setup, solution }).reasons;
    const clips = asked.headroom ? clipsIn(solution) : undefined;
    if (call.flag('json')) {
      return { lines: toJson({ places: readings, loops, ...clips }).split('\n') };
    }
    const table = all ? stageTable(setup, readings) : sourceTable(setup, readings);
    const remarks = [
      ...loops.map((loop) => reasonSentence(rig, loop)),
      ...(all ? [] : readings.flatMap((reading) => noiseRemark(setup, reading))),
      ...(clips ? clipRemarks(setup, clips) : []),
    ];
    return { lines: [...table, ...(remarks.length > 0 ? ['', ...remarks] : [])] };
  },
};

/** What is read beside levels. */
interface Asked {
  readonly noise: boolean;
  readonly headroom: boolean;
}

/** What stands at one place. */
interface Reading {
  readonly place: Address;
  readonly name: string;
  readonly total: Level;
  /** Level by source. */
  readonly sources: Readonly<Record<string, Level>>;
  readonly noise?: { readonly level: Level; readonly shares: readonly NoiseShare[] | undefined };
  /** Nothing where no stage can clip, or where there is no level. */
  readonly headroom?: Headroom | undefined;
}

/** What clips, and what would clip first. */
interface Clips {
  readonly firstToClip: Headroom | undefined;
  readonly clipping: readonly Headroom[];
}

const stageIds = ({ circuit }: Solution): Address[] => circuit.stages.map(({ id }) => id);

const clipsIn = (solution: Solution): Clips => ({
  firstToClip: firstToClip(solution),
  clipping: clippingStages(solution),
});

const readPlace = ({ rig }: Setup, solution: Solution, place: Address, asked: Asked): Reading => ({
  place,
  name: placeName(rig, place),
  total: levelAt(solution, place),
  sources: Object.fromEntries(
    rig.box.tracks.map(({ id }) => [id, levelOf(solution, id, place)] as const),
  ),
  ...(asked.noise
    ? { noise: { level: noiseAt(solution, place), shares: noiseShares(solution, place) } }
    : {}),
  ...(asked.headroom ? { headroom: headroomAt(solution, place) } : {}),
});

const noiseRemark = ({ rig }: Setup, { place, noise }: Reading): string[] =>
  noise ? [noiseSentence(rig, place, noise.level, noise.shares)] : [];

const clipRemarks = ({ rig }: Setup, clips: Clips): string[] => {
  const all = clippingSentence(rig, clips.clipping);
  return [firstToClipSentence(rig, clips.firstToClip), ...(all ? [all] : [])];
};

/** What was read beside levels, by name, each in a figure. */
function moreFigures(reading: Reading): [name: string, figure: string][] {
  const { noise, headroom, total } = reading;
  const none = total === undefined ? 'unknown' : '–';
  return [
    ...(noise ? [['Noise', levelFigure(noise.level)] as [string, string]] : []),
    ...('headroom' in reading
      ? [['Headroom, dB', headroom ? headroomFigure(headroom.headroom) : none] as [string, string]]
      : []),
  ];
}

/** A row for each source, a column for each place. */
function sourceTable({ rig }: Setup, readings: readonly Reading[]): string[] {
  const rows = rig.box.tracks.map(({ id }) => [
    sourceName(rig, id),
    ...readings.map(({ sources }) => levelFigure(sources[id])),
  ]);
  const totals = ['Together', ...readings.map(({ total }) => levelFigure(total))];
  const head = ['dBu', ...readings.map(({ name }) => capitalised(name))];
  const names = readings[0] ? moreFigures(readings[0]).map(([name]) => name) : [];
  const more = names.map((name, index) => [
    name,
    ...readings.map((reading) => moreFigures(reading)[index]?.[1] ?? ''),
  ]);
  return tableLines([head, ...rows, totals, ...more], 1);
}

/** A row for each stage, a column for each source. */
function stageTable({ rig }: Setup, readings: readonly Reading[]): string[] {
  const tracks = rig.box.tracks;
  const names = readings[0] ? moreFigures(readings[0]).map(([name]) => name) : [];
  const rows = readings.map((reading) => [
    reading.place,
    levelFigure(reading.total),
    ...moreFigures(reading).map(([, figure]) => figure),
    ...tracks.map(({ id }) => levelFigure(reading.sources[id])),
  ]);
  const head = ['dBu', 'Together', ...names, ...tracks.map(({ label }) => label)];
  return tableLines([head, ...rows], 1);
}
