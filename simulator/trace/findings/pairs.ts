import { feedOf } from '../../board/feeds.ts';
import { stagesOf } from '../../circuit/circuit.ts';
import { type Address, LEGS, type Leg, ownerOf, part, signalsOf } from '../../rig/address.ts';
import { jacks } from '../../rig/jacks.ts';
import type { Track } from '../../rig/schema.ts';
import { totalOf } from '../../solve/power.ts';
import { type Dbu, levelOfPower } from '../../units/level.ts';
import { passes } from '../path.ts';
import { paths } from '../paths.ts';
import { stopOf } from '../stops.ts';
import { mendStop } from './dead-ends.ts';
import type { Finding } from './finding.ts';
import { idOf, isLed, loudestAt, type Survey } from './survey.ts';

/** A source stands on the wrong side when it is louder there by more than this, in dB. */
const CLEARLY = 3;
/** A source stands in the middle when its sides differ by less than this, in dB. */
const HARDLY = 0.5;

/** Pairs of legs with one missing, with both the wrong way round, or with both in the middle. */
export function findPairs(survey: Survey): Finding[] {
  const cords = pairsOfJacks(survey).flatMap((place) => cordsOf(survey, place));
  return [...cords, ...lonelyOutputs(survey), ...sourcesAmiss(survey, cords)];
}

type CordFinding = Finding & { readonly pair: { readonly kind: 'cords'; readonly place: Address } };

const otherLeg = (leg: Leg): Leg => (leg === 'l' ? 'r' : 'l');

/** Places with a left and a right input jack. */
function pairsOfJacks({ setup }: Survey): Address[] {
  const inputs = new Set(jacks(setup.rig).inputs);
  return [...inputs].flatMap((jack) => {
    const place = jack.slice(0, -2);
    return jack === part(place, 'l') && inputs.has(part(place, 'r')) ? [place] : [];
  });
}

function cordsOf(survey: Survey, place: Address): CordFinding[] {
  const pair = { kind: 'cords', place } as const;
  const [left, right] = LEGS.map((leg) => feedOf(survey.setup, part(place, leg)));
  const rest = { severity: 'fault', pair, follow: loudestAt(survey, place) } as const;
  // A side that is only normalled was forgotten where the other one is plugged.
  if (left?.by !== right?.by) {
    const missing = left === undefined || right?.by === 'cord' ? 'l' : 'r';
    const mendAt = part(place, missing);
    return [{ code: 'leg-missing', missing, stop: undefined, mendAt, ...rest }];
  }
  const isSwapped =
    left?.output.endsWith('.r') &&
    right?.output.endsWith('.l') &&
    left.output.slice(0, -2) === right.output.slice(0, -2);
  return isSwapped ? [{ code: 'legs-swapped', mendAt: part(place, 'l'), ...rest }] : [];
}

/** Stereo outputs of which one leg is plugged into something mono and the other nowhere. */
function lonelyOutputs(survey: Survey): Finding[] {
  const { outputs } = jacks(survey.setup.rig);
  return outputs.flatMap((jack): Finding[] => {
    const leg = LEGS.find((one) => jack.endsWith(`.${one}`));
    if (leg === undefined || jack.includes('.insert.')) return [];
    const place = jack.slice(0, -2);
    const other = part(place, otherLeg(leg));
    const [goal, ...more] = goalsOf(survey, jack);
    const isMono = goal !== undefined && more.length === 0 && !/\.[lr]$/.test(goal);
    if (!isMono || goalsOf(survey, other).length > 0) return [];
    return [
      {
        code: 'leg-missing',
        severity: 'note',
        pair: { kind: 'cords', place },
        missing: otherLeg(leg),
        stop: undefined,
        mendAt: other,
        follow: loudestAt(survey, place),
      },
    ];
  });
}

/** Where a cord from a jack leads; not where its owner leads on inside. */
function goalsOf(survey: Survey, jack: Address): Address[] {
  const { circuit } = survey.solution;
  return stagesOf(circuit, jack).flatMap((stage) =>
    (survey.next[stage] ?? []).flatMap((to) => {
      const goal = idOf(survey, to);
      return ownerOf(goal) === ownerOf(jack) ? [] : [goal];
    }),
  );
}

function sourcesAmiss(survey: Survey, cords: readonly CordFinding[]): Finding[] {
  const stereo = survey.setup.rig.box.tracks.filter((track) => track.stereo);
  return stereo.flatMap((track) =>
    survey.outputs.flatMap((output) => sourceAmiss(survey, track, output, cords)),
  );
}

function sourceAmiss(
  survey: Survey,
  track: Track,
  output: Address,
  cords: readonly CordFinding[],
): Finding[] {
  const pair = { kind: 'source', source: track.id, output } as const;
  const told = { pair, follow: track.id } as const;
  const [left = [], right = []] = signalsOf(track).map((signal) =>
    dryLevels(survey, signal, output),
  );
  const [hasLeft, hasRight] = [isHeard(left), isHeard(right)];
  if (!hasLeft && !hasRight) return [];
  const cordsBefore = (code: Finding['code']) =>
    cords.filter((one) => one.code === code && isLed(survey, one.pair.place, output));
  const mendAt = panOf(survey, track, output);
  const isStereo = left.length === 2;
  if (hasLeft !== hasRight) {
    if (cordsBefore('leg-missing').length > 0) return [];
    const missing = hasLeft ? 'r' : 'l';
    const severity = isStereo ? 'fault' : 'note';
    const stop = stopOf(survey.solution, part(track.id, missing), output);
    const opener = mendStop(survey, stop);
    return [{ code: 'leg-missing', severity, missing, stop, ...told, mendAt: opener ?? mendAt }];
  }
  if (!isStereo) return [];
  const [leftTilt, rightTilt] = [tiltOf(left), tiltOf(right)];
  if (leftTilt > CLEARLY && rightTilt < -CLEARLY) {
    const ways = paths(survey.solution, track.id, output);
    const isTold = cordsBefore('legs-swapped').some(({ pair: { place } }) =>
      ways.some((way) => passes(way, place)),
    );
    return isTold ? [] : [{ code: 'legs-swapped', severity: 'fault', mendAt, ...told }];
  }
  const isMiddle = Math.abs(leftTilt) < HARDLY && Math.abs(rightTilt) < HARDLY;
  return isMiddle ? [{ code: 'legs-unpanned', severity: 'note', mendAt, ...told }] : [];
}

/** Levels of a signal at each leg of a place, without what reverbs made of it. */
function dryLevels(
  { solution: { circuit, rows, columns } }: Survey,
  signal: string,
  place: Address,
): (Dbu | undefined)[] {
  const index = circuit.signals.findIndex(({ id }) => id === signal);
  return stagesOf(circuit, place).map((stage) => {
    const row = rows[stage];
    if (!row) return undefined;
    const straight = columns.powersOf(row, (column) => !columns.isDecorrelated(column));
    return levelOfPower(totalOf(straight.get(index) ?? 0));
  });
}

const isHeard = (levels: readonly (Dbu | undefined)[]): boolean =>
  levels.some((level) => level !== undefined && level > -Infinity);

/** By how much a signal is louder on the right than on the left, in dB; not a number where it is unknown. */
const tiltOf = ([left, right]: readonly (Dbu | undefined)[]): number =>
  (right ?? Number.NaN) - (left ?? Number.NaN);

/** The last pan on the way of a source to an output; else where the track is assigned. */
function panOf(survey: Survey, track: Track, output: Address): Address {
  const ways = paths(survey.solution, track.id, output);
  const pans = ways.flatMap(({ steps }) =>
    steps.filter(({ place }) => place.startsWith('desk.') && place.endsWith('.pan')),
  );
  return pans.at(-1)?.place ?? part(`box.${track.id}`, 'to');
}
