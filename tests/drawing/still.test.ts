import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Board,
  controls,
  levelAt,
  outputPlace,
  part,
  valueAt,
  withValues,
} from '../../simulator/index.ts';
import { type Scene, stillScene } from '../../src/components/desk/scene.ts';
import { looksAlike, standsAlike } from '../../src/components/desk/still.ts';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { type Followed, lightOf } from '../../src/drawing/light.ts';
import { scaleIn } from '../../src/text/index.ts';
import { hear, netLoft } from '../text/net-loft.ts';
import { RUNS } from './arbitrary-desk.ts';

const desk: Drawing = layOut(netLoft);
const scale = scaleIn(netLoft, 'dBu');
const locked = new Set<string>();
const { start } = stillOf({});

/** Scenes of one desk: what does not change between them is the same thing. */
function stillOf(board: Board): Scene & { start: Scene['setup'] } {
  const heard = hear(board);
  return {
    ...stillScene({ id: 'desk', ...heard, follow: 'cello', scale }),
    locked,
    start: heard.setup,
  };
}

function sceneOf(board: Board, followed: Followed): Scene {
  const still = { ...stillOf(board), start };
  return { ...still, followed, light: lightOf(still.solution, followed) };
}

/** All that is drawn, from the single wire to the column. */
const drawn: readonly object[] = [
  ...desk.columns,
  ...desk.rails,
  ...[...desk.columns, ...desk.rails].flatMap(({ wires }) => wires),
  ...desk.columns.flatMap(({ inserts }) => inserts),
];

/** The addresses that stand anywhere in what is drawn. */
const addressesIn = (of: object): string[] =>
  [...JSON.stringify(of).matchAll(/"([a-z][a-z0-9-]*\.[^"]+)"/g)].map(
    ([, address = '']) => address,
  );

/** What a drawing shows at an address: where its control stands, how it is lit, how loud what leaves it is. */
function shownAt(scene: Scene, address: string) {
  const { setup, solution, light } = scene;
  const isPlace = (place: string) => solution.circuit.stagesAt.has(place);
  const out = part(address, 'out');
  return {
    value: controls(setup.rig).has(address) ? valueAt(setup, address) : undefined,
    light: isPlace(address) ? light(address) : undefined,
    out: isPlace(out) ? levelAt(solution, out) : undefined,
  };
}

const gains = [...controls(netLoft).values()].filter(({ kind }) => kind === 'gain');
const switches = [...controls(netLoft).values()].filter(({ kind }) => kind === 'switch');
const turned = fc
  .array(
    fc.record({
      control: fc.constantFrom(...gains),
      to: fc.constantFrom(-Infinity, -20, -10, -3, 0, 3),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((some) => Object.fromEntries(some.map(({ control, to }) => [control.address, to] as const)));
const boards = fc.tuple(turned, fc.subarray(switches, { maxLength: 4 })).map(([values, on]) =>
  withValues(
    netLoft,
    {},
    {
      ...values,
      ...Object.fromEntries(on.map(({ address }) => [address, true] as const)),
    },
  ),
);
const followings: readonly Followed[] = [
  { kind: 'source', source: 'cello' },
  { kind: 'output', output: outputPlace('capture') },
];

test('looksAlike() what it leaves alone when levels are turned shows the same', () => {
  let left = 0;
  fc.assert(
    fc.property(boards, turned, fc.constantFrom(...followings), (board, values, followed) => {
      const before = sceneOf(board, followed);
      const after = sceneOf(withValues(netLoft, board, values), followed);
      for (const one of drawn) {
        if (!looksAlike(one, before, after)) continue;
        left += 1;
        for (const address of addressesIn(one)) {
          expect(shownAt(after, address)).toEqual(shownAt(before, address));
        }
      }
    }),
    RUNS,
  );
  expect(left).toBeGreaterThan(1000);
}, 60_000);

test('looksAlike() a fader that moves leaves all other strips alone', () => {
  const [followed] = followings;
  if (!followed) throw new Error('Expected something that is followed, found nothing.');
  const before = sceneOf({}, followed);
  const after = sceneOf({ 'desk.ch3.fader': -6 }, followed);
  const moved = desk.columns
    .filter((column) => !looksAlike(column, before, after))
    .map(({ owner }) => owner);
  expect(moved).toContain('desk.ch3');
  const others = moved.filter((owner) => owner.startsWith('desk.ch') && owner !== 'desk.ch3');
  expect(others).toEqual([]);
});

test('standsAlike() a switch, a cord or another source that is followed counts for all', () => {
  const [cello, capture] = followings;
  if (!cello || !capture) throw new Error('Expected two that are followed, found fewer.');
  const before = sceneOf({}, cello);
  const level = ['desk.ch1.fader'];
  expect(standsAlike(level, before, sceneOf({ 'desk.ch3.fader': -6 }, cello))).toBe(true);
  expect(standsAlike(level, before, sceneOf({ 'desk.ch1.fader': -6 }, cello))).toBe(false);
  expect(standsAlike(level, before, sceneOf({ 'desk.ch3.mute': true }, cello))).toBe(false);
  expect(standsAlike(level, before, sceneOf({}, capture))).toBe(false);
});
