import { cordsAndNormals } from './cords.ts';
import type { SetupData } from './setup-file.ts';

const hasRow = (kind: string) => (setup: SetupData) =>
  setup.rig.bay?.rows.some((row) => row.kind === kind && row.points.length > 0) ?? false;

const FEATURES: Readonly<Record<string, (setup: SetupData) => boolean>> = {
  'a full-normal row': hasRow('full'),
  'a half-normal row': hasRow('half'),
  'an open row': hasRow('open'),
  'a mult': ({ rig }) => (rig.bay?.mults.length ?? 0) > 0,
  'an output loaded by several inputs': (setup) => {
    const points = (setup.rig.bay?.rows ?? []).flatMap((row) => row.points);
    const inputs = new Set([
      ...Object.keys(setup.rig.defaults),
      ...Object.keys(setup.board),
      ...points.flatMap(({ bottom }) => bottom ?? []),
    ]);
    return cordsAndNormals(setup, [...inputs]).some(({ ratio }) => ratio < 1);
  },
};

export const BAY_FEATURES = Object.keys(FEATURES);

/** The names of what is at work on the patchbay of a setup. */
export const bayFeaturesOf = (setup: SetupData): string[] =>
  Object.entries(FEATURES).flatMap(([name, isAtWork]) => (isAtWork(setup) ? [name] : []));
