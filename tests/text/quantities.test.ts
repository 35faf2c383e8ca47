import { expect, test } from 'vitest';
import { type Control, controls } from '../../simulator/index.ts';
import {
  amountText,
  controlText,
  frequencyText,
  gainText,
  levelFigure,
  levelText,
  panText,
  signed,
  spokenControl,
  spokenLevel,
} from '../../src/text/index.ts';
import { netLoft } from './net-loft.ts';

function control(address: string): Control {
  const found = controls(netLoft).get(address);
  if (!found) throw new RangeError(`Expected a control, but got ${address}.`);
  return found;
}

test('signed() uses the true minus sign, an explicit plus, and no sign for what rounds to zero', () => {
  expect([3, -6, 0, -0.04, 0.06].map((value) => signed(value))).toEqual([
    '+3.0',
    '−6.0',
    '0.0',
    '0.0',
    '+0.1',
  ]);
  expect(signed(-1.256, 2)).toBe('−1.26');
  // Halfway, but for what sums of doubles leave.
  expect([-2.25, -2.249999999999999, -2.250000000000001].map((value) => signed(value))).toEqual([
    '−2.3',
    '−2.3',
    '−2.3',
  ]);
});

test('gainText() closes at −∞, levelText() is silent there, and an unknown level says so', () => {
  expect(gainText(-Infinity)).toBe('closed');
  expect(levelText(-Infinity)).toBe('silent');
  expect(levelText(undefined)).toBe('no level (unstable loop)');
  expect(levelText(-12.34)).toBe('−12.3 dBu');
  expect(levelFigure(undefined)).toBe('unknown');
  expect(spokenLevel(undefined)).toBe('no level, unstable loop');
});

test('amountText() leaves out the sign and figures that say nothing', () => {
  expect([-10, 0.1, 2.5].map(amountText)).toEqual(['10 dB', '0.1 dB', '2.5 dB']);
});

test('panText() names the ends, the centre, and the share between them', () => {
  expect([-1, -0.3, 0, 0.004, 0.55, 1].map(panText)).toEqual([
    'full left',
    '30 % left',
    'centre',
    'centre',
    '55 % right',
    'full right',
  ]);
});

test.each([
  ['desk.ch3.fader', -6, '−6.0 dB', 'minus 6.0 decibels'],
  ['desk.ch3.fader', -Infinity, 'closed', 'closed'],
  ['desk.ch3.trim', 4.5, '+4.5 dB', 'plus 4.5 decibels'],
  ['rack.comp.threshold', -8, '−8.0 dBu', 'minus 8.0 dBu'],
  ['desk.ch3.pan', -0.3, '30 % left', '30 percent left'],
  ['desk.ch3.mute', true, 'on', 'on'],
  ['desk.ch3.polarity', false, 'not inverted', 'not inverted'],
  ['desk.ch3.aux1.tap', 'pre', 'before the fader', 'before the fader'],
  ['rack.comp.ratio', '4', '4 : 1', '4 to 1'],
  ['rack.comp.ratio', 'inf', '∞ : 1', 'infinity to 1'],
  ['desk.ch3.in', 'converter.out3', 'from Output 3', 'from Output 3'],
  ['desk.ch3.in', 'none', 'nothing plugged', 'nothing plugged'],
  ['box.cello.to', 'out3-4', 'outputs 3–4', 'outputs 3–4'],
] as const)('controlText() and spokenControl() of %s at %s', (address, value, text, spoken) => {
  expect(controlText(control(address), value)).toBe(text);
  expect(spokenControl(control(address), value)).toBe(spoken);
});

test('controlText() has a text for every control of a rig at its default', () => {
  for (const one of controls(netLoft).values()) {
    expect(controlText(one, one.default)).toMatch(/\S/);
    expect(spokenControl(one, one.default)).not.toMatch(/[−∞%:]/);
  }
});

test('frequencyText() has three figures, and kilohertz from 1000 on', () => {
  expect([46.875, 500, 999.4, 1000, 1258.9, 19_953].map(frequencyText)).toEqual([
    '46.9 Hz',
    '500 Hz',
    '999 Hz',
    '1 kHz',
    '1.26 kHz',
    '20 kHz',
  ]);
});
