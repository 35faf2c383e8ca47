import fc from 'fast-check';
import { expect, test } from 'vitest';
import { controls } from '../../simulator/index.ts';
import { controlSpots } from '../../src/drawing/control-spots.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { arbitraryDesk, RUNS } from './arbitrary-desk.ts';

/** Kinds that have no symbol of their own in the drawing of a desk: cords are drawn as what they feed. */
const drawnKinds = ['gain', 'switch', 'pan'];

test('controlSpots() has a place within the drawing for every level, switch and pan of a strip', () => {
  fc.assert(
    fc.property(arbitraryDesk, (rig) => {
      const drawing = layOut(rig);
      const spots = controlSpots(drawing);
      const strips = rig.desk.strips.map(({ id }) => `desk.${id}`);
      for (const { address, owner, kind } of controls(rig).values()) {
        if (!strips.includes(owner) || !drawnKinds.includes(kind)) continue;
        const spot = spots.get(address);
        expect(spot, address).toBeDefined();
        expect(spot?.x).toBeGreaterThan(0);
        expect(spot?.x).toBeLessThan(drawing.width);
        expect(spot?.y).toBeLessThan(drawing.height);
      }
    }),
    RUNS,
  );
});
