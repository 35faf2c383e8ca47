import { parseSetup, type Setup } from '../../simulator/index.ts';

const AUXES = 8;
const SUBGROUPS = 8;

const kin = (count: number, id: string) =>
  Array.from({ length: count }, (_, index) => ({
    id: `${id}${index + 1}`,
    label: `${id} ${index + 1}`,
  }));

/**
 * A desk of some strips, each with one track of its own, sending to all of 8 auxes and feeding one of 8
 * subgroups and the main bus. Read from a file as every setup is.
 */
export function benchSetup(strips: number): Setup {
  const board: Record<string, unknown> = {
    'out.capture.l': 'desk.main.out.l',
    'out.capture.r': 'desk.main.out.r',
  };
  kin(strips, 'ch').forEach(({ id }, index) => {
    board[`box.t${index + 1}.to`] = `out${index + 1}`;
    board[`desk.${id}.in`] = `converter.out${index + 1}`;
    board[`desk.${id}.fader`] = -(index % 13) / 2;
    board[`desk.${id}.pan`] = ((index % 9) - 4) / 4;
    board[`desk.${id}.sub${(index % SUBGROUPS) + 1}`] = true;
    kin(AUXES, 'aux').forEach((aux, send) => {
      board[`desk.${id}.${aux.id}`] = -3 - ((index + send) % 11);
    });
  });
  kin(AUXES, 'aux').forEach(({ id }) => {
    board[`out.feed-${id}`] = `desk.${id}.out`;
  });
  const rig = {
    id: 'bench',
    label: 'A desk to measure on',
    box: { tracks: kin(strips, 't').map((one) => ({ ...one, levelDbfs: -20 })) },
    converter: { outputs: strips, fullScaleDbu: 22 },
    desk: {
      stripTypes: [
        {
          id: 'mono',
          stages: ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'],
          taps: { pre: 'insert', post: 'mute' },
        },
      ],
      strips: kin(strips, 'ch').map((one, index) => ({
        ...one,
        mark: String(index + 1),
        type: 'mono',
      })),
      auxes: kin(AUXES, 'aux').map((one) => ({ ...one, tap: 'switchable' })),
      subgroups: kin(SUBGROUPS, 'sub'),
    },
    outputs: [{ id: 'capture', label: 'Capture', stereo: true }, ...kin(AUXES, 'feed-aux')],
  };
  const file = { format: 'tap-and-sum/setup', version: 1, rig, board };
  return parseSetup('bench.json', JSON.stringify(file));
}
