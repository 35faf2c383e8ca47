import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { type MonoPlayer, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** The box has a mix of its own, which must not come out where a track does. */
export function sharedOutputs(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const first = players.length + 1;
  const cuePair = `out${first}-${first + 1}`;
  const rig = roomOf({
    players,
    moreOutputs: 2,
    buses: [{ id: 'blend', label: 'Blend', plugins: [] }],
    outputs: [{ id: 'cue', label: 'Cue', stereo: true }],
    defaults: {
      'out.cue.l': `converter.out${first}`,
      'out.cue.r': `converter.out${first + 1}`,
    },
  });
  const sketch = new Sketch(rig);
  const shuffled = stream.shuffled(players) as MonoPlayer[];
  const [one, other, third] = shuffled;
  if (!one || !other || !third) throw new RangeError('Expected three players at least.');
  const hasCue = level > 1 || stream.onceIn(2);
  const cue = hasCue ? [one, ...(level > 2 ? [other] : [])] : [];
  sketch.stand({
    'box.main.to': hasCue ? cuePair : 'none',
    ...Object.fromEntries(cue.map((player) => [`box.${player}.main`, true])),
  });
  for (const player of players) {
    sketch.ask(
      { code: 'own-strip', sources: [player], at: stripOf(player) },
      { kind: 'passes', source: player, output: 'capture', through: [stripOf(player)] },
      { kind: 'once', source: player, output: 'capture' },
    );
  }
  for (const player of cue) {
    sketch.ask(
      { code: 'cue-mix', sources: [player], at: 'out.cue' },
      { kind: 'once', source: player, output: 'out.cue.l' },
      { kind: 'once', source: player, output: 'out.cue.r' },
    );
  }
  if (hasCue) {
    sketch.ask(
      { code: 'not-in-cue', sources: [third], at: 'out.cue' },
      { kind: 'absent', source: third, output: 'cue' },
    );
  }
  const pair = stream.int(1, players.length - 1);
  const faults = [
    () =>
      sketch.spoil('mix-shares', one, 'box.main.to', {
        'box.main.to': `out${pair}-${pair + 1}`,
        [`box.${one}.main`]: true,
      }),
    () =>
      sketch.spoil('bus-shares', other, 'box.blend.to', {
        [`box.${other}.to`]: 'blend',
        'box.blend.to': outOf(third),
      }),
    () =>
      sketch.spoil('feed-only', third, `box.${third}.to`, {
        [`box.${third}.to`]: 'none',
        [`box.${third}.main`]: true,
      }),
    () =>
      sketch.spoil('output-shared', other, `box.${other}.to`, {
        [`box.${other}.to`]: outOf(third),
      }),
    ...(hasCue
      ? [() => sketch.spoil('feed-missing', one, `box.${one}.main`, { [`box.${one}.main`]: false })]
      : []),
  ];
  pickFaults(stream, size.faults, faults);
  return sketch.draft(one, ['box.*.to', 'box.*.main', ...(level > 2 ? ['desk.*.mute'] : [])]);

  function stripOf(player: MonoPlayer): string {
    return `desk.ch${players.indexOf(player) + 1}`;
  }
  function outOf(player: MonoPlayer): string {
    return `out${players.indexOf(player) + 1}`;
  }
}
