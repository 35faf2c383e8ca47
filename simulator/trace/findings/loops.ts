import { type Address, deskOwner, ownerOf, part } from '../../rig/address.ts';
import { controls } from '../../rig/controls.ts';
import type { Finding } from './finding.ts';
import { loudestAt, placeOf, type Survey } from './survey.ts';

/**
 * Loops: those through a device and a send, where a return feeds its own send, and all others. A delay whose
 * feedback dies away inside it is as it should be. A stable loop may be meant, an unstable one has no level.
 */
export function findLoops(survey: Survey): Finding[] {
  return survey.solution.loops.flatMap(({ ring, gain, stable, worst }): Finding[] => {
    const places = [...new Set(ring.map((stage) => placeOf(survey, stage)))];
    const owners = new Set(places.map(ownerOf));
    if (stable && owners.size === 1) return [];
    const severity = stable ? 'note' : 'fault';
    const told = { places, gain, stable, worst, severity } as const;
    const device = [...owners].find((owner) => owner.startsWith('rack.'));
    const send = places.find((place) => isSend(survey, place));
    const follow = sourceOfLoop(survey, places);
    if (device !== undefined && send !== undefined) {
      return [{ code: 'return-feeds-send', device, send, ...told, mendAt: send, follow }];
    }
    const known = controls(survey.setup.rig);
    const mendAt = send ?? places.find((place) => known.has(place)) ?? places[0] ?? '';
    return [{ code: 'loop', ...told, mendAt, follow }];
  });
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
  return circuit.signals.find(({ stage }) => leadsInto(survey, stage, within))?.track;
}

function leadsInto({ next }: Survey, start: number, goals: ReadonlySet<number>): boolean {
  const seen = new Set([start]);
  const waiting = [start];
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    if (goals.has(stage)) return true;
    for (const to of next[stage] ?? []) {
      if (seen.has(to)) continue;
      seen.add(to);
      waiting.push(to);
    }
  }
  return false;
}
