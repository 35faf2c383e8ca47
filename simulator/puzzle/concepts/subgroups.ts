import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { type MonoPlayer, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** A subgroup in series takes the place of the main bus; one in parallel stands beside it. */
export function subgroups(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const rig = roomOf({ players, groups: 2 });
  const sketch = new Sketch(rig);
  const [one, other, parallel, direct] = stream.shuffled(players);
  if (!one || !other) throw new RangeError('Expected two players at least.');
  const strip = (player: MonoPlayer) => `desk.ch${players.indexOf(player) + 1}`;
  const grouped = level === 1 ? [one] : [one, other];
  for (const player of grouped) {
    sketch.stand({ [`${strip(player)}.main`]: false, [`${strip(player)}.sub1`]: true });
    sketch.ask(
      { code: 'grouped', sources: [player], at: 'desk.sub1' },
      { kind: 'passes', source: player, output: 'capture', through: ['desk.sub1'] },
      { kind: 'once', source: player, output: 'capture' },
    );
  }
  const hasParallel = parallel !== undefined && (level > 1 || stream.onceIn(2));
  if (hasParallel) {
    sketch.stand({ [`${strip(parallel)}.sub2`]: true });
    sketch.ask(
      { code: 'in-parallel', sources: [parallel], at: 'desk.sub2' },
      { kind: 'dry-and-through', source: parallel, output: 'capture', through: 'desk.sub2' },
      { kind: 'avoids', source: parallel, output: 'capture', past: 'desk.sub1' },
    );
  }
  if (direct) {
    sketch.ask(
      { code: 'stays-out', sources: [direct], at: 'desk.sub1' },
      { kind: 'avoids', source: direct, output: 'capture', past: 'desk.sub1' },
      { kind: 'once', source: direct, output: 'capture' },
    );
  }
  const faults = grouped.flatMap((player) => {
    const own = strip(player);
    return [
      () => sketch.spoil('main-left-on', player, `${own}.main`, { [`${own}.main`]: true }),
      () => sketch.spoil('assign-off', player, `${own}.sub1`, { [`${own}.sub1`]: false }),
      () => sketch.spoil('second-group', player, `${own}.sub2`, { [`${own}.sub2`]: true }),
      () =>
        sketch.spoil('assign-off', player, `${own}.sub1`, {
          [`${own}.sub1`]: false,
          [`${own}.main`]: true,
        }),
    ];
  });
  faults.push(
    () => sketch.spoil('group-off-main', one, 'desk.sub1.main', { 'desk.sub1.main': false }),
    () => sketch.spoil('group-down', one, 'desk.sub1.fader', { 'desk.sub1.fader': -Infinity }),
    () => sketch.spoil('group-muted', one, 'desk.sub1.mute', { 'desk.sub1.mute': true }),
  );
  if (hasParallel) {
    const own = strip(parallel);
    faults.push(
      () => sketch.spoil('parallel-only', parallel, `${own}.main`, { [`${own}.main`]: false }),
      () => sketch.spoil('assign-off', parallel, `${own}.sub2`, { [`${own}.sub2`]: false }),
      () => sketch.spoil('group-muted', parallel, 'desk.sub2.mute', { 'desk.sub2.mute': true }),
    );
  }
  pickFaults(stream, size.faults, faults);
  return sketch.draft(one, [
    'desk.*.sub1',
    'desk.*.sub2',
    'desk.*.main',
    'desk.sub1.fader',
    'desk.sub2.fader',
    'desk.sub1.mute',
    'desk.sub2.mute',
    ...(level > 2 ? ['desk.*.mute'] : []),
  ]);
}
