import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HUNT_LEVELS, InputError } from '../../simulator/index.ts';
import { HUNT_FRAGMENT, huntLink, huntOfLink } from '../../src/share/hunt-link.ts';

describe('huntOfLink()', () => {
  test('reads what huntLink() writes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: HUNT_LEVELS.length }),
        fc.stringMatching(/^[a-z0-9]{1,12}$/),
        (level, seed) => {
          expect(huntOfLink(huntLink({ level, seed }))).toEqual({ level, seed });
        },
      ),
    );
  });

  test.each([
    ['', 'one that is damaged'],
    ['1.2', 'one that is damaged'],
    ['1.2.abc.more', 'one that is damaged'],
    ['2.1.abc', 'version "2"'],
    ['1.6.abc', '"6"'],
    ['1.0.abc', '"0"'],
    ['1.01.abc', '"01"'],
    ['1.1.ABC', '"ABC"'],
    ['1.1.<b>', '"<b>"'],
    ['1.1.aaaaaaaaaaaaa', '"aaaaaaaaaaaaa"'],
    [`1.1.${'a'.repeat(9000)}`, '9010 characters'],
  ])('"%.20s" is refused with what was found: %s', (rest, found) => {
    expect(() => huntOfLink(`${HUNT_FRAGMENT}${rest}`)).toThrow(found);
  });

  test('whatever stands in it, it is read or refused', () => {
    fc.assert(
      fc.property(fc.string(), (rest) => {
        try {
          huntOfLink(`${HUNT_FRAGMENT}${rest}`);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
    );
  });
});
