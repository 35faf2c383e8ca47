import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { type MonoPlayer, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** Every track leaves the box once, by the output of its own strip. */
export function oneOutputEach(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const spare = `out${players.length + 1}`;
  const rig = roomOf({ players, moreOutputs: 2 });
  const sketch = new Sketch(rig);
  for (const player of players) {
    sketch.ask(
      { code: 'own-strip', sources: [player], at: stripOf(player) },
      { kind: 'passes', source: player, output: 'capture', through: [stripOf(player)] },
      { kind: 'once', source: player, output: 'capture' },
    );
  }
  const [one, other, third, fourth = third] = stream.shuffled(players) as MonoPlayer[];
  if (!one || !other || !third || !fourth) throw new RangeError('Expected three players at least.');
  const to = (player: MonoPlayer) => `box.${player}.to`;
  pickFaults(stream, size.faults, [
    () => sketch.spoil('output-shared', one, to(one), { [to(one)]: outOf(other) }),
    () => sketch.spoil('output-nowhere', third, to(third), { [to(third)]: 'none' }),
    () => sketch.spoil('output-spare', fourth, to(fourth), { [to(fourth)]: spare }),
    () =>
      sketch.spoil('outputs-swapped', one, to(one), {
        [to(one)]: outOf(other),
        [to(other)]: outOf(one),
      }),
    () => sketch.spoil('output-pair', fourth, to(fourth), { [to(fourth)]: pairWith(fourth) }),
  ]);
  return sketch.draft(one, [
    'box.*.to',
    ...(level > 1 ? ['box.*.main', 'desk.*.mute'] : []),
    ...(level > 2 ? ['box.*.pan'] : []),
  ]);

  function stripOf(player: MonoPlayer): string {
    return `desk.ch${players.indexOf(player) + 1}`;
  }
  function outOf(player: MonoPlayer): string {
    return `out${players.indexOf(player) + 1}`;
  }
  /** The pair of outputs that a player's own one is half of. */
  function pairWith(player: MonoPlayer): string {
    const first = Math.max(1, players.indexOf(player));
    return `out${first}-${first + 1}`;
  }
}
