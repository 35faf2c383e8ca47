import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { InputError, type Setup } from '../../simulator/index.ts';
import { LONGEST_LINK } from '../../src/share/packed-link.ts';
import { pack, unpack } from '../../src/share/packing.ts';
import { linkTo, setupOfLink } from '../../src/share/setup-link.ts';
import { arbitraryBoard, arbitraryRig } from '../simulator/arbitrary-setup.ts';
import { smallRoom } from '../simulator/small-room.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

const rig = smallRoom();
const link = async (data: unknown, version = '1') =>
  `#setup=${version}.${await pack(JSON.stringify(data))}`;

/** What is wrong with a link, as it is told; nothing when it opens. */
async function refused(fragment: string): Promise<string | undefined> {
  try {
    await setupOfLink(fragment, rig);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return undefined;
}

describe('a link holds a setup', () => {
  test('linkTo() and setupOfLink() give back any setup of the rig of the page', async () => {
    await fc.assert(
      fc.asyncProperty(
        arbitraryRig().chain((any) =>
          arbitraryBoard(any).map((board): Setup => ({ rig: any, board })),
        ),
        async (setup) => {
          const fragment = await linkTo(setup, setup.rig);
          expect(fragment).toMatch(/^#setup=1\.[A-Za-z0-9_-]*$/);
          expect(await setupOfLink(fragment, setup.rig)).toEqual({ setup });
        },
      ),
      { seed: 41, numRuns: 40 },
    );
  });

  test('linkTo() takes a rig of one’s own along', async () => {
    const own = { rig: structuredClone(rig), board: { 'desk.a.fader': -7 } };
    const opened = await setupOfLink(await linkTo(own, rig), rig);
    expect(opened).toMatchObject({ setup: { board: own.board, rig: { id: rig.id } } });
  });

  test('linkTo() of a setup with 200 moves stays under a thousand characters', async () => {
    const [board] = fc.sample(arbitraryBoard(rig), { seed: 7, numRuns: 1 });
    expect((await linkTo({ rig, board: board ?? {} }, rig)).length).toBeLessThan(1000);
  });

  test('setupOfLink() names the other rig of the site that a link is for', async () => {
    expect(await setupOfLink(await link({ rig: 'barn', board: {} }), rig)).toEqual({
      otherRig: 'barn',
    });
  });
});

describe('setupOfLink() refuses, and says why', () => {
  test.each([
    ['a damaged one', async () => (await link({ rig: rig.id, board: {} })).slice(0, -6), 'damaged'],
    ['one without its version', async () => '#setup=abc', 'damaged'],
    ['one from a newer version', () => link({ rig: rig.id, board: {} }, '2'), 'version 2'],
    ['one that is too long', async () => `#setup=1.${'A'.repeat(LONGEST_LINK)}`, 'at most 8000'],
    ['one that unpacks to too much', () => link('0'.repeat(3_000_000)), 'at most 256000 bytes'],
    ['something else', () => link({ song: 1 }), 'song'],
    [
      'a control that the rig lacks',
      () => link({ rig: rig.id, board: { 'desk.z.fader': 1 } }),
      'desk.z.fader',
    ],
    ['a value out of range', () => link({ rig: rig.id, board: { 'desk.a.fader': 99 } }), '99'],
  ])('%s', async (_, make, told) => {
    expect(await refused(await make())).toContain(told);
  });

  test('every control that does not fit is listed', async () => {
    const board = Object.fromEntries(
      Array.from({ length: 60 }, (_, index) => [`desk.z${index}.fader`, 0]),
    );
    const told = (await refused(await link({ rig: rig.id, board }))) ?? '';
    for (const address of Object.keys(board)) expect(told).toContain(address);
  });

  test('whatever stands behind the #, with nothing but an InputError', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 60 }), async (text) => {
        await refused(text);
        await refused(`#setup=1.${text}`);
        await refused(`#setup=1.${await pack(text)}`);
      }),
      { seed: 42, numRuns: 150 },
    );
  });
});

test('unpack() gives back what pack() was given', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 300 }), async (text) => {
      expect(await unpack('text', await pack(text))).toBe(text);
    }),
    { seed: 43, numRuns: 100 },
  );
});
