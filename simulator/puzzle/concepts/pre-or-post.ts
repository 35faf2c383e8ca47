import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import {
  effectCords,
  HEADPHONES_A,
  HEADPHONES_B,
  type MonoPlayer,
  PLATE,
  roomOf,
  seated,
} from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** Headphones that hold still while the mix moves, and an effect that goes along with it. */
export function preOrPost(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const rig = roomOf({
    players,
    auxes: ['switchable', 'pre', 'switchable'],
    rack: [PLATE],
    returns: ['Plate return'],
    outputs: [HEADPHONES_A, HEADPHONES_B],
    defaults: { ...effectCords('plate', 'aux3', 'ret1'), 'out.headphones-a': 'desk.aux1.out' },
  });
  const sketch = new Sketch(rig);
  const faults: (() => boolean)[] = [];
  const wanting = stream.shuffled(players);
  const wishes = level === 1 ? 1 : level;
  const kinds = stream.shuffled(['phones', 'effect', stream.pick(['phones', 'effect'])]);
  wanting.slice(0, wishes).forEach((player, index) => {
    if (kinds[index] === 'phones') askForPhones(player);
    else askForEffect(player);
  });
  pickFaults(stream, size.faults, faults);
  const ofStrip = ['aux1', 'aux1.tap', 'aux2', 'aux3', 'aux3.tap', 'fader'];
  return sketch.draft(wanting[0] ?? 'tenor', [
    ...players.flatMap((player) => ofStrip.map((control) => `${stripOf(player)}.${control}`)),
    ...(sketch.isFree({ 'rack.plate.in': 'none' }) ? [] : ['rack.plate.in']),
  ]);

  function askForPhones(player: MonoPlayer): void {
    const own = stripOf(player);
    const probe = { move: 'fader', of: player, byDb: -10 } as const;
    sketch.stand({
      [`${own}.fader`]: -stream.int(2, 9),
      [`${own}.aux1`]: -stream.int(2, 8),
      [`${own}.aux1.tap`]: 'pre',
    });
    sketch.ask(
      { code: 'holds-still', sources: [player], at: 'out.headphones-a' },
      { kind: 'steady', source: player, output: 'headphones-a', probe, toleranceDb: 0.1 },
      { kind: 'around', source: player, output: 'headphones-a', by: 3 },
    );
    askForMix(player);
    faults.push(
      () => sketch.spoil('taken-after', player, `${own}.aux1.tap`, { [`${own}.aux1.tap`]: 'post' }),
      () => sketch.spoil('send-closed', player, `${own}.aux1`, { [`${own}.aux1`]: -Infinity }),
      () =>
        sketch.spoil('taken-after', player, `${own}.aux1.tap`, {
          [`${own}.aux1.tap`]: 'post',
          [`${own}.aux1`]: stream.int(2, 8),
        }),
      () =>
        sketch.spoil('send-level', player, `${own}.aux1`, { [`${own}.aux1`]: -stream.int(18, 26) }),
    );
  }

  function askForEffect(player: MonoPlayer): void {
    const own = stripOf(player);
    const probe = { move: 'fader', of: player, byDb: -10 } as const;
    const send = -stream.int(3, 9);
    sketch.stand({ [`${own}.fader`]: -stream.int(0, 4), [`${own}.aux3`]: send });
    sketch.ask(
      { code: 'effect-follows', sources: [player], at: 'rack.plate' },
      { kind: 'follows', source: player, output: 'rack.plate.in', probe, toleranceDb: 0.1 },
      { kind: 'follows', source: player, output: 'capture', probe, toleranceDb: 0.1 },
      { kind: 'dry-and-through', source: player, output: 'capture', through: 'rack.plate' },
      { kind: 'around', source: player, output: 'rack.plate.in', by: 4 },
    );
    askForMix(player);
    faults.push(
      () => sketch.spoil('taken-before', player, `${own}.aux3.tap`, { [`${own}.aux3.tap`]: 'pre' }),
      () => sketch.spoil('send-closed', player, `${own}.aux3`, { [`${own}.aux3`]: -Infinity }),
      () =>
        sketch.spoil('fixed-rail', player, 'rack.plate.in', {
          'rack.plate.in': 'desk.aux2.out',
          [`${own}.aux2`]: send,
          [`${own}.aux3`]: -Infinity,
        }),
    );
  }

  /** In the mix the player stays as loud as all is meant. */
  function askForMix(player: MonoPlayer): void {
    sketch.ask(
      { code: 'as-loud', sources: [player], at: 'out.capture' },
      { kind: 'around', source: player, output: stripPan(player), by: 1 },
    );
  }

  function stripOf(player: MonoPlayer): string {
    return `desk.ch${players.indexOf(player) + 1}`;
  }
  function stripPan(player: MonoPlayer): string {
    return `${stripOf(player)}.main`;
  }
}
