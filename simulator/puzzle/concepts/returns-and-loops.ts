import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { CHAMBER, effectCords, type MonoPlayer, PLATE, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** What comes back is a source like any other, and can feed itself. */
export function returnsAndLoops(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players - 1);
  const effects = level === 1 ? ['plate'] : ['plate', 'chamber'];
  const rig = roomOf({
    players,
    auxes: ['post', 'post'],
    groups: 1,
    rack: level === 1 ? [PLATE] : [PLATE, CHAMBER],
    returns: level === 1 ? ['Plate return'] : ['Plate return', 'Chamber return'],
    defaults: {
      ...effectCords('plate', 'aux1', 'ret1'),
      ...(level === 1 ? {} : effectCords('chamber', 'aux2', 'ret2')),
    },
  });
  const sketch = new Sketch(rig);
  const sent = stream.shuffled(players) as MonoPlayer[];
  const faults: (() => boolean)[] = [];
  effects.forEach((effect, index) => {
    const player = sent[index];
    if (!player) throw new RangeError('Expected a player for each effect.');
    const own = `desk.ch${players.indexOf(player) + 1}`;
    const [rack, aux, ret] = [`rack.${effect}`, `aux${index + 1}`, `desk.ret${index + 1}`];
    sketch.stand({ [`${own}.${aux}`]: -stream.int(3, 10) });
    sketch.ask(
      { code: 'beside', sources: [player], at: rack },
      { kind: 'dry-and-through', source: player, output: 'capture', through: rack },
      { kind: 'once', source: player, output: 'capture' },
    );
    faults.push(
      () =>
        sketch.spoil('feeds-itself', player, `${ret}.${aux}`, {
          [`${ret}.${aux}`]: -stream.int(3, 20),
        }),
      () => sketch.spoil('return-muted', player, `${ret}.mute`, { [`${ret}.mute`]: true }),
      () => sketch.spoil('return-off-main', player, `${ret}.main`, { [`${ret}.main`]: false }),
      () => sketch.spoil('send-closed', player, `${own}.${aux}`, { [`${own}.${aux}`]: -Infinity }),
      () =>
        sketch.spoil('main-feeds-itself', player, `${rack}.in`, {
          [`${rack}.in`]: 'desk.main.insert.send.l',
        }),
      () =>
        sketch.spoil('group-feeds-itself', player, `${ret}.sub1`, {
          [`${rack}.in`]: 'desk.sub1.out.l',
          [`${own}.sub1`]: true,
          [`${own}.main`]: false,
          [`${ret}.sub1`]: true,
        }),
    );
  });
  sketch.ask({ code: 'no-feedback', sources: [], at: 'desk.ret1' }, { kind: 'no-loop' });
  pickFaults(stream, size.faults, faults);
  return sketch.draft(sent[0] ?? 'tenor', [
    'desk.*.aux1',
    'desk.*.main',
    'desk.*.sub1',
    'rack.*.in',
    ...(level > 1 ? ['desk.*.aux2', 'desk.ret1.mute', 'desk.ret2.mute'] : ['desk.ret1.mute']),
  ]);
}
