import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DESK_MAIN, deskOwner } from '../../simulator/index.ts';
import { deskParts, openOwners } from '../../src/drawing/desk-parts.ts';
import { layOut } from '../../src/drawing/lay-out.ts';
import { arbitraryDesk, RUNS } from './arbitrary-desk.ts';

test('deskParts() every strip, aux and subgroup lies in one part, and no part is empty', () => {
  fc.assert(
    fc.property(arbitraryDesk, (rig) => {
      const parts = deskParts(rig);
      const inParts = parts.flatMap(({ owners }) => owners);
      const { strips, auxes, subgroups } = rig.desk;
      const all = [...strips, ...auxes, ...subgroups].map(({ id }) => deskOwner(id));
      expect(inParts.filter((owner) => owner !== 'desk.control').toSorted()).toEqual(
        all.toSorted(),
      );
      for (const { owners } of parts) expect(owners.length).toBeGreaterThan(0);
      expect(new Set(parts.map(({ name }) => name)).size).toBe(parts.length);
    }),
    RUNS,
  );
});

test('openOwners() what is folded is not drawn, the main bus always is', () => {
  fc.assert(
    fc.property(arbitraryDesk, fc.nat(), (rig, picked) => {
      const parts = deskParts(rig);
      const folded = parts.filter((_, index) => ((picked >> index) & 1) === 1);
      const open = openOwners(
        rig,
        folded.map(({ name }) => name),
      );
      const drawn = layOut(rig, open).columns.map(({ owner }) => owner);
      expect(drawn).toContain(DESK_MAIN);
      const hidden = folded.flatMap(({ owners }) => owners);
      expect(drawn.filter((owner) => hidden.includes(owner))).toEqual([]);
    }),
    RUNS,
  );
});
