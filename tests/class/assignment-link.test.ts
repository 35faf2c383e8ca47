import { describe, expect, test } from 'vitest';
import { InputError } from '../../simulator/index.ts';
import { assignmentFragment } from '../../src/class/assignment-fragment.ts';
import { assignmentLink, assignmentOfLink } from '../../src/class/assignment-link.ts';
import { LONGEST_LINK } from '../../src/share/packed-link.ts';
import { ASSIGNMENT } from './a-class.ts';

describe('the link of an assignment', () => {
  test('gives the same assignment back, alone or in an address', async () => {
    const link = await assignmentLink(ASSIGNMENT);
    const address = ` https://example.org/assignment/${link}\n`;
    expect(await assignmentOfLink(assignmentFragment(address) ?? '')).toEqual(ASSIGNMENT);
    expect(assignmentFragment('https://example.org/bench/')).toBeUndefined();
  });

  test('is made only as long as mail programs take it', async () => {
    // No two lines alike, so that nothing packs.
    const note = Array.from({ length: 4000 }, (_, at) =>
      String.fromCharCode(33 + ((at * at * 7919 + at * 104_729) % 4000)),
    ).join('');
    await expect(assignmentLink({ ...ASSIGNMENT, note })).rejects.toThrow(
      `at most ${LONGEST_LINK} characters`,
    );
  });

  test.each(['#assignment=', '#assignment=1.', '#assignment=1.!!!', '#assignment=2.eJw'])(
    '%s is refused in words',
    async (link) => {
      await expect(assignmentOfLink(link)).rejects.toThrow(InputError);
    },
  );
});
