import {
  boardOf,
  CONTROL_ROOM,
  controls,
  DESK_MAIN,
  deskOwner,
  type FileBoard,
  levelOf,
  outputPlace,
  type Rig,
  simulate,
} from '../../simulator/index.ts';
import { ARTICLE_RIG, LESSON_RIG } from '../../src/components/lesson/course.ts';
import { type Reading, readingText } from '../../src/components/lesson/reading.ts';
import { type ToldFinding, toldFindingText } from '../../src/components/lesson/told-finding.ts';
import { type Way, wayText } from '../../src/components/lesson/way.ts';
import type { Component } from './lesson.ts';
import { course, glossary, sources } from './the-course.ts';

/** What a lesson or an article may hold, with the attributes that each must and may have. */
const ATTRIBUTES: Readonly<Record<string, { must: readonly string[]; may?: readonly string[] }>> = {
  Term: { must: ['id'] },
  Task: { must: ['id'] },
  Quiz: { must: ['id'] },
  WalkThrough: { must: ['id'] },
  Caution: { must: [] },
  Picture: { must: ['caption', 'follow'], may: ['show', 'board', 'rig'] },
  Level: { must: ['source', 'output'], may: ['board', 'rig'] },
  Reading: { must: ['of', 'at'], may: ['source', 'board', 'from', 'hz', 'rig'] },
  Way: { must: ['source', 'output'], may: ['through', 'board', 'rig'] },
  Finding: { must: ['code'], may: ['board', 'rig'] },
  Source: { must: ['id'] },
  Formula: { must: [] },
  Grid: { must: ['count'] },
  Agreement: { must: [] },
};

/** What is wrong with a component of a lesson. */
export function faultsOf(component: Component): string[] {
  const faults = [...attributeFaults(component)];
  if (faults.length === 0) faults.push(...idFaults(component), ...boardFaults(component));
  return faults.map((fault) => `line ${component.line}, <${component.name}>: ${fault}`);
}

function attributeFaults({ name, props }: Component): string[] {
  const known = ATTRIBUTES[name];
  if (!known) return ['no component of that name'];
  const names = [...known.must, ...(known.may ?? [])];
  return [
    ...known.must.filter((one) => !(one in props)).map((one) => `${one} is missing`),
    ...Object.keys(props)
      .filter((one) => !names.includes(one))
      .map((one) => `it takes no ${one}`),
  ];
}

function idFaults({ name, props: { id } }: Component): string[] {
  const ids: Readonly<Record<string, readonly string[]>> = {
    Term: glossary.map((word) => word.id),
    Task: [...course.scenarios.keys()],
    Quiz: [...course.quizzes.keys()],
    WalkThrough: [...course.walkThroughs.keys()],
    Source: sources.map((source) => source.id),
  };
  const known = ids[name];
  return known && !known.includes(String(id)) ? [`there is no ${id}`] : [];
}

/** Components that are words made from a setup; they throw where they have nothing to tell. */
const TOLD: Readonly<Record<string, (rig: Rig, props: unknown) => string>> = {
  Reading: (rig, props) => readingText(rig, props as Reading),
  Way: (rig, props) => wayText(rig, props as Way),
  Finding: (rig, props) => toldFindingText(rig, props as ToldFinding),
};

function boardFaults({ name, props }: Component): string[] {
  const tell = TOLD[name];
  if (!tell && !['Picture', 'Level'].includes(name)) return [];
  const { rig: rigId = name === 'Reading' ? ARTICLE_RIG : LESSON_RIG, board = {} } = props;
  const rig = course.rigs.get(String(rigId));
  if (!rig) return [`there is no rig ${rigId}`];
  try {
    if (tell) {
      tell(rig, props);
      return [];
    }
    const setup = { rig, board: boardOf('its board', rig, board as FileBoard) };
    const source = String(props[name === 'Picture' ? 'follow' : 'source']);
    const output = String(props['output'] ?? rig.outputs[0]?.id);
    const isOutput = rig.outputs.some(({ id }) => id === output);
    const level = levelOf(simulate(setup), source, isOutput ? outputPlace(output) : output);
    return [
      ...(level === undefined ? ['an unstable loop leaves no level'] : []),
      ...hiddenFaults(rig, props['show'], Object.keys(board as FileBoard)),
    ];
  } catch (error) {
    return [(error as Error).message];
  }
}

/** Owners to be shown that are not on the desk, and controls of the desk that are moved where nobody sees it. */
function hiddenFaults(rig: Rig, show: unknown, moved: readonly string[]): string[] {
  if (show === undefined) return [];
  if (!Array.isArray(show)) return ['show is no list'];
  const { strips, auxes, subgroups } = rig.desk;
  const drawn = [...strips, ...auxes, ...subgroups].map(({ id }) => deskOwner(id));
  const owners = new Set([...drawn, DESK_MAIN, ...(rig.desk.controlRoom ? [CONTROL_ROOM] : [])]);
  const unseen = moved.filter((address) => {
    const owner = controls(rig).get(address)?.owner ?? '';
    return owners.has(owner) && !show.includes(owner);
  });
  return [
    ...show.filter((owner) => !owners.has(owner)).map((owner) => `it cannot show ${owner}`),
    ...unseen.map((address) => `it moves ${address}, and does not show it`),
  ];
}
