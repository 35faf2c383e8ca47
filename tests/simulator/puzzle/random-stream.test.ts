import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RandomStream } from '../../../simulator/puzzle/random-stream.ts';

const drawn = (stream: RandomStream, count = 20): number[] =>
  Array.from({ length: count }, () => stream.int(0, 999_999));

describe('RandomStream', () => {
  test('the same name gives the same numbers, another name gives others', () => {
    expect(drawn(new RandomStream('drill/insert/1/a'))).toEqual(
      drawn(new RandomStream('drill/insert/1/a')),
    );
    expect(drawn(new RandomStream('drill/insert/1/a'))).not.toEqual(
      drawn(new RandomStream('drill/insert/1/b')),
    );
  });

  // Links to drills go by it: when this fails, drills that were handed out are others than before.
  test('its first numbers are what they have always been', () => {
    expect(drawn(new RandomStream('drill'), 4)).toEqual([158_641, 105_080, 894_594, 517_982]);
  });

  test('part() does not depend on what was drawn before', () => {
    const one = new RandomStream('x');
    const other = new RandomStream('x');
    drawn(other, 7);
    expect(drawn(one.part('y'))).toEqual(drawn(other.part('y')));
  });

  test('int() gives every number of its range, and no other', () => {
    const numbers = new Set(
      Array.from({ length: 400 }, (_, seed) => new RandomStream(`n${seed}`).int(-2, 3)),
    );
    expect([...numbers].toSorted((one, other) => one - other)).toEqual([-2, -1, 0, 1, 2, 3]);
  });

  test('shuffled() keeps what there is', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.integer()), (name, list) => {
        const shuffled = new RandomStream(name).shuffled(list);
        expect(shuffled.toSorted()).toEqual(list.toSorted());
      }),
    );
  });

  test('pick() of nothing is an error', () => {
    expect(() => new RandomStream('x').pick([])).toThrow(RangeError);
  });
});
