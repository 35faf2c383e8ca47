import { describe, expect, test } from 'vitest';
import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import { type DeskRoom, deskRoom } from '../circuit/desk-room.ts';

function problemsOf(room: DeskRoom): readonly Problem[] {
  try {
    deskRoom(room);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

const WIDE = {
  id: 'wide',
  stereo: true,
  stages: ['trim', 'fader', 'mute', 'pan'],
  taps: { pre: 'trim', post: 'mute' },
};
const NARROW = { ...WIDE, id: 'narrow', stereo: false };
const BARE = { id: 'bare', stages: ['mute', 'pan'], taps: { pre: 'mute', post: 'mute' } };
const withTypes = { stripTypes: [NARROW, WIDE, BARE] };

describe('reading a desk refuses', () => {
  test.each<[string, DeskRoom, string, string]>([
    [
      'a direct out behind a stage that the strip lacks',
      { type: { directOut: 'polarity' } },
      'rig.desk.stripTypes[0].directOut',
      'polarity',
    ],
    [
      'sends to an aux that the desk lacks',
      { type: { auxes: ['wash', 'plate'] } },
      'rig.desk.stripTypes[0].auxes[1]',
      '"plate"',
    ],
    [
      'assigns to a bus that the desk lacks',
      { type: { assigns: ['drums', 'main'] } },
      'rig.desk.stripTypes[0].assigns[0]',
      '"drums"',
    ],
    [
      'a solo in place of strips without a mute',
      {
        type: { stages: ['trim', 'fader', 'pan'], taps: { pre: 'trim', post: 'fader' } },
        desk: { solo: ['in-place'] },
      },
      'rig.desk.stripTypes[0].stages',
      'trim, fader, pan',
    ],
    [
      'a mode of solo twice',
      { desk: { solo: ['in-place', 'in-place'] } },
      'rig.desk.solo',
      'in-place twice',
    ],
    [
      'a solo that listens where there is no control room',
      { desk: { solo: ['in-place', 'afl'] } },
      'rig.desk.solo',
      'afl without one',
    ],
    [
      'a strip called as the control room',
      { strips: { s3: { id: 'control' } } },
      'rig.desk.strips[2].id',
      'the reserved "control"',
    ],
    [
      'an input of the control room called as a part of it',
      { desk: { controlRoom: { inputs: [{ id: 'mono', label: 'Mono' }] } } },
      'rig.desk.controlRoom.inputs[0].id',
      'the reserved "mono"',
    ],
    [
      'a second path of a strip that is not there',
      { strips: { s2: { inline: 's9' } } },
      'rig.desk.strips[1].inline',
      '"s9"',
    ],
    [
      'a strip that is its own second path',
      { strips: { s2: { inline: 's2' } } },
      'rig.desk.strips[1].inline',
      '"s2"',
    ],
    [
      'a second path of a second path',
      { strips: { s2: { inline: 's1' }, s3: { inline: 's2' } } },
      'rig.desk.strips[2].inline',
      '"s2", a second path itself',
    ],
    [
      'two second paths of one strip',
      { strips: { s2: { inline: 's1' }, s3: { inline: 's1' } } },
      'rig.desk.strips[2].inline',
      '"s1" for a second time',
    ],
    [
      'a stereo path beside a mono one',
      { desk: withTypes, strips: { s4: { inline: 's1', type: 'wide' } } },
      'rig.desk.strips[3].inline',
      '"s1", which is mono',
    ],
    [
      'a path without a fader',
      { desk: withTypes, strips: { s4: { inline: 's1', type: 'bare' } } },
      'rig.desk.strips[3].inline',
      'no fader in bare',
    ],
  ])('%s', (_, room, place, found) => {
    const [problem, ...others] = problemsOf(room);
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ place, found });
    expect(problem?.hint).toBeTruthy();
  });
});
