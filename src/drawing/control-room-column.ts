import { CONTROL_ROOM, controls, part, type Rig } from '../../simulator/index.ts';
import { bareColumn } from './bare-column.ts';
import type { ChoiceMark, Column, FaderSlot, WireLine } from './drawing.ts';
import { FADER, HEAD, SLOT } from './rows.ts';

/** How far above and below the slot of its level the wire goes on. */
const INSET = 12;
/** How far below its level the control room ends, and how much room the names there take. */
const FOOT = 24;
const NAMES = 56;

/** How deep the control room is drawn. */
export const controlRoomHeight = (rig: Rig): number =>
  HEAD + SLOT * (choicesOf(rig).length + 1) + FADER + FOOT + NAMES;

/** What it listens to, and what a solo does where that can be chosen. */
const choicesOf = (rig: Rig) =>
  [
    { address: part(CONTROL_ROOM, 'listen'), name: 'hears' },
    { address: part(CONTROL_ROOM, 'mode'), name: 'solo is' },
  ].filter(({ address }) => controls(rig).has(address));

/**
 * The control room: what it listens to, a mono switch, and a level, down to what is patched to it. No rail of
 * the desk passes it, so that it has heights of its own.
 */
export function controlRoomColumn(rig: Rig, x: number): Column {
  const at = (name: string) => part(CONTROL_ROOM, name);
  const role = 'control-room';
  const choices = choicesOf(rig).map(
    (choice, index): ChoiceMark => ({ ...choice, at: { x, y: HEAD + SLOT * (index + 0.5) } }),
  );
  const mono = HEAD + SLOT * (choices.length + 0.5);
  const top = mono + SLOT / 2 + INSET;
  const bottom = top + FADER - 2 * INSET;
  const foot = bottom + INSET + FOOT;
  const piece = (place: string, from: number, to: number): WireLine => ({
    place,
    role,
    points: [
      { x, y: from },
      { x, y: to },
    ],
  });
  const level: FaderSlot = {
    address: at('level'),
    before: at('mono'),
    x,
    top,
    bottom,
    from: top,
    to: bottom,
    partner: undefined,
  };
  return {
    ...bareColumn(CONTROL_ROOM, role, x),
    mark: 'Control',
    label: 'room',
    wires: [
      piece(at('listen'), HEAD, mono),
      piece(at('mono'), mono, top),
      piece(at('level'), bottom, foot),
    ],
    faders: [level],
    toggles: [{ address: at('mono'), word: 'mono', at: { x, y: mono } }],
    choices,
    foot: { x, y: foot },
  };
}
