import { expect, test } from 'vitest';
import { outputPlace, paths, workingCompressors } from '../../simulator/index.ts';
import { curveSentence, scaleIn, waySentence } from '../../src/text/index.ts';
import { hear, netLoft } from './net-loft.ts';

const IN_LINE = {
  'rack.comp.in': 'desk.ch3.insert.send',
  'desk.ch3.insert.return': 'rack.comp.out',
  'rack.comp.threshold': -5,
  'rack.comp.ratio': '4',
};

test('waySentence() says where a way starts and arrives, and where it has least headroom', () => {
  const [way] = paths(hear().solution, 'cello', outputPlace('capture'));
  if (!way) throw new Error('Expected a way, but found none.');
  const dbfs = scaleIn(netLoft, 'dBFS');
  expect(waySentence(netLoft, way, undefined, dbfs)).toBe(
    'Cello starts at −19.0 dBFS and reaches Capture at −19.0 dBFS.',
  );
  const room = (headroom: number) => ({ place: 'desk.ch3.trim', headroom: headroom as never });
  expect(waySentence(netLoft, way, room(2.6), dbfs)).toContain(
    '; the least headroom on the way is 2.6 dB, at the trim of Strip 3 Cello.',
  );
  expect(waySentence(netLoft, way, room(-3), dbfs)).toContain(
    '; the trim of Strip 3 Cello clips by 3.0 dB.',
  );
});

test('curveSentence() says what a compressor hears, does and is: 3 dBu, 8 over its threshold, down by 6 to -3', () => {
  const [found] = workingCompressors(hear(IN_LINE).solution);
  if (!found) throw new Error('Expected a compressor, but found none.');
  expect(curveSentence(netLoft, found, scaleIn(netLoft, 'dBu'))).toBe(
    'The compressor hears +3.0 dBu and turns it down by 6.0 dB to −3.0 dBu; threshold −5.0 dBu, ratio 4 : 1, no knee.',
  );
});
