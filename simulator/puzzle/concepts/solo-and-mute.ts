import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { effectCords, type MonoPlayer, PLATE, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** What a solo does to the mix and what it does to the monitors. */
export function soloAndMute(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const rig = roomOf({
    players,
    auxes: ['post'],
    rack: [PLATE],
    returns: ['Plate return'],
    solo: ['in-place', 'pfl', 'afl'],
    outputs: [{ id: 'monitors', label: 'Monitors', stereo: true }],
    defaults: {
      ...effectCords('plate', 'aux1', 'ret1'),
      'out.monitors.l': 'desk.control.out.l',
      'out.monitors.r': 'desk.control.out.r',
    },
  });
  const sketch = new Sketch(rig);
  const [one, other, third] = stream.shuffled(players) as [MonoPlayer, MonoPlayer, MonoPlayer];
  const strip = (player: MonoPlayer) => `desk.ch${players.indexOf(player) + 1}`;
  const [own, theirs] = [strip(one), strip(other)];
  const wish = stream.pick(level === 1 ? (['everyone', 'alone'] as const) : WISHES);
  sketch.stand({ [`${own}.aux1`]: -stream.int(3, 9) });
  if (wish === 'in-place') {
    sketch.stand({ [`${own}.solo`]: true, 'desk.ret1.safe': true });
    sketch.ask(
      { code: 'alone-with-effect', sources: [one], at: 'out.capture', also: ['rack.plate'] },
      { kind: 'dry-and-through', source: one, output: 'capture', through: 'rack.plate' },
      { kind: 'absent', source: other, output: 'capture' },
      { kind: 'absent', source: third, output: 'capture' },
    );
  } else {
    sketch.ask(
      { code: 'everyone', sources: players, at: 'out.capture' },
      ...players.map((source) => ({ kind: 'once', source, output: 'capture' }) as const),
    );
  }
  if (wish === 'alone') {
    sketch.stand({ 'desk.control.mode': stream.pick(['pfl', 'afl']), [`${own}.solo`]: true });
    sketch.ask(
      { code: 'alone', sources: [one], at: 'out.monitors' },
      { kind: 'once', source: one, output: 'monitors' },
      { kind: 'absent', source: other, output: 'monitors' },
      { kind: 'absent', source: third, output: 'monitors' },
    );
  }
  pickFaults(stream, size.faults, faultsFor(wish));
  return sketch.draft(one, [
    'desk.*.solo',
    'desk.*.mute',
    'desk.control.mode',
    ...(level > 1 ? ['desk.*.safe', 'desk.*.main'] : []),
  ]);

  function faultsFor(asked: (typeof WISHES)[number]): (() => boolean)[] {
    const common = [
      () => sketch.spoil('muted', one, `${own}.mute`, { [`${own}.mute`]: true }),
      () => sketch.spoil('solo-left', other, `${theirs}.solo`, { [`${theirs}.solo`]: true }),
    ];
    switch (asked) {
      case 'everyone':
        return [
          ...common,
          () =>
            sketch.spoil('muted', third, `${strip(third)}.mute`, {
              [`${strip(third)}.mute`]: true,
            }),
        ];
      case 'alone':
        return [
          ...common,
          () =>
            sketch.spoil('solo-mode', one, 'desk.control.mode', {
              'desk.control.mode': 'in-place',
            }),
          () => sketch.spoil('solo-missing', one, `${own}.solo`, { [`${own}.solo`]: false }),
          () =>
            sketch.spoil('solo-mode', one, 'desk.control.mode', {
              'desk.control.mode': 'in-place',
              [`${own}.solo`]: false,
            }),
        ];
      case 'in-place':
        return [
          ...common,
          () => sketch.spoil('not-safe', one, 'desk.ret1.safe', { 'desk.ret1.safe': false }),
          () => sketch.spoil('solo-mode', one, 'desk.control.mode', { 'desk.control.mode': 'pfl' }),
          () => sketch.spoil('solo-missing', one, `${own}.solo`, { [`${own}.solo`]: false }),
        ];
    }
  }
}

const WISHES = ['everyone', 'alone', 'in-place'] as const;
