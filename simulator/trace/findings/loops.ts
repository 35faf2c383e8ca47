import { type Address, boxOwner, deskOwner, type Owner, ownerOf, part } from '../../rig/address.ts';
import { controls } from '../../rig/controls.ts';
import type { Finding, Ring } from './finding.ts';
import { loudestAt, placeOf, reachedFrom, type Survey } from './survey.ts';

/**
 * Loops: those through a capture track, those through a device and a send, where a return feeds its own send, and
 * all others. A delay whose feedback dies away inside it is as it should be. A stable loop may be meant, except of
 * a capture track, which records itself late; an unstable one has no level. Both sides of a stereo ring are mended
 * at one place: the one that gains more tells it.
 */
export function findLoops(survey: Survey): Finding[] {
  const rings = [...survey.solution.loops]
    .sort((one, other) => other.gain - one.gain)
    .flatMap(({ ring, ...fate }) => loopOf(survey, ring, fate));
  return rings.filter(
    (one, index) =>
      !rings.slice(0, index).some(({ code, mendAt }) => code === one.code && mendAt === one.mendAt),
  );
}

function loopOf(survey: Survey, ring: readonly number[], fate: Omit<Ring, 'places'>): Finding[] {
  const places = [...new Set(ring.map((stage) => placeOf(survey, stage)))];
  const owners = new Set(places.map(ownerOf));
  if (fate.stable && owners.size === 1) return [];
  const follow = sourceOfLoop(survey, places);
  const capture = survey.setup.rig.box.captures
    .map(({ id }) => boxOwner(id))
    .find((owner) => owners.has(owner));
  if (capture !== undefined) return [captureLoop(capture, { places, ...fate }, follow)];

  const told = { places, ...fate, severity: fate.stable ? 'note' : 'fault', follow } as const;
  const device = [...owners].find((owner) => owner.startsWith('rack.'));
  const send = places.find((place) => isSend(survey, place));
  if (device !== undefined && send !== undefined) {
    return [{ code: 'return-feeds-send', device, send, ...told, mendAt: send }];
  }
  const known = controls(survey.setup.rig);
  const mendAt = send ?? places.find((place) => known.has(place)) ?? places[0] ?? '';
  return [{ code: 'loop', ...told, mendAt }];
}

/** The ring of a capture track, told from where it records on. */
function captureLoop(
  capture: Owner,
  { places, ...fate }: Ring,
  follow: string | undefined,
): Finding {
  const start = places.indexOf(part(capture, 'in'));
  const round = [...places.slice(start), ...places.slice(0, start)];
  const isLine = (kind: string) => (place: Address) => place.startsWith(`converter.${kind}`);
  return {
    code: 'capture-plays-back',
    severity: 'fault',
    capture,
    records: round.findLast(isLine('in')) ?? '',
    plays: round.find(isLine('out')) ?? '',
    places: round,
    ...fate,
    mendAt: part(capture, 'to'),
    follow,
  };
}

function isSend({ setup: { rig } }: Survey, place: Address): boolean {
  return rig.desk.strips.some(({ id }) =>
    rig.desk.auxes.some((aux) => place === part(deskOwner(id), aux.id)),
  );
}

/** A track that comes into a loop; where there is no level in it, the first one of which a way leads there. */
function sourceOfLoop(survey: Survey, places: readonly Address[]): string | undefined {
  const [first = ''] = places;
  const loudest = loudestAt(survey, first);
  if (loudest !== undefined) return loudest;
  const { circuit } = survey.solution;
  const within = new Set(places.flatMap((place) => circuit.stagesAt.get(place) ?? []));
  return circuit.signals.find(({ stage }) =>
    [...reachedFrom(survey, [stage])].some((reached) => within.has(reached)),
  )?.track;
}
