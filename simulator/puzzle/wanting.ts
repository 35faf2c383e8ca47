import type { Circuit } from '../circuit/circuit.ts';
import type { ClaimOf } from '../grade/check.ts';
import { anyRing } from '../trace/any-ring.ts';
import type { Backwards, Onwards, OpenWires } from '../trace/open-wires.ts';
import { spread } from '../trace/spread.ts';
import { stagesWithin } from '../trace/stages-within.ts';
import type { Field, Ground, Turn } from './turns.ts';
import { shortestWay, wayAstray } from './ways.ts';

/** A check that fails, in the circuit in which it does. */
interface Failure {
  readonly field: Field;
  readonly ground: Ground;
  readonly circuit: Circuit;
  readonly onwards: Onwards;
  readonly backwards: Backwards;
}

/**
 * Lists of turns of which every solution takes at least one, for a check that fails: what the search branches by.
 * A list is sound when nothing outside of it, whatever else is turned, makes the check hold.
 */
export function wantedTurns(field: Field, ground: Ground, wires: OpenWires): Turn[][] {
  const { circuit, onwards, backwards } = wires;
  const failure: Failure = { field, ground, circuit, onwards, backwards };
  const { claim, starts, goals } = ground;
  switch (claim.kind) {
    case 'passes':
      return orGeneral(failure, passings(failure, claim));
    case 'once':
      return orGeneral(
        failure,
        starts.flatMap((start) => arrivals(failure, start, goals)),
      );
    case 'dry-and-through':
      return orGeneral(failure, bothWays(failure, claim));
    case 'avoids':
      return orGeneral(failure, [cuts(field, wayPast(failure, stagesWithin(circuit, claim.past)))]);
    case 'no-loop': {
      // A loop ends only when one of its stages is cut off.
      const ring = anyRing(wires);
      return ring ? [cuts(field, ring)] : [];
    }
    case 'reaches': {
      const arriving = spread(goals, failure.backwards);
      if (starts.some((stage) => arriving[stage] === 1)) return general(failure);
      return orGeneral(failure, openings(failure, starts, goals));
    }
    default:
      return general(failure);
  }
}

/** Whether levels have a say in a check, not only which wires are open. */
export const isByLevel = ({ claim }: Ground): boolean =>
  claim.kind === 'reaches' || claim.kind === 'absent' || 'probe' in claim;

const orGeneral = (failure: Failure, lists: readonly Turn[][]): Turn[][] =>
  lists.length > 0 ? [...lists] : general(failure);

/**
 * What is heard changes only by a wire that leads on from what a signal reaches, towards where it is listened to;
 * and only by a wire into what arrives there, from what a signal could reach.
 */
function general({ field, ground, onwards, backwards }: Failure): Turn[][] {
  const reached = spread(ground.starts, onwards);
  const arriving = spread(ground.goals, backwards);
  const changing = (isStart: (stage: number) => boolean, isEnd: (stage: number) => boolean) =>
    field.movables
      .filter(({ wires }) => wires.some(([from, to]) => isStart(from) && isEnd(to)))
      .flatMap(({ turns }) => turns)
      .filter(({ isTuning }) => !isTuning || isByLevel(ground));
  return [
    changing(
      (from) => reached[from] === 1,
      (to) => ground.towards[to] === 1,
    ),
    changing(
      (from) => ground.within[from] === 1,
      (to) => arriving[to] === 1,
    ),
  ];
}

/** What never led from here to there does so only when a wire is opened that leads on, and one that leads in. */
function openings(
  { field, onwards, backwards }: Failure,
  starts: readonly number[],
  goals: readonly number[],
  isBarred?: (stage: number) => boolean,
): Turn[][] {
  const reached = spread(starts, onwards, isBarred);
  const arriving = spread(goals, backwards, isBarred);
  const within = spread(starts, field.onwards, isBarred);
  const towards = spread(goals, field.backwards, isBarred);
  const opening = (isFirst: (from: number, to: number) => boolean) =>
    field.turns.filter(({ wires }) => wires.some(([from, to]) => isFirst(from, to)));
  return [
    opening((from, to) => reached[from] === 1 && reached[to] !== 1 && towards[to] === 1),
    opening((from, to) => arriving[to] === 1 && arriving[from] !== 1 && within[from] === 1),
  ];
}

/** One of the stages of a way has to be cut off from it, for the way to end. */
const cuts = ({ movables }: Field, way: readonly number[]): Turn[] =>
  movables
    .filter(({ stages }) => stages.some((stage) => way.includes(stage)))
    .flatMap(({ turns }) => turns.filter(({ isFree }) => !isFree));

/** What has to be opened for a signal that does not arrive, and cut where it arrives by two ways. */
function arrivals(failure: Failure, start: number, goals: readonly number[]): Turn[][] {
  const { field, circuit, backwards } = failure;
  const isReverb = (stage: number) => circuit.stages[stage]?.law.kind === 'decorrelator';
  const first = shortestWay(backwards, [start], goals, isReverb);
  if (!first) return openings(failure, [start], goals, isReverb);
  const second = wayBesides(failure, start, goals, first, isReverb);
  return second ? [cuts(field, [...first, ...second])] : [];
}

/** Another way than a first one: one that goes without some place of it. */
function wayBesides(
  { circuit, backwards }: Failure,
  start: number,
  goals: readonly number[],
  first: readonly number[],
  isReverb: (stage: number) => boolean,
): number[] | undefined {
  for (const stage of first) {
    const place = circuit.stages[stage]?.place;
    const besides = shortestWay(
      backwards,
      [start],
      goals,
      (one) => isReverb(one) || (!goals.includes(one) && circuit.stages[one]?.place === place),
    );
    if (besides && !goals.includes(stage)) return besides;
  }
  return undefined;
}

/** A way astray has to be cut; a stop that is not on any way has to be led to, and to lead on. */
function passings(failure: Failure, { through }: ClaimOf<'passes'>): Turn[][] {
  const { field, circuit, backwards, ground } = failure;
  const { starts, goals } = ground;
  const stops = through.map((stop) => stagesWithin(circuit, stop));
  return [
    ...starts.flatMap((start) => {
      const astray = wayAstray(backwards, start, goals, stops);
      return astray ? [cuts(field, astray)] : [];
    }),
    ...starts.flatMap((start) => stops.flatMap((stop) => leadings(failure, start, stop, goals))),
  ];
}

/** What has to be opened for some way to pass a stop. */
function leadings(
  failure: Failure,
  start: number,
  stop: readonly number[],
  goals: readonly number[],
): Turn[][] {
  const { backwards } = failure;
  return [
    ...(shortestWay(backwards, [start], stop) ? [] : openings(failure, [start], stop)),
    ...(shortestWay(backwards, stop, goals) ? [] : openings(failure, stop, goals)),
  ];
}

function bothWays(failure: Failure, { through }: ClaimOf<'dry-and-through'>): Turn[][] {
  const { circuit, backwards, ground } = failure;
  const stop = stagesWithin(circuit, through);
  const isStop = (stage: number) => stop.includes(stage);
  return ground.starts.flatMap((start) => [
    ...leadings(failure, start, stop, ground.goals),
    ...(shortestWay(backwards, [start], ground.goals, isStop)
      ? []
      : openings(failure, [start], ground.goals, isStop)),
  ]);
}

/** The stages of a shortest open way past a stop. */
function wayPast({ backwards, ground }: Failure, stops: readonly number[]): number[] {
  const ways = stops.flatMap((stop) => {
    const first = shortestWay(backwards, ground.starts, [stop]);
    const second = shortestWay(backwards, [stop], ground.goals);
    return first && second ? [[...first, ...second]] : [];
  });
  return ways.reduce((one, other) => (other.length < one.length ? other : one), ways[0] ?? []);
}
