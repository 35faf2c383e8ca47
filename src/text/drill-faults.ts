import type { DrillFault, FaultCode, Rig } from '../../simulator/index.ts';
import { capitalised } from './capitalised.ts';
import { placeName, playerNames } from './places.ts';

type Saying = (place: string, player: string) => string;

/** What stood wrong, and what it did. */
const FAULTS: Readonly<Record<FaultCode, Saying>> = {
  'return-missing': (place) =>
    `Nothing came back at ${place}: sent alone, a signal is only split off.`,
  'send-missing': (place, player) =>
    `Nothing was plugged into ${place}, so ${player} met an empty device.`,
  'returned-elsewhere': (place, player) =>
    `What ${player} sent came back at ${place}, on another strip.`,
  'hung-on-send': (place, player) =>
    `${capitalised(place)} hung on a send, so that ${player} arrived beside it as well.`,
  'effect-inserted': (place, player) =>
    `${capitalised(place)} was inserted, which left nothing dry of ${player}.`,
  'send-closed': (place) => `${capitalised(place)} was closed.`,
  'send-level': (place) => `${capitalised(place)} stood too low.`,
  'effect-unplugged': (place) => `Nothing was plugged into ${place}; the rail ended in the air.`,
  'return-unplugged': (place) => `The effect was fed, and came back nowhere: ${place} was empty.`,
  'return-muted': (place) => `${capitalised(place)} was on.`,
  'return-off-main': (place) =>
    `${capitalised(place)} was off, so the effect came back and went no further.`,
  'taken-after': (place) =>
    `${capitalised(place)} stood after the fader, so every move of the mix went along.`,
  'taken-before': (place) =>
    `${capitalised(place)} stood before the fader, so the effect played on when the fader came down.`,
  'fixed-rail': (place) =>
    `${capitalised(place)} was fed by a rail whose sends are always taken before the fader.`,
  'output-shared': (place, player) =>
    `${capitalised(place)} named an output that is another's, so ${player} came in on a strip with somebody else.`,
  'output-nowhere': (place) =>
    `${capitalised(place)} led nowhere. What leaves the box by no output never arrives.`,
  'outputs-swapped': (place) => `${capitalised(place)} and its neighbour had changed places.`,
  'output-spare': (place) => `${capitalised(place)} named an output that no strip hangs on.`,
  'output-pair': (place, player) =>
    `${capitalised(place)} named a pair of outputs, so ${player} came in on two strips.`,
  'mix-shares': (place) =>
    `${capitalised(place)} named outputs that belong to tracks: two things met on one line.`,
  'feed-missing': (place, player) =>
    `${capitalised(place)} was off, so the mix of the box went without ${player}.`,
  'feed-only': (place, player) =>
    `${capitalised(player)} left the box by its mix alone, since ${place} led nowhere.`,
  'bus-shares': (place, player) =>
    `${capitalised(player)} left by a bus, and ${place} shared the output of a track.`,
  'order-swapped': (place) =>
    `The cords had ${place} first. The order of devices is the order of the cords.`,
  'link-missing': (place) => `The chain went past ${place}.`,
  'plugin-on': (place, player) =>
    `${capitalised(place)} was on. Whatever is done in the box comes before all of the desk, and ${player} had it already.`,
  'plugin-off': (place) =>
    `${capitalised(place)} was off. Nothing on the desk can come before the box.`,
  'feeds-itself': (place) =>
    `${capitalised(place)} was open: the return fed the effect that it came from.`,
  'group-feeds-itself': (place) =>
    `${capitalised(place)} was on, and the effect was fed by that subgroup: a ring.`,
  'main-feeds-itself': (place) =>
    `${capitalised(place)} came from the main bus, and the effect comes back to the main bus: a ring.`,
  'main-left-on': (place, player) =>
    `${capitalised(place)} was on as well as the subgroup, so ${player} arrived twice.`,
  'assign-off': (place) => `${capitalised(place)} was off.`,
  'second-group': (place, player) =>
    `${capitalised(place)} was on besides, which gave ${player} a second way.`,
  'group-off-main': (place) =>
    `${capitalised(place)} was off: the subgroup summed, and led nowhere.`,
  'group-down': (place) => `${capitalised(place)} was closed.`,
  'group-muted': (place) => `${capitalised(place)} was on.`,
  'parallel-only': (place) =>
    `${capitalised(place)} was off, so there was nothing plain for the parallel way to stand beside.`,
  'pan-centre': (place) =>
    `${capitalised(place)} stood in the middle, so one side of the pair was on both sides.`,
  'pans-swapped': (place) => `${capitalised(place)} and its partner pointed the wrong way.`,
  'pan-aside': (place) => `${capitalised(place)} was turned aside.`,
  'pair-on-one': (place) =>
    `${capitalised(place)} named one output, where both sides fall into one.`,
  'pair-shifted': (place) => `${capitalised(place)} named a pair that is one output off.`,
  'trim-off': (place) =>
    `${capitalised(place)} was far off, and what comes behind it cannot give that back: the noise before it is closer, or the clip level.`,
  'fader-off': (place) => `${capitalised(place)} was far down.`,
  'device-off': (place) => `${capitalised(place)} was far off.`,
  'open-plug': (place) => `A plug with nothing behind it stood in ${place} and broke its normal.`,
  'normal-broken': (place, player) =>
    `A cord to ${place} was plugged into a full-normalled jack, which took ${player} from its strip.`,
  'cross-patched': (place, player) =>
    `A cord in ${place} broke two normals: it took the place of one source, and ${player} from its own strip.`,
  inverted: (place) => `${capitalised(place)} was on: two alike, one of them inverted, cancel.`,
  late: (place) =>
    `${capitalised(place)} was on, which made one way late: two alike, one of them late, make a comb.`,
  muted: (place) => `${capitalised(place)} was on.`,
  'solo-left': (place) => `${capitalised(place)} had been left on.`,
  'solo-mode': (place) =>
    `${capitalised(place)} stood wrong: solo in place cuts the mix, PFL and AFL only change what the monitors hear.`,
  'solo-missing': (place) => `${capitalised(place)} was off.`,
  'not-safe': (place) =>
    `${capitalised(place)} was off, so a solo cut the return of the effect with all the others.`,
};

/** What stood wrong in a drill, and what it did. */
export const faultSentence = (rig: Rig, { code, at, source }: DrillFault): string =>
  FAULTS[code](placeName(rig, at), playerNames(rig, [source]));
