import {
  type Address,
  boardOf,
  type FileBoard,
  type Hz,
  headroomAt,
  levelAt,
  levelOf,
  noiseAt,
  outputPlace,
  paths,
  type Rig,
  response,
  type Solution,
  simulate,
} from '../../../simulator/index.ts';
import { gainText, headroomFigure, levelText } from '../../text/index.ts';

/** What a figure in prose can be read of, besides the level of a source, which `<Level>` gives. */
export interface Reading {
  readonly of: keyof typeof READINGS;
  /** An output by its id, or any place by its address. */
  readonly at: string;
  /** The source that is read; all of them together when left out. */
  readonly source?: string;
  readonly board?: FileBoard;
  /** For a rise: the board that it is counted from. */
  readonly from?: FileBoard;
  /** For a response: the frequency. */
  readonly hz?: number;
  readonly rig?: string;
}

/** What a reading is made from. */
interface Bench {
  readonly solution: Solution;
  readonly start: Solution;
  readonly place: Address;
  readonly source: string | undefined;
  readonly hz: number | undefined;
}

/** What can be read: a figure, and how it is written. Nothing where there is none of the kind. */
interface Kind {
  readonly read: (bench: Bench) => number | undefined;
  readonly write: (figure: number) => string;
}

const DIGITS = 2;
const asLevel = (figure: number) => levelText(figure, DIGITS);
const asGain = (figure: number) => gainText(figure, DIGITS);

const READINGS = {
  /** Level of all sources together, or of one. */
  level: { read: ({ solution, ...asked }) => readLevel(solution, asked), write: asLevel },
  /** By how much the level is higher than on the board `from`. */
  rise: {
    read: ({ solution, start, ...asked }) => {
      const [level, before] = [readLevel(solution, asked), readLevel(start, asked)];
      return level === undefined || before === undefined ? undefined : level - before;
    },
    write: asGain,
  },
  noise: { read: ({ solution, place }) => noiseAt(solution, place), write: asLevel },
  headroom: {
    read: ({ solution, place }) => headroomAt(solution, place)?.headroom,
    write: (figure) => `${headroomFigure(figure)} dB`,
  },
  /** By how much a frequency of a source is raised or lowered, from the recording to the place. */
  response: {
    read: ({ solution, place, source = '', hz = Number.NaN }) =>
      response(solution, source, place, [hz as Hz])?.[0],
    write: asGain,
  },
  /** What a compressor does, at the place where it does it. */
  compression: {
    read: ({ solution, place }) => {
      const [stage = Number.NaN] = solution.circuit.stagesAt.get(place) ?? [];
      return solution.compression.get(stage);
    },
    write: asGain,
  },
  /** By how many seconds the latest way of a source comes after the first. */
  late: {
    read: ({ solution, place, source = '' }) => {
      const delays = paths(solution, source, place).map(({ delay }) => delay);
      return delays.length === 0 ? undefined : Math.max(...delays) - Math.min(...delays);
    },
    write: (seconds) => `${Number((1000 * seconds).toFixed(DIGITS))} ms`,
  },
} as const satisfies Record<string, Kind>;

/** A reading as it stands in prose. @throws RangeError when there is nothing of the kind to read. */
export function readingText(
  rig: Rig,
  { of, at, source, board = {}, from = {}, hz }: Reading,
): string {
  const solve = (values: FileBoard) =>
    simulate({ rig, board: boardOf(`the ${of} at ${at}`, rig, values) });
  const place = rig.outputs.some(({ id }) => id === at) ? outputPlace(at) : at;
  const { read, write }: Kind = READINGS[of];
  const figure = read({ solution: solve(board), start: solve(from), place, source, hz });
  if (figure === undefined) throw new RangeError(`Expected a ${of} at ${at}, but there is none.`);
  return write(figure);
}

const readLevel = (solution: Solution, { place, source }: Pick<Bench, 'place' | 'source'>) =>
  source === undefined ? levelAt(solution, place) : levelOf(solution, source, place);
