import { type Address, type Owner, ownerOf, part } from '../../rig/address.ts';
import { leadsPast } from '../leads.ts';
import type { Finding } from './finding.ts';
import { type OpenSends, openSends } from './open-sends.ts';
import { deviceAt, loudestAt, placeOf, reachedFrom, type Survey, stagesAt } from './survey.ts';

/**
 * Sends that are taken before the fader into a device or plug-in that is heard where the strip or track itself
 * goes: pull the fader down and the effect stays.
 */
export function findGhosts(survey: Survey): Finding[] {
  return openSends(survey).flatMap((open): Finding[] => {
    const ghosts = open.sends
      .filter((send) => isTakenBeforeFader(survey, send))
      .flatMap((send) => ghostOf(survey, open.bus, send) ?? []);
    const [first] = ghosts;
    if (!first) return [];
    const { send, device, output } = first;
    return [
      {
        code: 'ghost',
        severity: 'note',
        bus: open.bus,
        sends: ghosts.filter((one) => one.output === output).map((one) => one.send),
        device,
        output,
        mendAt: tapOf(open, send),
        follow: loudestAt(survey, send),
      },
    ];
  });
}

/** The device that only the send of a strip or track leads to, and the output where both are heard. */
function ghostOf(survey: Survey, bus: Owner, send: Address) {
  const dry = reachedFrom(survey, stagesAt(survey, part(ownerOf(send), 'fader')));
  const behind = reachedFrom(survey, stagesAt(survey, part(bus, 'sum')));
  for (const stage of behind) {
    const device = deviceAt(survey, placeOf(survey, stage));
    if (device === undefined || dry.has(stage)) continue;
    const wet = reachedFrom(survey, [stage]);
    const output = survey.outputs.find((one) =>
      stagesAt(survey, one).some((goal) => wet.has(goal) && dry.has(goal)),
    );
    return output === undefined ? undefined : { send, device, output };
  }
  return undefined;
}

/**
 * Sends that are taken after the fader into a bus that an output of the room is plugged straight into, which is
 * what sets headphones apart from an effect: whoever listens there hears every move of the mix.
 */
export function findPostFaderHeadphones(survey: Survey): Finding[] {
  return openSends(survey).flatMap((open): Finding[] => {
    const output = outputFedStraight(survey, open.bus);
    if (output === undefined) return [];
    const sends = open.sends.filter(
      (send) => isTakenAfterFader(survey, send) && !isDry(survey, open.bus, send, output),
    );
    const [first] = sends;
    if (first === undefined) return [];
    const mendAt = tapOf(open, first);
    const follow = loudestAt(survey, first);
    const told = { bus: open.bus, sends, output, mendAt, follow };
    return [{ code: 'post-fader-headphones', severity: 'note', ...told }];
  });
}

/** The output that a bus leads to with no plug-in and nothing but the converter and mults between. */
function outputFedStraight(survey: Survey, bus: Owner): Address | undefined {
  const isBetween = (place: Address) =>
    (ownerOf(place) === bus && deviceAt(survey, place) === undefined) ||
    /^(converter\.out|bay\.)/.test(place);
  const seen = new Set(stagesAt(survey, part(bus, 'sum')));
  for (const stage of seen) {
    const place = placeOf(survey, stage);
    if (survey.outputs.includes(place)) return place;
    if (!isBetween(place)) continue;
    for (const to of survey.next[stage] ?? []) seen.add(to);
  }
  return undefined;
}

/** Whether what comes out of the fader that a send belongs to is heard at an output, past the bus of the send. */
const isDry = (survey: Survey, bus: Owner, send: Address, output: Address): boolean =>
  stagesAt(survey, part(ownerOf(send), 'fader')).some((stage) =>
    leadsPast(survey.solution.circuit, stage, bus, output),
  );

const hasFader = (survey: Survey, send: Address): boolean =>
  stagesAt(survey, part(ownerOf(send), 'fader')).length > 0;

const isTakenAfterFader = (survey: Survey, send: Address): boolean =>
  hasFader(survey, send) && passesFader(survey, send);

const isTakenBeforeFader = (survey: Survey, send: Address): boolean =>
  hasFader(survey, send) && !passesFader(survey, send);

/** Whether the fader of its own strip or track comes before a send: walked back inside it. */
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
const tapOf = ({ tap }: OpenSends, send: Address): Address =>
  tap === 'switchable' ? part(send, 'tap') : send;
