import { isOn, numberAt, type Setup } from '../board/board.ts';
import type { Address } from '../rig/address.ts';
import { db, ratioOf } from '../units/level.ts';

/** Voltage ratio of a gain control; 0 where it is closed. */
export const gainRatio = (setup: Setup, address: Address): number =>
  ratioOf(db(numberAt(setup, address)));

/** Ratio of an assign or a feed: 1 where it is on, 0 where it is off. */
export const switchRatio = (setup: Setup, address: Address): number =>
  isOn(setup, address) ? 1 : 0;

/** Ratio of a mute: 0 where it is on. */
export const muteRatio = (setup: Setup, address: Address): number => (isOn(setup, address) ? 0 : 1);

/** Ratio of a polarity switch: −1 where it is on. */
export const polarityRatio = (setup: Setup, address: Address): number =>
  isOn(setup, address) ? -1 : 1;
