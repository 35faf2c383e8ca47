import { seededNoise } from '../seeded-noise.ts';
import { addAt, emptyLoop, type Loop, levelled } from './loop.ts';
import { SAMPLE_RATE } from './piece.ts';

/** How many reflections one microphone hears, the last of them after how long, in seconds. */
const REFLECTIONS = 24;
const LAST = 0.7;

/**
 * What a microphone far off in the shed hears of some players: reflections alone, each later one softer and the
 * whole a little dull.
 *
 * @param seed another one for each microphone.
 */
export function roomMicrophone(seed: string, players: readonly Loop[]): Loop {
  const together = dulled(sumOf(players));
  const noise = seededNoise(seed);
  const heard = emptyLoop();
  for (let number = 1; number <= REFLECTIONS; number += 1) {
    // They come ever more densely, and none before 12 ms: 4 m.
    const time = 0.012 + LAST * Math.sqrt((number + 0.5 * noise()) / (REFLECTIONS + 1));
    const delay = Math.round(time * SAMPLE_RATE);
    const ratio = Math.sign(noise()) * 10 ** (-time / LAST);
    for (let frame = 0; frame < together.length; frame += 1) {
      addAt(heard, frame + delay, ratio * (together[frame] ?? 0));
    }
  }
  return levelled(heard);
}

function sumOf(players: readonly Loop[]): Loop {
  const sum = emptyLoop();
  for (const player of players) {
    for (let frame = 0; frame < player.length; frame += 1) addAt(sum, frame, player[frame] ?? 0);
  }
  return sum;
}

/** Half of each sample and half of the one before, twice round, so that the end leads into the beginning. */
function dulled(loop: Loop): Loop {
  let last = loop.at(-1) ?? 0;
  return loop.map((sample) => {
    last = 0.5 * last + 0.5 * sample;
    return last;
  });
}
