import { DEFAULT_BOARD } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { PlaceInFile } from '../file/place.ts';
import { ownerOf } from '../rig/address.ts';
import type { Contradiction } from '../rig/contradiction.ts';
import { controls } from '../rig/controls.ts';
import { onceARig } from '../rig/once-a-rig.ts';
import type { Rig } from '../rig/schema.ts';
import type { Claim, Probe } from './check.ts';
import { placeNamed } from './hearing.ts';

/** The names that claims about a rig may use. */
interface Names {
  readonly sources: ReadonlySet<string>;
  readonly places: ReadonlySet<string>;
  readonly owners: ReadonlySet<string>;
  /** Places that add noise and clip. */
  readonly active: ReadonlySet<string>;
}

/** All names of a rig; the same rig gives the same names. */
const namesIn = onceARig((rig): Names => {
  const { stages, stagesAt, signals, active } = buildCircuit({ rig, board: DEFAULT_BOARD });
  const places = new Set([
    ...stagesAt.keys(),
    ...stages.map(({ id }) => id),
    ...rig.outputs.map(({ id }) => id),
  ]);
  const owners = new Set([...stagesAt.keys()].map(ownerOf));
  const sources = new Set(signals.flatMap(({ id, track }) => [id, track]));
  const activePlaces = [...active.keys()].flatMap((index) => {
    const stage = stages[index];
    return stage ? [stage.id, stage.place] : [];
  });
  return { sources, places, owners, active: new Set(activePlaces) };
});

/** Whether a rig has a source of this name: a track, or one signal. */
export const hasSource = (rig: Rig, name: string): boolean => namesIn(rig).sources.has(name);

/** Whether a rig has an output or a place of this name. */
export const hasPlace = (rig: Rig, name: string): boolean => namesIn(rig).places.has(name);

/** Whether a rig has something of this name that a way can pass: a place, or an owner of places. */
export const hasStop = (rig: Rig, name: string): boolean =>
  hasPlace(rig, name) || namesIn(rig).owners.has(name);

/** Every name in a claim that the rig does not have, at its place relative to the claim. */
export function strangersIn(claim: Claim, rig: Rig): Contradiction[] {
  const { sources, places, active } = namesIn(rig);
  const found: Contradiction[] = [];
  const expect = (isKnown: boolean, at: PlaceInFile, expected: string, name: string) => {
    if (!isKnown) found.push({ at, expected, found: `"${name}"`, hint: 'Check its spelling.' });
  };
  const isStop = (name: string) => hasStop(rig, name);

  if ('source' in claim) {
    expect(sources.has(claim.source), ['source'], 'a source of the rig', claim.source);
    expect(places.has(claim.output), ['output'], 'an output or a place of the rig', claim.output);
  }
  if (claim.kind === 'headroom' && claim.at !== undefined) {
    const isActive = active.has(placeNamed(rig, claim.at));
    expect(isActive, ['at'], 'an output or a place of the rig with an active stage', claim.at);
  }
  if (claim.kind === 'passes') {
    claim.through.forEach((name, index) => {
      expect(isStop(name), ['through', index], 'a place or an owner of the rig', name);
    });
  }
  if (claim.kind === 'avoids')
    expect(isStop(claim.past), ['past'], 'a place of the rig', claim.past);
  if (claim.kind === 'dry-and-through') {
    expect(isStop(claim.through), ['through'], 'a place or an owner of the rig', claim.through);
  }
  if (claim.kind === 'reaches' && claim.minDbu > claim.maxDbu) {
    found.push({
      at: ['maxDbu'],
      expected: `at least minDbu, ${claim.minDbu}`,
      found: String(claim.maxDbu),
    });
  }
  if ('probe' in claim) {
    found.push(...strangersInProbe(claim.probe, rig, sources));
    if (Math.abs(claim.probe.byDb) <= claim.toleranceDb) {
      found.push({
        at: ['probe', 'byDb'],
        expected: `a move of more than the tolerance, ${claim.toleranceDb} dB`,
        found: String(claim.probe.byDb),
      });
    }
  }
  return found;
}

function strangersInProbe(probe: Probe, rig: Rig, sources: ReadonlySet<string>): Contradiction[] {
  if ('of' in probe) {
    if (sources.has(probe.of)) return [];
    return [{ at: ['probe', 'of'], expected: 'a source of the rig', found: `"${probe.of}"` }];
  }
  const control = controls(rig).get(probe.control);
  if (control?.kind === 'gain') return [];
  return [
    {
      at: ['probe', 'control'],
      expected: 'the address of a gain',
      found: control ? `a ${control.kind}` : `"${probe.control}"`,
    },
  ];
}
