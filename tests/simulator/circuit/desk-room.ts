import { parseSetup } from '../../../simulator/board/setup-file.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';

/** What a test changes of the room; a list or map is data of the setup file. */
export interface DeskRoom {
  /** More fields of the desk. */
  readonly desk?: Readonly<Record<string, unknown>>;
  /** More fields of the strip type that all strips have. */
  readonly type?: Readonly<Record<string, unknown>>;
  /** More fields of strips, by id. */
  readonly strips?: Readonly<Record<string, object>>;
  readonly rack?: readonly object[];
  readonly outputs?: readonly object[];
  readonly board?: Readonly<Record<string, unknown>>;
}

/**
 * A room about its desk, read as a file is: tracks `flute` at 3 dBu, `oboe` at −2 dBu and `horn` at 5 dBu on the
 * strips `s1` to `s3`, all panned left, a fourth strip `s4` free. Linear pans: all of it goes to one side.
 */
export function deskRoom({
  desk = {},
  type = {},
  strips = {},
  rack = [],
  outputs = [],
  board = {},
}: DeskRoom) {
  const tracks = [
    { id: 'flute', label: 'Flute', levelDbfs: -17 },
    { id: 'oboe', label: 'Oboe', levelDbfs: -22 },
    { id: 'horn', label: 'Horn', levelDbfs: -15 },
  ];
  const numbers = [1, 2, 3, 4];
  const file = {
    format: 'tap-and-sum/setup',
    version: 1,
    rig: {
      id: 'room',
      label: 'The room',
      box: { tracks },
      converter: { outputs: 4, inputs: 4, fullScaleDbu: 20 },
      desk: {
        panLaw: 'linear',
        stripTypes: [
          {
            id: 'narrow',
            stages: ['trim', 'insert', 'fader', 'mute', 'pan'],
            taps: { pre: 'insert', post: 'mute' },
            ...type,
          },
        ],
        strips: numbers.map((number) => ({
          id: `s${number}`,
          mark: `${number}`,
          label: `Strip ${number}`,
          type: 'narrow',
          ...strips[`s${number}`],
        })),
        auxes: [
          { id: 'ears', label: 'Ears', tap: 'pre' },
          { id: 'wash', label: 'Wash', tap: 'post' },
        ],
        ...desk,
      },
      rack,
      outputs: [{ id: 'tape', label: 'Tape', stereo: true }, ...outputs],
      defaults: {
        'out.tape.l': 'desk.main.out.l',
        'out.tape.r': 'desk.main.out.r',
        ...Object.fromEntries(
          tracks.flatMap(({ id }, index) => [
            [`box.${id}.to`, `out${index + 1}`],
            [`desk.s${index + 1}.in`, `converter.out${index + 1}`],
          ]),
        ),
        ...Object.fromEntries(numbers.map((number) => [`desk.s${number}.pan`, -1])),
      },
    },
    board,
  };
  const setup = parseSetup('room', JSON.stringify(file));
  return { setup, solution: simulate(setup) };
}
