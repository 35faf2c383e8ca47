import { type Address, deskOwner, type Owner, ownerOf, part } from '../../rig/address.ts';
import { sendersTo } from '../../rig/strip-routes.ts';
import type { Finding } from './finding.ts';
import { carries, loudestAt, placeOf, reachedFrom, type Survey, stagesAt } from './survey.ts';

/**
 * Sends that are taken before the fader into a device that is heard where the strip itself goes: pull the
 * fader down and the effect stays.
 */
export function findGhosts(survey: Survey): Finding[] {
  return survey.setup.rig.desk.auxes.flatMap(({ id }): Finding[] => {
    const aux = deskOwner(id);
    const behind = reachedFrom(survey, stagesAt(survey, part(aux, 'out')));
    const device = [...behind].find((stage) => placeOf(survey, stage).startsWith('rack.'));
    if (device === undefined) return [];
    const wet = reachedFrom(survey, [device]);
    const sends = openSends(survey, id).filter((send) => isTakenBeforeFader(survey, send));
    const output = survey.outputs.find((one) =>
      stagesAt(survey, one).some(
        (stage) => wet.has(stage) && sends.some((send) => isDry(survey, send, stage)),
      ),
    );
    const ghosts =
      output === undefined
        ? []
        : sends.filter((send) =>
            stagesAt(survey, output).some((stage) => isDry(survey, send, stage)),
          );
    const [first] = ghosts;
    if (output === undefined || first === undefined) return [];
    return [
      {
        code: 'ghost',
        severity: 'note',
        aux,
        sends: ghosts,
        device: ownerOf(placeOf(survey, device)),
        output,
        mendAt: tapOf(survey, first),
        follow: loudestAt(survey, first),
      },
    ];
  });
}

/**
 * Sends that are taken after the fader into an aux that is plugged straight into an output of the room, which
 * is what sets headphones apart from an effect: whoever listens there hears every move of the mix.
 */
export function findPostFaderHeadphones(survey: Survey): Finding[] {
  return survey.setup.rig.desk.auxes.flatMap(({ id }): Finding[] => {
    const aux = deskOwner(id);
    const output = outputFedStraight(survey, aux);
    const sends = openSends(survey, id).filter((send) => isTakenAfterFader(survey, send));
    const [first] = sends;
    if (output === undefined || first === undefined) return [];
    const mendAt = tapOf(survey, first);
    const follow = loudestAt(survey, first);
    return [
      { code: 'post-fader-headphones', severity: 'note', aux, sends, output, mendAt, follow },
    ];
  });
}

const openSends = (survey: Survey, aux: string): Address[] =>
  sendersTo(survey.setup.rig, aux)
    .map(({ id }) => part(deskOwner(id), aux))
    .filter((send) => carries(survey, send));

/** The output that an aux is plugged into, with nothing between. */
function outputFedStraight(survey: Survey, aux: Owner): Address | undefined {
  const goals = stagesAt(survey, part(aux, 'out')).flatMap((stage) => survey.next[stage] ?? []);
  return goals
    .map((stage) => placeOf(survey, stage))
    .find((place) => survey.outputs.includes(place));
}

/** Whether what comes out of the fader of a send's strip arrives at a stage. */
const isDry = (survey: Survey, send: Address, goal: number): boolean =>
  reachedFrom(survey, stagesAt(survey, part(ownerOf(send), 'fader'))).has(goal);

const hasFader = (survey: Survey, send: Address): boolean =>
  stagesAt(survey, part(ownerOf(send), 'fader')).length > 0;

const isTakenAfterFader = (survey: Survey, send: Address): boolean =>
  hasFader(survey, send) && passesFader(survey, send);

const isTakenBeforeFader = (survey: Survey, send: Address): boolean =>
  hasFader(survey, send) && !passesFader(survey, send);

/** Whether the fader of its own strip comes before a send: walked back inside the strip. */
function passesFader(survey: Survey, send: Address): boolean {
  const owner = ownerOf(send);
  const fader = part(owner, 'fader');
  const { wires } = survey.solution.circuit;
  const waiting = [...stagesAt(survey, send)];
  const seen = new Set(waiting);
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    if (placeOf(survey, stage) === fader) return true;
    for (const { from } of wires[stage] ?? []) {
      if (seen.has(from) || ownerOf(placeOf(survey, from)) !== owner) continue;
      seen.add(from);
      waiting.push(from);
    }
  }
  return false;
}

/** The switch that says where a send is taken; the send itself where that is fixed. */
function tapOf({ setup: { rig } }: Survey, send: Address): Address {
  const aux = rig.desk.auxes.find(({ id }) => send === part(ownerOf(send), id));
  return aux?.tap === 'switchable' ? part(send, 'tap') : send;
}
