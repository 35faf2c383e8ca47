import type { StripTaps } from './read-strip.ts';
import type { Reading } from './reading.ts';
import { legs, type SetupData } from './setup-file.ts';
import { soloMode } from './solo.ts';

/** What is soloed to be listened to, else what is chosen; then mono and level. */
export function readControlRoom(
  reading: Reading,
  { rig }: SetupData,
  taps: ReadonlyMap<string, StripTaps>,
): void {
  const { desk } = rig;
  const at = 'desk.control';
  for (const { id } of desk.controlRoom?.inputs ?? []) reading.place(`${at}.${id}`, true);
  const listens = desk.solo?.some((mode) => mode !== 'in-place') ?? false;
  const mode = soloMode(reading, rig);
  const isSoloed = ({ id }: { readonly id: string }) => reading.on(`desk.${id}.solo`);
  const soloed: (readonly string[])[] = [];
  if (mode === 'pfl' || mode === 'afl') {
    for (const strip of desk.strips.filter(isSoloed)) {
      const tap = taps.get(strip.id);
      if (tap) soloed.push(mode === 'pfl' ? tap.pre : tap.end);
    }
  }
  if (listens) {
    for (const { id } of desk.auxes.filter(isSoloed)) soloed.push([`desk.${id}.out`]);
    for (const { id, takes } of desk.subgroups.filter(isSoloed)) {
      soloed.push(legs(`desk.${id}.mute`, takes === 'both'));
    }
  }
  const heard = reading.place(`${at}.listen`, true) as readonly [string, string];
  const chosen = reading.value<string>(`${at}.listen`, 'main');
  if (soloed.length > 0) for (const tap of soloed) reading.join(tap, heard, 1);
  else reading.join(legs(chosen === 'main' ? 'desk.main.out' : `${at}.${chosen}`, true), heard, 1);

  const mono = reading.place(`${at}.mono`, true);
  if (reading.on(`${at}.mono`)) {
    for (const leg of heard) reading.join([leg], mono, 0.5);
  } else reading.join(heard, mono, 1);
  const level = reading.chain(mono, `${at}.level`, reading.ratio(`${at}.level`));
  reading.hiss(reading.chain(level, `${at}.out`, 1), desk.noise.fader);
}
