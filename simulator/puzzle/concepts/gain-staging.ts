import { type Draft, Sketch } from '../draft.ts';
import { type DrillLevel, SIZES } from '../drill-name.ts';
import { LINE, type MonoPlayer, roomOf, seated } from '../loft-room.ts';
import type { RandomStream } from '../random-stream.ts';
import { pickFaults } from './pick-faults.ts';

/** Each stage has its level: behind the trim, into the device, and in the mix. */
export function gainStaging(stream: RandomStream, level: DrillLevel): Draft {
  const size = SIZES[level];
  const players = seated(stream, size.players);
  const rig = roomOf({ players, rack: [LINE] });
  const sketch = new Sketch(rig);
  const staged = (stream.shuffled(players) as MonoPlayer[]).slice(0, level);
  const faults: (() => boolean)[] = [];
  staged.forEach((player, index) => {
    const own = stripOf(player);
    const [trim, fader] = [`${own}.trim`, `${own}.fader`];
    const trimmed = 4 + Math.max(0, -levelAtInput(player));
    sketch.stand({ [trim]: Math.min(12, trimmed), [fader]: -stream.int(0, 8) });
    sketch.ask(
      { code: 'at-level', sources: [player], at: trim },
      { kind: 'around', source: player, output: trim, by: 2 },
    );
    if (index === 0 && level > 1) askForDevice(player);
    sketch.ask(
      { code: 'as-loud', sources: [player], at: 'out.capture' },
      { kind: 'around', source: player, output: 'capture', by: 1.5 },
    );
    const low = -stream.int(8, 14);
    faults.push(
      () => sketch.spoil('trim-off', player, trim, { [trim]: low }),
      () => sketch.spoil('trim-off', player, trim, { [trim]: low, [fader]: 8 }),
      () => sketch.spoil('fader-off', player, fader, { [fader]: -stream.int(16, 28) }),
    );
  });
  pickFaults(stream, size.faults, faults);
  return sketch.draft(staged[0] ?? 'tenor', [
    'desk.*.trim',
    'desk.*.fader',
    ...(level > 1 ? ['rack.line.gain', 'desk.*.mute'] : []),
    ...(level > 2 ? ['desk.*.polarity'] : []),
  ]);

  /** The line amplifier in the insert of a strip. */
  function askForDevice(player: MonoPlayer): void {
    const own = stripOf(player);
    const lifted = stream.int(2, 6);
    sketch.stand({
      'rack.line.in': `${own}.insert.send`,
      [`${own}.insert.return`]: 'rack.line.out',
      'rack.line.gain': lifted,
    });
    sketch.ask(
      { code: 'at-level', sources: [player], at: 'rack.line.gain' },
      { kind: 'around', source: player, output: 'rack.line.gain', by: 2 },
    );
    faults.push(
      () => sketch.spoil('device-off', player, 'rack.line.gain', { 'rack.line.gain': lifted + 11 }),
      () => sketch.spoil('device-off', player, 'rack.line.gain', { 'rack.line.gain': lifted - 12 }),
    );
  }
  function stripOf(player: MonoPlayer): string {
    return `desk.ch${players.indexOf(player) + 1}`;
  }
  function levelAtInput(player: MonoPlayer): number {
    const track = rig.box.tracks.find(({ id }) => id === player);
    return (track?.levelDbfs ?? 0) + rig.converter.fullScaleDbu;
  }
}
