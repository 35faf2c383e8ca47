import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { type MonoPlayer, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** A player who comes by two strips adds up only where both are in step. */
export function polarityAndLatency(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players - (level > 1 ? 1 : 0));
  const doubled = (stream.shuffled(players) as MonoPlayer[]).slice(0, level === 3 ? 2 : 1);
  const first = players.length + 1;
  const rig = roomOf({
    players,
    spareStrips: doubled.map((_, index) => (index === 0 ? 'Parallel' : 'Parallel 2')),
    buses: doubled.map((_, index) => ({
      id: `line${index + 1}`,
      label: `Parallel line ${index + 1}`,
      tap: 'post',
      plugins: [{ id: 'slow', label: 'Slow plug-in', kind: 'gain', latencyMs: 4 + 3 * index }],
    })),
    defaults: Object.fromEntries(
      doubled.flatMap((_, index) => [
        [`box.line${index + 1}.to`, `out${first + index}`],
        [`box.line${index + 1}.slow.on`, false],
      ]),
    ),
  });
  const sketch = new Sketch(rig);
  const faults: (() => boolean)[] = [];
  doubled.forEach((player, index) => {
    const own = `desk.ch${players.indexOf(player) + 1}`;
    const [parallel, line] = [`desk.par${index + 1}`, `box.line${index + 1}`];
    const send = `box.${player}.line${index + 1}`;
    // The bus holds both sides, which add up on one output: 3 dB more than the send.
    sketch.stand({ [send]: -3, [`${own}.fader`]: -3, [`${parallel}.fader`]: -stream.int(3, 5) });
    sketch.ask(
      { code: 'in-step', sources: [player], at: parallel, also: [own] },
      { kind: 'dry-and-through', source: player, output: 'capture', through: parallel },
      { kind: 'around', source: player, output: 'capture', by: 1 },
      { kind: 'around', source: player, output: `${own}.main`, by: 1 },
    );
    const inverted = stream.pick([own, parallel]);
    faults.push(
      () =>
        sketch.spoil('inverted', player, `${inverted}.polarity`, {
          [`${inverted}.polarity`]: true,
        }),
      () => sketch.spoil('late', player, `${line}.slow.on`, { [`${line}.slow.on`]: true }),
      () => sketch.spoil('muted', player, `${parallel}.mute`, { [`${parallel}.mute`]: true }),
      () => sketch.spoil('output-nowhere', player, `${line}.to`, { [`${line}.to`]: 'none' }),
    );
  });
  pickFaults(stream, size.faults, faults);
  return sketch.draft(doubled[0] ?? 'tenor', [
    'desk.*.polarity',
    'desk.*.mute',
    ...doubled.flatMap((_, index) => [
      `box.line${index + 1}.slow.on`,
      ...(level > 1 ? [`box.line${index + 1}.to`] : []),
    ]),
    ...(level > 1 ? ['desk.*.fader'] : []),
  ]);
}
