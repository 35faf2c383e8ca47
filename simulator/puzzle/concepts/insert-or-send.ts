import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import {
  COMPRESSOR,
  EQUALISER,
  effectCords,
  type MonoPlayer,
  PLATE,
  roomOf,
  seated,
} from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** A device that all of a player goes through, and one that stands beside another. */
export function insertOrSend(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const rig = roomOf({
    players,
    auxes: ['switchable', 'pre', 'switchable'],
    rack: level === 1 ? [COMPRESSOR, PLATE] : [COMPRESSOR, EQUALISER, PLATE],
    returns: ['Return'],
    defaults: effectCords('plate', 'aux3', 'ret1'),
  });
  const sketch = new Sketch(rig);
  const [first, second] = stream.shuffled(players) as [MonoPlayer, MonoPlayer];
  const strip = (player: MonoPlayer) => `desk.ch${players.indexOf(player) + 1}`;
  const device = level > 1 && stream.onceIn(2) ? 'eq' : 'comp';
  const wants = level === 3 ? 'both' : stream.pick(['insert', 'send'] as const);
  const faults: (() => boolean)[] = [];
  if (wants !== 'send') askForInsert();
  if (wants !== 'insert') askForSend();
  pickFaults(stream, size.faults, faults);
  const patches = ['desk.*.insert.return', 'rack.*.in', 'desk.ret1.in.*', 'desk.*.aux3'];
  const decoys = level === 1 ? [] : ['desk.ret1.mute', 'desk.*.main'];
  return sketch.draft(wants === 'send' ? second : first, [...patches, ...decoys]);

  function askForInsert(): void {
    const [rack, own, other] = [`rack.${device}`, strip(first), strip(second)];
    sketch.stand({
      [`${rack}.in`]: `${own}.insert.send`,
      [`${own}.insert.return`]: `${rack}.out`,
    });
    sketch.ask(
      { code: 'inserted', sources: [first], at: rack },
      { kind: 'passes', source: first, output: 'capture', through: [rack] },
      { kind: 'once', source: first, output: 'capture' },
    );
    sketch.ask(
      { code: 'stays-out', sources: [second], at: rack },
      { kind: 'avoids', source: second, output: 'capture', past: rack },
      { kind: 'once', source: second, output: 'capture' },
    );
    faults.push(
      () =>
        sketch.spoil('return-missing', first, `${own}.insert.return`, {
          [`${own}.insert.return`]: 'none',
        }),
      () => sketch.spoil('send-missing', first, `${rack}.in`, { [`${rack}.in`]: 'none' }),
      () =>
        sketch.spoil('returned-elsewhere', first, `${other}.insert.return`, {
          [`${own}.insert.return`]: 'none',
          [`${other}.insert.return`]: `${rack}.out`,
        }),
    );
    if (wants === 'both') return;
    faults.push(() =>
      sketch.spoil('hung-on-send', first, rack, {
        'rack.plate.in': 'none',
        [`${rack}.in`]: 'desk.aux3.out',
        [`${own}.insert.return`]: 'none',
        [`${own}.aux3`]: -stream.int(0, 6),
        'desk.ret1.in.l': `${rack}.out`,
        'desk.ret1.in.r': 'none',
      }),
    );
  }

  function askForSend(): void {
    const own = strip(second);
    sketch.stand({ [`${own}.aux3`]: -stream.int(4, 10) });
    sketch.ask(
      { code: 'beside', sources: [second], at: 'rack.plate' },
      { kind: 'dry-and-through', source: second, output: 'capture', through: 'rack.plate' },
      { kind: 'once', source: second, output: 'capture' },
      { kind: 'around', source: second, output: 'rack.plate.in', by: 4 },
    );
    sketch.ask(
      { code: 'stays-out', sources: [first], at: 'rack.plate' },
      { kind: 'avoids', source: first, output: 'capture', past: 'rack.plate' },
    );
    sketch.ask({ code: 'no-feedback', sources: [], at: 'desk.ret1' }, { kind: 'no-loop' });
    faults.push(
      () => sketch.spoil('send-closed', second, `${own}.aux3`, { [`${own}.aux3`]: -Infinity }),
      () => sketch.spoil('effect-unplugged', second, 'rack.plate.in', { 'rack.plate.in': 'none' }),
      () =>
        sketch.spoil('return-unplugged', second, 'desk.ret1.in', {
          'desk.ret1.in.l': 'none',
          'desk.ret1.in.r': 'none',
        }),
      () =>
        sketch.spoil('effect-inserted', second, 'rack.plate', {
          'rack.plate.in': `${own}.insert.send`,
          [`${own}.insert.return`]: 'rack.plate.out.l',
          'desk.ret1.in.l': 'none',
        }),
    );
    if (level > 1) {
      faults.push(() =>
        sketch.spoil('return-muted', second, 'desk.ret1.mute', { 'desk.ret1.mute': true }),
      );
    }
  }
}
