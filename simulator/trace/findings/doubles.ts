import { type Signal, stagesOf } from '../../circuit/circuit.ts';
import { type Address, rackOwner } from '../../rig/address.ts';
import { pluginAt } from '../../rig/box-channels.ts';
import { controls } from '../../rig/controls.ts';
import { totalOf } from '../../solve/power.ts';
import type { Hz, Seconds } from '../../units/frequency.ts';
import { type Db, levelOfPower } from '../../units/level.ts';
import { partingOf } from '../parting.ts';
import { type Path, placesOf } from '../path.ts';
import { paths } from '../paths.ts';
import { type Doubling, ECHO_AFTER, type Finding, HIGHEST_NULL, type Severity } from './finding.ts';
import { deviceAt, type Survey } from './survey.ts';

/**
 * Signals that arrive at an output by two ways, neither of them through a reverb: in step, with one of them
 * inverted, or with one of them late. Each way is held against the loudest one that shares a side of the
 * output with it. An echo, later than {@link ECHO_AFTER}, is none of these.
 */
export function findDoubles(survey: Survey): Finding[] {
  const { circuit } = survey.solution;
  const found = survey.outputs.flatMap((output) =>
    circuit.signals.flatMap((signal) => doublesOf(survey, signal, output)),
  );
  // Both sides of a stereo source that go the same two ways are one thing to point at.
  const seen = new Set<string>();
  return found.filter(({ code, follow, output, turns }) => {
    const key = [code, follow, output, ...turns].join(' ');
    return !seen.has(key) && Boolean(seen.add(key));
  });
}

type DoubleFinding = Extract<Finding, Doubling>;

function doublesOf(survey: Survey, signal: Signal, output: Address): DoubleFinding[] {
  const straight = paths(survey.solution, signal.id, output).filter((path) => !path.decorrelated);
  return straight.flatMap((other, index) => {
    const louder = straight.slice(0, index).find((path) => shareALeg(path, other));
    return louder ? kindsOf(survey, signal, output, louder, other) : [];
  });
}

function kindsOf(
  survey: Survey,
  signal: Signal,
  output: Address,
  louder: Path,
  softer: Path,
): DoubleFinding[] {
  const late = Math.abs(louder.delay - softer.delay) as Seconds;
  if (late > ECHO_AFTER) return [];
  const parting = partingOf(louder, softer);
  const inverted = louder.inverted !== softer.inverted;
  // In opposite polarity a whole turn apart cancels, else half a turn.
  const firstNull = (1 / ((inverted ? 1 : 2) * late)) as Hz;
  const isLate = 1 / (2 * late) <= HIGHEST_NULL;
  const doubling: Doubling = {
    signal: signal.id,
    output,
    paths: [louder, softer],
    ...parting,
    closers: [
      closerOn(survey, louder, parting.turns[0]),
      closerOn(survey, softer, parting.turns[1]),
    ],
    gain: gainTogether(survey, signal, output, louder),
  };
  const [closesLouder, closesSofter] = doubling.closers;
  const rest = { mendAt: closesSofter, follow: signal.track };
  const closesInverted = louder.inverted ? closesLouder : closesSofter;
  const closesLate = louder.delay > softer.delay ? closesLouder : closesSofter;
  const isTrick = devicesOf(survey, louder).join() !== devicesOf(survey, softer).join();
  const unlessMeant: Severity = isTrick ? 'note' : 'fault';
  const isDelayed = [louder, softer].some((path) => delaysOf(survey, path).length > 0);
  return [
    ...(inverted
      ? [
          {
            code: 'inverted-path',
            severity: 'fault',
            ...doubling,
            ...rest,
            mendAt: closesInverted,
          } as const,
        ]
      : []),
    ...(isLate
      ? [
          {
            code: 'late-path',
            severity: isDelayed ? 'note' : 'fault',
            late,
            firstNull,
            ...doubling,
            ...rest,
            mendAt: closesLate,
          } as const,
        ]
      : []),
    ...(inverted || isLate
      ? []
      : [{ code: 'arrives-twice', severity: unlessMeant, ...doubling, ...rest } as const]),
  ];
}

function shareALeg(one: Path, other: Path): boolean {
  const legs = one.steps.at(-1)?.legs ?? [];
  const others = other.steps.at(-1)?.legs ?? [];
  return legs.some(({ leg }) => others.some((mate) => mate.leg === leg));
}

/** What arrives of a signal past reverbs, against one way alone. */
function gainTogether(
  { solution: { circuit, rows, columns } }: Survey,
  signal: Signal,
  output: Address,
  alone: Path,
): Db | undefined {
  const index = circuit.signals.indexOf(signal);
  let power = 0;
  for (const stage of stagesOf(circuit, output)) {
    const row = rows[stage];
    if (!row) return undefined;
    const straight = columns.powersOf(row, (column) => !columns.isDecorrelated(column));
    power += totalOf(straight.get(index) ?? 0);
  }
  return (levelOfPower(power) - alone.level) as Db;
}

/** The devices and plug-ins that a way passes, each once. */
const devicesOf = (survey: Survey, path: Path): string[] => [
  ...new Set(placesOf(path).flatMap((place) => deviceAt(survey, place) ?? [])),
];

const delaysOf = (survey: Survey, path: Path): string[] => {
  const { rig } = survey.setup;
  return devicesOf(survey, path).filter((device) => {
    const kind =
      pluginAt(rig, device)?.plugin.kind ??
      rig.rack.find(({ id }) => device === rackOwner(id))?.kind;
    return kind === 'delay';
  });
};

/** Where a way can be closed from a place on: by a gain, a switch or a cord. */
function closerOn({ setup }: Survey, path: Path, from: Address): Address {
  const known = controls(setup.rig);
  const places = placesOf(path);
  const closes = (place: Address) => {
    const kind = known.get(place)?.kind;
    return (
      kind === 'gain' || kind === 'cord' || (kind === 'switch' && !place.endsWith('.polarity'))
    );
  };
  return places.slice(places.indexOf(from)).find(closes) ?? from;
}
