import { type Rig, signalsOf } from '../../../simulator/index.ts';
import type { Loop } from './loop.ts';
import { plainVoice } from './plain-voices.ts';
import { alto, bass, cello, drum, dulcimer, pianoLeft, pianoRight, tenor } from './players.ts';
import { roomMicrophone } from './room.ts';

const EVERYBODY = ['tenor', 'alto', 'cello', 'dulcimer', 'drum', 'bass', 'piano.l', 'piano.r'];
const roomMicrophoneAt = (side: string) => roomMicrophone(side, EVERYBODY.map(played));

/** Who plays a signal, by its name. */
const PLAYERS: Readonly<Record<string, () => Loop>> = {
  tenor,
  alto,
  cello,
  dulcimer,
  drum,
  bass,
  piano: pianoLeft,
  'piano.l': pianoLeft,
  'piano.r': pianoRight,
  room: () => roomMicrophoneAt('left'),
  'room.l': () => roomMicrophoneAt('left'),
  'room.r': () => roomMicrophoneAt('right'),
};

/**
 * The recording of a signal, at an RMS of 1. It is made when it is first asked for, within a fraction of a second.
 * A signal that none of the players stands for gets a plain voice by its place in the list of signals.
 *
 * @throws RangeError when the rig has no such signal.
 */
export function recordingOf(rig: Rig, signal: string): Loop {
  const number = rig.box.tracks.flatMap(signalsOf).indexOf(signal);
  if (number < 0) throw new RangeError(`Expected a signal of the rig, but got ${signal}.`);
  return Object.hasOwn(PLAYERS, signal)
    ? played(signal)
    : kept(`plain voice ${number}`, () => plainVoice(number));
}

/** What the player of a signal plays. */
function played(signal: string): Loop {
  const player = PLAYERS[signal];
  if (!player) throw new RangeError(`Expected a signal that somebody plays, but got ${signal}.`);
  return kept(signal, player);
}

const known = new Map<string, Loop>();

/** A loop that was made before under this name, or is made now. */
function kept(name: string, make: () => Loop): Loop {
  const loop = known.get(name) ?? make();
  known.set(name, loop);
  return loop;
}
