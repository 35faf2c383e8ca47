import { parseSetup } from '../../../simulator/board/setup-file.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';

const VIOLA = { id: 'viola', label: 'Viola', levelDbfs: -17 };

/** What a test changes of the room; a list or map is data of the setup file. */
export interface BoxRoom {
  readonly tracks?: readonly { readonly id: string; readonly [field: string]: unknown }[];
  readonly buses?: readonly object[];
  readonly captures?: readonly object[];
  readonly compensates?: boolean;
  readonly panLaw?: string;
  /** Of the converter, both ways. */
  readonly latencyMs?: number;
  readonly board?: Readonly<Record<string, unknown>>;
}

/**
 * A room about its box, read as a file is: six outputs and four inputs at 0 dBFS = +21 dBu, and six strips
 * `s1` to `s6`, all panned left, on outputs 1 to 6, with an aux before the fader and one after it.
 * Without tracks of its own it has the viola at −17 + 21 = 4 dBu, on output 1.
 */
export function boxRoom({ board = {}, latencyMs = 0, tracks = [VIOLA], ...box }: BoxRoom) {
  const strips = [1, 2, 3, 4, 5, 6].map((number) => ({
    id: `s${number}`,
    mark: `${number}`,
    label: `Strip ${number}`,
    type: 'narrow',
  }));
  const file = {
    format: 'tap-and-sum/setup',
    version: 1,
    rig: {
      id: 'room',
      label: 'The room',
      box: { tracks, ...box },
      converter: { outputs: 6, inputs: 4, fullScaleDbu: 21, latencyMs },
      desk: {
        stripTypes: [
          {
            id: 'narrow',
            stages: ['trim', 'insert', 'fader', 'mute', 'pan'],
            taps: { pre: 'insert', post: 'mute' },
          },
        ],
        strips,
        auxes: [
          { id: 'ears', label: 'Ears', tap: 'pre' },
          { id: 'wash', label: 'Wash', tap: 'post' },
        ],
      },
      outputs: [{ id: 'tape', label: 'Tape' }],
      defaults: {
        ...(tracks.some(({ id }) => id === 'viola') ? { 'box.viola.to': 'out1' } : {}),
        'out.tape': 'desk.main.out.l',
        ...Object.fromEntries(
          strips.flatMap(({ id, mark }) => [
            [`desk.${id}.in`, `converter.out${mark}`],
            [`desk.${id}.pan`, -1],
          ]),
        ),
      },
    },
    board,
  };
  const setup = parseSetup('room', JSON.stringify(file));
  return { setup, solution: simulate(setup) };
}
