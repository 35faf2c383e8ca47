import { FADER_FLOOR, FADER_TOP } from '../units/fader.ts';
import { db, UNITY } from '../units/level.ts';
import { type Address, type Owner, ownerOf, part } from './address.ts';
import type { Control, Option } from './control.ts';
import { ownerLabel, partLabel } from './labels.ts';
import type { Rig } from './schema.ts';

/**
 * What all controls have: the owner, the address and the names.
 *
 * @param at the owner, or a part of it that has controls of its own: a plug-in.
 */
export const named = (rig: Rig, at: Address, name: string) => {
  const address = part(at, name);
  const owner = ownerOf(address);
  return {
    owner,
    address,
    ownerLabel: ownerLabel(rig, owner),
    label: partLabel(rig, address),
  };
};

/** A switch, off unless said otherwise. */
export const toggle = (rig: Rig, owner: Owner, name: string, initial = false): Control => ({
  kind: 'switch',
  ...named(rig, owner, name),
  default: initial,
});

/** A gain on the fader's taper, which closes at the bottom. */
export const fader = (rig: Rig, owner: Owner, name: string, initial: number = UNITY): Control => ({
  kind: 'gain',
  ...named(rig, owner, name),
  unit: 'dB',
  min: FADER_FLOOR,
  max: FADER_TOP,
  closes: true,
  default: initial,
});

/** A gain that does not close, in dB, `reach` to either side of unity. */
export const trim = (rig: Rig, owner: Owner, name: string, reach = 20): Control => ({
  kind: 'gain',
  ...named(rig, owner, name),
  unit: 'dB',
  min: db(-reach),
  max: db(reach),
  closes: false,
  default: UNITY,
});

/** A pan, at the centre. */
export const pan = (rig: Rig, owner: Owner): Control => ({
  kind: 'pan',
  ...named(rig, owner, 'pan'),
  default: 0,
});

/** One of several options. */
export const choice = (
  rig: Rig,
  owner: Owner,
  name: string,
  options: readonly Option[],
  initial: string,
): Control => ({ kind: 'choice', ...named(rig, owner, name), options, default: initial });

/** Where a send is taken, after the fader unless said otherwise. @param send the name of the send on its owner. */
export const tapSwitch = (rig: Rig, owner: Owner, send: string): Control =>
  choice(
    rig,
    owner,
    part(send, 'tap'),
    [
      { value: 'pre', label: 'before the fader' },
      { value: 'post', label: 'after the fader' },
    ],
    'post',
  );
