import {
  type Address,
  nearestNames,
  outputPlace,
  type Rig,
  type Solution,
} from '../../simulator/index.ts';
import { ArgumentError } from './argument-error.ts';

/** A source as a command names it: a track, or one signal of it. @throws ArgumentError for a stranger. */
export function sourceNamed(where: string, { circuit }: Solution, name: string): string {
  const known = new Set(circuit.signals.flatMap(({ id, track }) => [track, id]));
  if (known.has(name)) return name;
  throw stranger(where, 'a source of the rig', name, known);
}

/** The place that a command names: an output by its id, or any place or stage. @throws ArgumentError */
export function placeNamed(where: string, rig: Rig, { circuit }: Solution, name: string): Address {
  const outputs = rig.outputs.map(({ id }) => id);
  if (outputs.includes(name)) return outputPlace(name);
  const places = new Set([...circuit.stagesAt.keys(), ...circuit.stages.map(({ id }) => id)]);
  if (places.has(name)) return name;
  throw stranger(where, 'an output or a place of the rig', name, [...outputs, ...places]);
}

const stranger = (where: string, expected: string, name: string, known: Iterable<string>) =>
  new ArgumentError(
    where,
    expected,
    `"${name}"`,
    `Nearest: ${nearestNames(name, known).join(', ')}.`,
  );
