import fc from 'fast-check';
import { expect, test } from 'vitest';
import { simulate } from '../../../simulator/index.ts';
import { anyRing } from '../../../simulator/trace/any-ring.ts';
import { openWiresOf } from '../../../simulator/trace/open-wires.ts';
import { arbitrarySetup, LINEAR, RUNS } from '../arbitrary-setup.ts';

test('anyRing() finds a ring of open wires where the solution has a loop, and nowhere else', () => {
  let rings = 0;
  fc.assert(
    fc.property(arbitrarySetup({ ...LINEAR, loops: true }), (setup) => {
      const { circuit, loops } = simulate(setup);
      const ring = anyRing(openWiresOf(circuit));
      expect(ring !== undefined).toBe(loops.length > 0);
      // Against the signal: each stage is fed by the one after it, the last one by the first.
      ring?.forEach((stage, index) => {
        const from = ring[(index + 1) % ring.length];
        const wire = circuit.wires[stage]?.find((one) => one.from === from && one.ratio !== 0);
        expect(wire).toBeDefined();
      });
      if (ring) rings += 1;
    }),
    RUNS,
  );
  expect(rings).toBeGreaterThan(20);
});
