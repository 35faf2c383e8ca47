import { expect, test } from 'vitest';
import { patchLines, recallGroups } from '../../src/text/index.ts';
import { deskRoom } from '../simulator/circuit/desk-room.ts';

const { setup } = deskRoom({
  board: {
    'box.oboe.fader': -2,
    'desk.s1.fader': -6.5,
    'desk.s1.ears': -3,
    'desk.s2.mute': true,
    'desk.s3.in': 'none',
    'desk.s4.in': 'converter.out3',
  },
});

test('recallGroups() lists what is off the defaults of the rig, and no cords', () => {
  expect(recallGroups(setup)).toEqual([
    { owner: 'Oboe track', lines: [{ control: 'fader', value: '−2.0 dB' }] },
    {
      owner: 'Strip 1 Strip 1',
      lines: [
        { control: 'fader', value: '−6.5 dB' },
        { control: 'send to Ears', value: '−3.0 dB' },
      ],
    },
    { owner: 'Strip 2 Strip 2', lines: [{ control: 'mute', value: 'on' }] },
  ]);
});

test('patchLines() lists every cord, be it the rig’s own or a new one, and no empty jack', () => {
  const lines = patchLines(setup);
  expect(lines).toContainEqual({ from: 'Output 3', to: 'Strip 4 Strip 4 line input' });
  expect(lines).toContainEqual({ from: 'Output 1', to: 'Strip 1 Strip 1 line input' });
  expect(lines.filter(({ to }) => to.startsWith('Strip 3'))).toEqual([]);
  expect(lines).toHaveLength(3 + 2);
});
