import { isOn, pickAt, type Setup } from '../../board/board.ts';
import { stagesOf } from '../../circuit/circuit.ts';
import {
  type Address,
  boxOwner,
  deskOwner,
  type Owner,
  outputPlace,
  ownerOf,
  part,
} from '../../rig/address.ts';
import { pluginAt } from '../../rig/box-channels.ts';
import { levelAt, levelOf } from '../../solve/levels.ts';
import type { Solution } from '../../solve/solution.ts';
import { type Onwards, openWiresOf } from '../open-wires.ts';
import { type StageSet, spread } from '../spread.ts';

/** What the search for findings goes by. */
export interface Survey {
  readonly setup: Setup;
  readonly solution: Solution;
  /** The places where sound ends up: the outputs of the room, and capture tracks that an input was chosen for. */
  readonly outputs: readonly Address[];
  /** Stages from which an open way leads to an output, with the outputs. */
  readonly heard: StageSet;
  /** Where open wires lead, by stage. */
  readonly next: Onwards;
}

export function surveyOf(setup: Setup, solution: Solution): Survey {
  const { circuit } = solution;
  const outputs = [
    ...setup.rig.outputs.map(({ id }) => outputPlace(id)),
    ...setup.rig.box.captures
      .map(({ id }) => part(boxOwner(id), 'in'))
      .filter((place) => pickAt(setup, place) !== undefined),
  ];
  const { onwards, backwards } = openWiresOf(circuit);
  const goals = outputs.flatMap((output) => stagesOf(circuit, output));
  return { setup, solution, outputs, next: onwards, heard: spread(goals, backwards) };
}

/** The control that opens a closed place: its own; of a strip that is cut, the solo that cuts it. */
export function openerOf({ setup }: Survey, place: Address): Address {
  if (place !== part(ownerOf(place), 'cut')) return place;
  const solos = setup.rig.desk.strips.map(({ id }) => part(deskOwner(id), 'solo'));
  return solos.find((solo) => isOn(setup, solo)) ?? place;
}

/** Whether anything sounds at a place; also where a loop leaves no level. */
export const carries = ({ solution }: Survey, place: Address): boolean =>
  levelAt(solution, place) !== -Infinity;

/** The track that is loudest at a place; nothing in silence. */
export function loudestAt({ setup, solution }: Survey, place: Address): string | undefined {
  let loudest: { id: string; level: number } | undefined;
  for (const { id } of setup.rig.box.tracks) {
    const level = levelOf(solution, id, place) ?? -Infinity;
    if (level > (loudest?.level ?? -Infinity)) loudest = { id, level };
  }
  return loudest?.id;
}

/** Stages that open wires lead to from some others, with those. */
export function reachedFrom({ next }: Survey, starts: Iterable<number>): Set<number> {
  const reached = new Set(starts);
  const waiting = [...reached];
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    for (const to of next[stage] ?? []) {
      if (reached.has(to)) continue;
      reached.add(to);
      waiting.push(to);
    }
  }
  return reached;
}

/** Whether an open way leads from a place to another one. */
export function isLed(survey: Survey, from: Address, to: Address): boolean {
  const { circuit } = survey.solution;
  const reached = reachedFrom(survey, stagesOf(circuit, from));
  return stagesOf(circuit, to).some((stage) => reached.has(stage));
}

export const stagesAt = ({ solution }: Survey, place: Address): readonly number[] =>
  solution.circuit.stagesAt.get(place) ?? [];

export const placeOf = ({ solution }: Survey, stage: number): Address =>
  solution.circuit.stages[stage]?.place ?? '';

export const idOf = ({ solution }: Survey, stage: number): Address =>
  solution.circuit.stages[stage]?.id ?? '';

/** The device or plug-in that a place belongs to: `rack.plate`, `box.cello.comp`; nothing where it is of neither. */
export function deviceAt({ setup }: Survey, place: Address): Address | undefined {
  const owner = ownerOf(place);
  return owner.startsWith('rack.') ? owner : pluginAt(setup.rig, place)?.address;
}

/** Owners of what feeds a stage by open wires, each once. */
export const feedersOf = (survey: Survey, stage: number): Owner[] => [
  ...new Set(
    (survey.solution.circuit.wires[stage] ?? []).flatMap(({ from, ratio }) =>
      ratio === 0 ? [] : [ownerOf(placeOf(survey, from))],
    ),
  ),
];

/** The track of a box owner; nothing where it is a bus or the main mix. */
export const trackOf = ({ setup }: Survey, owner: Owner): string | undefined =>
  setup.rig.box.tracks.find(({ id }) => owner === `box.${id}`)?.id;
