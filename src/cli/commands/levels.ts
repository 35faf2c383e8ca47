import {
  type Address,
  judge,
  type Level,
  levelAt,
  levelOf,
  outputPlace,
  type Setup,
  type Solution,
  simulate,
} from '../../../simulator/index.ts';
import {
  capitalised,
  levelFigure,
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
    json: JSON_OPTION,
  },
  notes: [
    'Levels are in dBu. A stereo place counts both its sides in power; desk.main.out.l is one side.',
    '−∞ is silence. Where an unstable loop reaches there is no level: unknown.',
  ],
  run: async (call) => {
    const { setup } = await readSetup(call.operands[0] ?? '', call.input);
    const { rig } = setup;
    const solution = simulate(setup);
    const named = call.every('at').map((name) => placeNamed('desk levels', rig, solution, name));
    const outputs = rig.outputs.map(({ id }) => outputPlace(id));
    const all = call.flag('all');
    const places = all ? stageIds(solution) : named.length > 0 ? named : outputs;
    const readings = places.map((place) => readPlace(setup, solution, place));
    const loops = judge({ kind: 'no-loop' }, { setup, solution }).reasons;
    if (call.flag('json')) return { lines: toJson({ places: readings, loops }).split('\n') };
    const table = all ? stageTable(setup, readings) : sourceTable(setup, readings);
    const remarks = loops.map((loop) => reasonSentence(rig, loop));
    return { lines: [...table, ...(remarks.length > 0 ? ['', ...remarks] : [])] };
  },
};

/** What stands at one place. */
interface Reading {
  readonly place: Address;
  readonly name: string;
  readonly total: Level;
  /** Level by source. */
  readonly sources: Readonly<Record<string, Level>>;
}

const stageIds = ({ circuit }: Solution): Address[] => circuit.stages.map(({ id }) => id);

const readPlace = ({ rig }: Setup, solution: Solution, place: Address): Reading => ({
  place,
  name: placeName(rig, place),
  total: levelAt(solution, place),
  sources: Object.fromEntries(
    rig.box.tracks.map(({ id }) => [id, levelOf(solution, id, place)] as const),
  ),
});

/** A row for each source, a column for each place. */
function sourceTable({ rig }: Setup, readings: readonly Reading[]): string[] {
  const rows = rig.box.tracks.map(({ id }) => [
    sourceName(rig, id),
    ...readings.map(({ sources }) => levelFigure(sources[id])),
  ]);
  const totals = ['Together', ...readings.map(({ total }) => levelFigure(total))];
  const head = ['dBu', ...readings.map(({ name }) => capitalised(name))];
  return tableLines([head, ...rows, totals], 1);
}

/** A row for each stage, a column for each source. */
function stageTable({ rig }: Setup, readings: readonly Reading[]): string[] {
  const tracks = rig.box.tracks;
  const rows = readings.map(({ place, total, sources }) => [
    place,
    levelFigure(total),
    ...tracks.map(({ id }) => levelFigure(sources[id])),
  ]);
  return tableLines([['dBu', 'Together', ...tracks.map(({ label }) => label)], ...rows], 1);
}
