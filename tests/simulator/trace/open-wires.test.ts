import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Circuit } from '../../../simulator/circuit/circuit.ts';
import { simulate } from '../../../simulator/index.ts';
import { openWiresOf } from '../../../simulator/trace/open-wires.ts';
import { arbitrarySetup, RUNS } from '../arbitrary-setup.ts';

/** All open wires, one by one, in order. */
const listed = ({ wires }: Circuit): string[] =>
  wires
    .flatMap((into, to) => into.map(({ from, ratio }) => ({ from, to, ratio })))
    .filter(({ ratio }) => ratio !== 0)
    .map(({ from, to }) => `${from} > ${to}`)
    .sort();

test('openWiresOf() sorts the open wires of a circuit both ways, whichever was sorted before', () => {
  fc.assert(
    fc.property(arbitrarySetup(), fc.nat(), (setup, pick) => {
      const first = simulate(setup).circuit;
      const faders = setup.rig.desk.strips.map(({ id }) => `desk.${id}.fader`);
      const closed = faders[pick % faders.length] ?? '';
      const board = { ...setup.board, [closed]: -Infinity };
      const second = simulate({ rig: setup.rig, board }).circuit;
      for (const circuit of [first, second, first]) {
        const { backwards, onwards } = openWiresOf(circuit);
        const into = backwards.flatMap((list, to) => list.map((from) => `${from} > ${to}`));
        const out = onwards.flatMap((list, from) => list.map((to) => `${from} > ${to}`));
        expect(into.sort()).toEqual(listed(circuit));
        expect(out.sort()).toEqual(listed(circuit));
      }
    }),
    RUNS,
  );
});
