import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { misfitOf } from '../../../simulator/rig/control.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { smallRoom } from '../small-room.ts';

const known = controls(smallRoom());
const misfit = (address: string, value: unknown) => {
  const control = known.get(address);
  if (!control) throw new Error(`The small room has no ${address}.`);
  return misfitOf(control, value)?.code;
};

describe('misfitOf()', () => {
  test.each<[string, unknown, string | undefined]>([
    ['desk.a.fader', 10, undefined],
    ['desk.a.fader', -90, undefined],
    ['desk.a.fader', -Infinity, undefined],
    ['desk.a.fader', 10.01, 'out-of-range'],
    ['desk.a.fader', -90.5, 'out-of-range'],
    ['desk.a.fader', Infinity, 'out-of-range'],
    ['desk.a.fader', Number.NaN, 'wrong-type'],
    ['desk.a.fader', '-6', 'wrong-type'],
    ['desk.a.trim', -Infinity, 'out-of-range'],
    ['desk.a.trim', -20, undefined],
    ['desk.a.pan', -1, undefined],
    ['desk.a.pan', 1.001, 'out-of-range'],
    ['desk.a.pan', -Infinity, 'out-of-range'],
    ['desk.a.mute', true, undefined],
    ['desk.a.mute', 0, 'wrong-type'],
    ['rack.squash.ratio', '6', undefined],
    ['rack.squash.ratio', 6, 'wrong-type'],
    ['rack.squash.ratio', '7', 'no-such-option'],
    ['desk.a.in', 'none', undefined],
    ['desk.a.in', 'desk.a.in', 'no-such-option'],
    ['desk.a.in', null, 'wrong-type'],
  ])('at %s, %j: %s', (address, value, code) => {
    expect(misfit(address, value)).toBe(code);
  });

  test('never throws, whatever the value', () => {
    fc.assert(
      fc.property(fc.constantFrom(...known.keys()), fc.anything(), (address, value) => {
        expect([undefined, 'wrong-type', 'out-of-range', 'no-such-option']).toContain(
          misfit(address, value),
        );
      }),
    );
  });
});
