import type { Setup } from '../../board/board.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Address } from '../../rig/address.ts';
import type { Simulation } from '../../solve/simulate.ts';
import { type HuntFault, solutionWith } from './fault.ts';
import { groupsOf, type Reading, readingAt } from './reading.ts';
import type { Test } from './strategy.ts';

/** Faults that fit a complaint and that no reading tells apart. */
export interface Suspect {
  /** At least one. */
  readonly faults: readonly HuntFault[];
}

/** All suspects of a complaint, and what a meter would show at each place if it was each of them. */
export interface LineUp {
  readonly suspects: readonly Suspect[];
  /** Where a meter can be held. */
  readonly places: readonly Address[];
  /** By place: what it shows as all was meant. */
  readonly meant: readonly Reading[];
  /** By place, then by suspect. */
  readonly readings: readonly (readonly Reading[])[];
  /** By place, then by suspect: readings that look alike have one number. */
  readonly tests: readonly Test[];
  /** By place: whether it shows what was meant, whoever it was. */
  readonly isOutside: readonly boolean[];
}

/** Places that stand for what a control does to others, where no meter can be held. */
const NO_METER = /\.(cut|solo)$|^desk\.control\./;

/** The places of a circuit where a meter can be held, in signal order. */
export const metered = ({ stagesAt }: Circuit): readonly Address[] =>
  [...stagesAt.keys()].filter((place) => !NO_METER.test(place));

/**
 * Lines up faults by what a meter would show of a source at every place; those that show the same everywhere are
 * one suspect.
 */
export function lineUp(
  setup: Setup,
  meantSolution: Simulation,
  faults: readonly HuntFault[],
  source: string,
): LineUp {
  const places = metered(meantSolution.circuit);
  const meant = places.map((place) => readingAt(meantSolution, source, place));
  const byFault = faults.map((fault) => {
    const found = solutionWith(setup, meantSolution, fault);
    return places.map((place) => readingAt(found, source, place));
  });
  const groups = places.map((_, place) =>
    // What was meant is grouped with the rest, so that “as meant” is an outcome like any other.
    groupsOf([...byFault.map((readings) => readings[place] ?? []), meant[place] ?? []]),
  );
  const suspects = new Map<string, { faults: HuntFault[]; first: number }>();
  faults.forEach((fault, index) => {
    const key = groups.map((group) => group[index]).join();
    const known = suspects.get(key);
    if (known) known.faults.push(fault);
    else suspects.set(key, { faults: [fault], first: index });
  });
  const firsts = [...suspects.values()].map(({ first }) => first);
  return {
    suspects: [...suspects.values()].map(({ faults: some }) => ({ faults: some })),
    places,
    meant,
    readings: places.map((_, place) => firsts.map((fault) => byFault[fault]?.[place] ?? [])),
    tests: groups.map((group) => firsts.map((fault) => group[fault] ?? -1)),
    isOutside: groups.map((group) => firsts.every((fault) => group[fault] === group.at(-1))),
  };
}
