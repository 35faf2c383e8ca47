import { stagesOf } from '../../circuit/circuit.ts';
import { type Address, boxOwner, ownerOf, part } from '../../rig/address.ts';
import { controls } from '../../rig/controls.ts';
import { type Stop, stopAfter, stopOf } from '../stops.ts';
import type { Finding, Severity } from './finding.ts';
import { findInserts } from './inserts.ts';
import { type OpenSends, openSends } from './open-sends.ts';
import {
  carries,
  feedersOf,
  idOf,
  isLed,
  loudestAt,
  openerOf,
  reachedFrom,
  type Survey,
  stagesAt,
  trackOf,
} from './survey.ts';

/** Converter outputs that carry something and that nothing is plugged into. */
export function findUnpatchedLines(survey: Survey): Finding[] {
  return unpatchedLines(survey).map((stage) => {
    const line = idOf(survey, stage);
    const owners = feedersOf(survey, stage);
    const [owner = line] = owners;
    const follow = trackOf(survey, owner) ?? loudestAt(survey, line);
    const mendAt = part(owner, 'to');
    return { code: 'line-unpatched', severity: 'fault', line, owners, mendAt, follow };
  });
}

const unpatchedLines = (survey: Survey): number[] =>
  survey.solution.circuit.stages.flatMap(({ id }, stage) =>
    id.startsWith('converter.out') && (survey.next[stage] ?? []).length === 0 && carries(survey, id)
      ? [stage]
      : [],
  );

/** Outputs of the room that nothing is plugged into, on neither side. */
export function findUnfedOutputs(survey: Survey): Finding[] {
  const { circuit } = survey.solution;
  return survey.outputs.flatMap((output): Finding[] => {
    const stages = stagesOf(circuit, output);
    if (stages.some((stage) => (circuit.wires[stage] ?? []).length > 0)) return [];
    const mendAt = idOf(survey, stages[0] ?? -1);
    return [{ code: 'output-unfed', severity: 'note', output, mendAt, follow: undefined }];
  });
}

/**
 * Tracks that no open way leads from to an output. One that ends at a line that is not patched, or at an
 * insert that comes back from elsewhere, is told by that.
 */
export function findTracksNowhere(survey: Survey): Finding[] {
  const toldAt = endsTold(survey);
  return survey.setup.rig.box.tracks.flatMap(({ id }): Finding[] => {
    const stages = stagesAt(survey, part(boxOwner(id), 'source'));
    if (!isLost(survey, stages, toldAt)) return [];
    const nearest = nearestStop(survey, (output) => stopOf(survey.solution, id, output));
    if (!nearest) return [];
    const mendAt = mendStop(survey, nearest.stop) ?? part(boxOwner(id), 'to');
    const severity = severityOf(survey, nearest.stop);
    return [{ code: 'goes-nowhere', severity, source: id, ...nearest, mendAt, follow: id }];
  });
}

/**
 * Open sends into a bus, an aux or one in the box, from which no open way leads to an output. Of several buses in
 * a row only the last is told, since the others end with it.
 */
export function findSendsNowhere(survey: Survey): Finding[] {
  const toldAt = endsTold(survey);
  const sumOf = ({ bus }: OpenSends) => part(bus, 'sum');
  const lost = openSends(survey).filter((open) =>
    isLost(survey, stagesAt(survey, sumOf(open)), toldAt),
  );
  const leads = (one: OpenSends, other: OpenSends) => isLed(survey, sumOf(one), sumOf(other));
  const last = lost.filter((one) => !lost.some((other) => leads(one, other) && !leads(other, one)));
  return last.flatMap((open): Finding[] => {
    const { bus, sends } = open;
    const nearest = nearestStop(survey, (output) =>
      stopAfter(survey.solution, sumOf(open), output),
    );
    const [first] = sends;
    if (!nearest || first === undefined) return [];
    return [
      {
        code: 'send-nowhere',
        severity: severityOf(survey, nearest.stop),
        bus,
        sends,
        ...nearest,
        mendAt: mendStop(survey, nearest.stop) ?? part(bus, bus.startsWith('box.') ? 'to' : 'out'),
        follow: loudestAt(survey, first),
      },
    ];
  });
}

/** Stages where something ends that another finding tells: lines that are not patched, sends of cut inserts. */
const endsTold = (survey: Survey): number[] => [
  ...unpatchedLines(survey),
  ...findInserts(survey).flatMap((one) =>
    one.code === 'insert-not-sent' ? stagesAt(survey, part(one.owner, 'insert.send')) : [],
  ),
];

/** Whether no open way leads from some stages to an output, nor to an end that is told. */
function isLost(survey: Survey, stages: readonly number[], toldAt: readonly number[]): boolean {
  if (stages.some((stage) => survey.heard[stage] === 1)) return false;
  const reached = reachedFrom(survey, stages);
  return !toldAt.some((stage) => reached.has(stage));
}

/** The output that the fewest closed places bar; else the first one. */
function nearestStop(
  { outputs }: Survey,
  stopAt: (output: Address) => Stop,
): { output: Address; stop: Stop } | undefined {
  const stops = outputs.map((output) => ({ output, stop: stopAt(output) }));
  const closed = stops
    .filter(({ stop }) => stop.code === 'closed')
    .sort((one, other) => closedCount(one.stop) - closedCount(other.stop));
  return closed[0] ?? stops[0];
}

const closedCount = (stop: Stop): number => (stop.code === 'closed' ? stop.places.length : 0);

/** The control to begin with at a stop; nothing where a cord is missing. */
export function mendStop(survey: Survey, stop: Stop): Address | undefined {
  const [closed] = stop.code === 'closed' ? stop.places : [];
  return closed === undefined ? undefined : openerOf(survey, closed);
}

/** What is only turned down or muted may be meant so. */
function severityOf({ setup }: Survey, stop: Stop): Severity {
  if (stop.code === 'no-way') return 'fault';
  const known = controls(setup.rig);
  const isTurnedDown = (place: Address) =>
    known.get(place)?.kind === 'gain' ||
    ['mute', 'cut'].some((name) => place === part(ownerOf(place), name));
  return stop.places.every(isTurnedDown) ? 'note' : 'fault';
}
