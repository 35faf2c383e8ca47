import { expect, test } from 'vitest';
import { panText } from '../../src/text/index.ts';
import { readPan } from '../../src/text/read-pan.ts';

test.each([
  ['30 left', -0.3],
  ['30 % left', -0.3],
  ['30 percent right', 0.3],
  ['L30', -0.3],
  ['r 12,5', 0.125],
  ['−30 %', -0.3],
  ['-5', -0.05],
  ['+5', 0.05],
  ['left', -1],
  ['Full right', 1],
  ['r', 1],
  ['centre', 0],
  ['center', 0],
  ['0', 0],
  ['150 right', 1.5],
])('readPan() reads %j as %d', (text, position) => {
  expect(readPan(text)).toBeCloseTo(position, 9);
});

test.each(['', '30', 'up', '30 30 left', 'left right', '-', '+ -3', 'fullleft3', '1e3 left'])(
  'readPan() finds no position in %j',
  (text) => {
    expect(readPan(text)).toBeUndefined();
  },
);

test('readPan() reads what a pan says of itself, in whole percents', () => {
  for (let percent = -100; percent <= 100; percent += 1) {
    expect(readPan(panText(percent / 100))).toBeCloseTo(percent / 100, 9);
  }
});
