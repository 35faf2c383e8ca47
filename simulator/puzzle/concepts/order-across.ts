import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { COMPRESSOR, EQUALISER, type MonoPlayer, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** What comes before what: plug-ins before all of the desk, devices in the order of their cords. */
export function orderAcross(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const [chained, boxed] = stream.shuffled(players) as [MonoPlayer, MonoPlayer];
  const squeeze = { id: 'squeeze', label: 'Squeeze', kind: 'compressor', latencyMs: 0 } as const;
  const rig = roomOf({
    players,
    rack: [EQUALISER, COMPRESSOR],
    plugins: { [chained]: [squeeze], [boxed]: [squeeze] },
    defaults: { [`box.${chained}.squeeze.on`]: false },
  });
  const sketch = new Sketch(rig);
  const own = `desk.ch${players.indexOf(chained) + 1}`;
  const [early, late] = stream.shuffled(['rack.eq', 'rack.comp']) as [string, string];
  sketch.stand({
    [`${early}.in`]: `${own}.insert.send`,
    [`${late}.in`]: `${early}.out`,
    [`${own}.insert.return`]: `${late}.out`,
  });
  sketch.ask(
    { code: 'in-order', sources: [chained], at: early, also: [late] },
    { kind: 'passes', source: chained, output: 'capture', through: [early, late] },
    { kind: 'once', source: chained, output: 'capture' },
  );
  sketch.ask(
    { code: 'past-plugin', sources: [chained], at: `box.${chained}.squeeze` },
    { kind: 'avoids', source: chained, output: 'capture', past: `box.${chained}.squeeze` },
  );
  if (level > 1) {
    const other = `desk.ch${players.indexOf(boxed) + 1}`;
    sketch.ask(
      { code: 'by-plugin', sources: [boxed], at: `box.${boxed}.squeeze`, also: [other] },
      {
        kind: 'passes',
        source: boxed,
        output: 'capture',
        through: [`box.${boxed}.squeeze`, other],
      },
      { kind: 'once', source: boxed, output: 'capture' },
    );
  }
  const on = (player: MonoPlayer) => `box.${player}.squeeze.on`;
  pickFaults(stream, size.faults, [
    () => sketch.spoil('plugin-on', chained, on(chained), { [on(chained)]: true }),
    () =>
      sketch.spoil('link-missing', chained, early, {
        [`${late}.in`]: `${own}.insert.send`,
        [`${early}.in`]: 'none',
      }),
    () =>
      sketch.spoil('return-missing', chained, `${own}.insert.return`, {
        [`${own}.insert.return`]: 'none',
      }),
    ...(level > 1
      ? [
          () => sketch.spoil('plugin-off', boxed, on(boxed), { [on(boxed)]: false }),
          () =>
            sketch.spoil('order-swapped', chained, late, {
              [`${late}.in`]: `${own}.insert.send`,
              [`${early}.in`]: `${late}.out`,
              [`${own}.insert.return`]: `${early}.out`,
            }),
        ]
      : []),
  ]);
  return sketch.draft(chained, [
    'rack.*.in',
    'desk.*.insert.return',
    'box.*.squeeze.on',
    ...(level > 1 ? ['desk.*.main', 'desk.*.mute'] : []),
  ]);
}
