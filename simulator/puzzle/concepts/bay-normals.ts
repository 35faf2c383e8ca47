import type { Bay } from '../../rig/schema.ts';
import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { COMPRESSOR, type MonoPlayer, PLATE, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** What feeds an input without a cord, and what breaks it. */
export function bayNormals(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players - 1);
  const rig = roomOf({
    players,
    auxes: ['post'],
    rack: [COMPRESSOR, PLATE],
    returns: ['Plate return'],
    bay: bayFor(players.length),
    defaults: {
      'desk.ret1.in.l': 'rack.plate.out.l',
      'desk.ret1.in.r': 'rack.plate.out.r',
    },
  });
  const sketch = new Sketch(rig);
  const [one, other] = stream.shuffled(players) as [MonoPlayer, MonoPlayer];
  for (const player of players) {
    sketch.ask(
      { code: 'own-strip', sources: [player], at: stripOf(player) },
      { kind: 'passes', source: player, output: 'capture', through: [stripOf(player)] },
      { kind: 'once', source: player, output: 'capture' },
    );
  }
  const own = stripOf(one);
  const hasInsert = level > 1 || stream.onceIn(2);
  if (hasInsert) {
    sketch.stand({
      'rack.comp.in': `${own}.insert.send`,
      [`${own}.insert.return`]: 'rack.comp.out',
    });
    sketch.ask(
      { code: 'inserted', sources: [one], at: 'rack.comp' },
      { kind: 'passes', source: one, output: 'capture', through: ['rack.comp'] },
    );
  }
  const hasPlate = level > 1;
  if (hasPlate) {
    sketch.stand({ [`${stripOf(other)}.aux1`]: -stream.int(4, 9) });
    sketch.ask(
      { code: 'beside', sources: [other], at: 'rack.plate' },
      { kind: 'dry-and-through', source: other, output: 'capture', through: 'rack.plate' },
    );
  }
  const theirs = stripOf(other);
  const faults = [
    () => sketch.spoil('open-plug', other, `${theirs}.in`, { [`${theirs}.in`]: 'open' }),
    () =>
      sketch.spoil('cross-patched', one, `${theirs}.in`, { [`${theirs}.in`]: converterOf(one) }),
    ...(hasInsert
      ? [
          () =>
            sketch.spoil('return-missing', one, `${own}.insert.return`, {
              [`${own}.insert.return`]: 'none',
            }),
          () =>
            sketch.spoil('normal-broken', one, 'rack.comp.in', {
              'rack.comp.in': converterOf(one),
            }),
        ]
      : [
          () =>
            sketch.spoil('normal-broken', one, 'rack.comp.in', {
              'rack.comp.in': converterOf(one),
            }),
          () =>
            sketch.spoil('open-plug', one, `${own}.insert.return`, {
              [`${own}.insert.return`]: 'open',
            }),
        ]),
    ...(hasPlate
      ? [() => sketch.spoil('open-plug', other, 'rack.plate.in', { 'rack.plate.in': 'open' })]
      : []),
  ];
  pickFaults(stream, size.faults, faults);
  return sketch.draft(one, [
    'rack.*.in',
    `${own}.in`,
    `${theirs}.in`,
    `${own}.insert.return`,
    `${theirs}.insert.return`,
  ]);

  function stripOf(player: MonoPlayer): string {
    return `desk.ch${players.indexOf(player) + 1}`;
  }
  function converterOf(player: MonoPlayer): string {
    return `converter.out${players.indexOf(player) + 1}`;
  }
}

/** A bay of three rows: outputs over line inputs, inserts, and the rest of the room. */
function bayFor(strips: number): Bay {
  const numbers = Array.from({ length: strips }, (_, index) => index + 1);
  return {
    rows: [
      {
        id: 'lines',
        label: 'Lines',
        kind: 'full',
        points: numbers.map((number) => ({
          top: `converter.out${number}`,
          bottom: `desk.ch${number}.in`,
        })),
      },
      {
        id: 'inserts',
        label: 'Inserts',
        kind: 'half',
        points: numbers.map((number) => ({
          top: `desk.ch${number}.insert.send`,
          bottom: `desk.ch${number}.insert.return`,
        })),
      },
      {
        id: 'rack',
        label: 'Rack',
        kind: 'half',
        points: [{ top: 'desk.aux1.out', bottom: 'rack.plate.in' }],
      },
      {
        id: 'open',
        label: 'Open',
        kind: 'open',
        points: [{ top: 'rack.comp.out', bottom: 'rack.comp.in' }],
      },
    ],
    mults: [],
    outputOhms: 100,
    inputOhms: 10_000,
  };
}
