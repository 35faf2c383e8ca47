import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { controlAt } from '../../../simulator/board/board.ts';
import { LOWEST_STEP, stepped } from '../../../simulator/board/step.ts';
import { type ControlValue, misfitOf } from '../../../simulator/rig/control.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();

describe('stepped()', () => {
  test.each<[string, ControlValue, number, ControlValue]>([
    ['desk.a.fader', -3, 0.5, -2.5],
    ['desk.a.fader', -0.3, 0.1, -0.2],
    ['desk.a.fader', 9.8, 0.5, 10],
    ['desk.a.fader', -60, -0.5, -Infinity],
    ['desk.a.fader', -72, -6, -Infinity],
    ['desk.a.fader', -72, 0.5, -71.5],
    ['desk.a.fader', -Infinity, 6, LOWEST_STEP],
    ['desk.a.fader', -Infinity, -6, -Infinity],
    ['desk.a.trim', -19.8, -0.5, -20],
    ['desk.a.trim', 4, 1.25, 5.25],
    ['rack.squash.knee', 1, -2, 0],
    ['desk.a.pan', 0.9, 0.2, 1],
    ['desk.a.pan', 0.1, -0.3, -0.2],
    ['desk.a.mute', false, 1, true],
    ['desk.a.mute', true, -1, false],
    ['rack.squash.ratio', '4', 1, '6'],
    ['rack.squash.ratio', 'inf', 1, 'inf'],
    ['rack.squash.ratio', '1.5', -1, '1.5'],
    ['desk.a.in', 'none', 1, 'converter.out1'],
  ])('%s at %s by %d is %s', (address, value, by, expected) => {
    expect(stepped(controlAt(rig, address), value, by)).toBe(expected);
  });

  test('from a default by any step always fits its control', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...controls(rig).values()),
        fc.array(
          fc.oneof(fc.double({ min: -30, max: 30, noNaN: true }), fc.constantFrom(-1, 1, 0)),
        ),
        (control, steps) => {
          let value: ControlValue = control.default;
          for (const by of steps) {
            value = stepped(control, value, by);
            expect(misfitOf(control, value)).toBeUndefined();
          }
        },
      ),
    );
  });
});
