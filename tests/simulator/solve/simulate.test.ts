import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Board, type Setup, withValues } from '../../../simulator/board/board.ts';
import { movesBetween } from '../../../simulator/board/moves.ts';
import { parseRig } from '../../../simulator/board/setup-file.ts';
import { buildCircuit } from '../../../simulator/circuit/build-circuit.ts';
import { stagesOf } from '../../../simulator/circuit/circuit.ts';
import { levelAt, levelOf, placesReached } from '../../../simulator/solve/levels.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import type { Solution } from '../../../simulator/solve/solution.ts';
import { solve } from '../../../simulator/solve/solve.ts';
import { copiesOf } from '../../../simulator/trace/copies.ts';
import { arbitraryBoard, arbitraryRig, RUNS } from '../arbitrary-setup.ts';

/** What a solution says, without what it remembers for the next one. */
const said = ({ circuit, rows, columns, loops, compression }: Solution) => ({
  stages: circuit.stages,
  wires: circuit.wires,
  active: circuit.active,
  rows,
  totals: rows.map((row) => row && columns.totalsOf(row)),
  loops: new Set(loops),
  compression,
});

/** Two boards of a rig, and some boards on the way from one to the other. */
const journeys = (kinds: Parameters<typeof arbitraryRig>[0]) =>
  arbitraryRig(kinds).chain((rig) =>
    fc
      .record({ from: arbitraryBoard(rig, kinds), to: arbitraryBoard(rig, kinds) })
      .chain(({ from, to }) =>
        fc.shuffledSubarray(movesBetween(rig, from, to), { maxLength: 8 }).map((moves): Setup[] => {
          const steps = moves.map((_, last) => {
            const moved = moves.slice(0, last + 1).map(({ control, to: value }) => {
              return [control.address, value] as const;
            });
            return { rig, board: withValues(rig, from, Object.fromEntries(moved)) };
          });
          return [{ rig, board: from }, ...steps, { rig, board: to }];
        }),
      ),
  );

for (const [what, kinds] of [
  ['gains, compressors and reverbs', {}],
  ['loops', { loops: true }],
  ['filters and delays', { devices: ['equaliser', 'delay', 'reverb'], loops: true }],
] as const) {
  test(`simulate() says after any edits what it would say at once: ${what}`, () => {
    fc.assert(
      fc.property(journeys(kinds as Parameters<typeof journeys>[0]), (setups) => {
        for (const setup of setups) {
          expect(said(simulate(setup))).toEqual(said(solve(buildCircuit(setup))));
        }
      }),
      { ...RUNS, numRuns: what === 'filters and delays' ? 25 : 60 },
    );
  }, 120_000);
}

/** All that is read at a place: the level of everything, and of each track with how many copies of it come. */
function readAt(solution: Solution, place: string) {
  const { circuit } = solution;
  const tracks = [...new Set(circuit.signals.map(({ track }) => track))];
  return {
    level: levelAt(solution, place),
    tracks: tracks.map((track) => ({
      level: levelOf(solution, track, place),
      copies: stagesOf(circuit, place).map((stage) => copiesOf(solution, track)[stage]),
    })),
  };
}

test('placesReached() what stands at any other place of two solutions is read as before', () => {
  let held = 0;
  fc.assert(
    fc.property(journeys({}), (setups) => {
      const solutions = setups.map((setup) => simulate(setup));
      solutions.slice(1).forEach((after, index) => {
        const before = solutions[index] ?? after;
        const reached = placesReached(before, after);
        for (const place of after.circuit.stagesAt.keys()) {
          if (reached?.has(place) !== false) continue;
          held += 1;
          expect(readAt(after, place)).toEqual(readAt(before, place));
        }
      });
    }),
    { ...RUNS, numRuns: 60 },
  );
  // It would hold nothing against anything if it never held.
  expect(held).toBeGreaterThan(1000);
}, 120_000);

test('simulate() moves the left of a stereo compressor when only the right of it got louder', () => {
  const rig = parseRig(
    'linked.yaml',
    `
id: linked
label: A stereo compressor behind two outputs
box: { tracks: [{ id: one, label: One, levelDbfs: -20 }, { id: two, label: Two, levelDbfs: -20 }] }
converter: { outputs: 2, fullScaleDbu: 18 }
desk:
  stripTypes: [{ id: mono, stages: [mute, fader, pan], taps: { pre: mute, post: fader } }]
  strips: [{ id: ch1, mark: '1', label: Unused, type: mono }]
rack: [{ id: comp, label: Compressor, kind: compressor, inputs: 2, outputs: 2 }]
outputs: [{ id: end, label: End, stereo: true }]
defaults:
  box.one.to: out1
  box.two.to: out2
  rack.comp.in.l: converter.out1
  rack.comp.in.r: converter.out2
  rack.comp.threshold: -30
  out.end.l: rack.comp.out.l
  out.end.r: rack.comp.out.r
`,
  );
  const left = (board: Board) => levelOf(simulate({ rig, board }), 'one', 'out.end') ?? Number.NaN;
  expect(left({ 'box.two.fader': 6 })).toBeLessThan(left({}) - 1);
});

test('simulate() takes over what a fader does not reach, and computes the rest', () => {
  const [rig] = fc.sample(
    arbitraryRig().filter(({ desk }) => desk.strips.length > 2),
    { seed: 20261126, numRuns: 1 },
  );
  if (!rig) throw new Error('Expected a rig.');
  const before = simulate({ rig, board: {} });
  const after = simulate({ rig, board: { 'desk.ch1.fader': -7 } });
  const rowsAt = (solution: Solution, place: string) =>
    stagesOf(solution.circuit, place).map((stage) => solution.rows[stage]);
  for (const place of ['desk.ch1.in', 'desk.ch2.fader', 'box.track1.fader']) {
    rowsAt(after, place).forEach((row, leg) => {
      expect(row).toBe(rowsAt(before, place)[leg]);
    });
  }
  expect(rowsAt(after, 'desk.ch1.fader')).not.toEqual(rowsAt(before, 'desk.ch1.fader'));
});
