import { db, dbu } from '../units/level.ts';
import type { Address } from './address.ts';
import type { Control, Option } from './control.ts';
import { choice, fader, named, trim } from './control-makers.ts';
import type { Device, Rig } from './schema.ts';

/** Positions of a compressor's ratio switch. `inf` limits. */
export const RATIOS = ['1.5', '2', '3', '4', '6', '10', 'inf'] as const;

/** Positions of a high-pass filter, in hertz; `off` lets everything pass. */
export const HIGHPASS = ['off', '30', '60', '90', '130', '200', '300'] as const;

/** Positions of an equaliser's middle band, in hertz. */
export const MID_BAND = ['250', '500', '800', '1250', '2000', '3150', '5000'] as const;

/** Positions of a delay's time switch, in milliseconds. */
export const DELAY_TIMES = [
  '0.1',
  '0.5',
  '1',
  '2',
  '5',
  '8',
  '20',
  '60',
  '120',
  '250',
  '500',
] as const;

/** How far an equaliser lifts or lowers a band, in dB. */
const BAND_REACH = 15;

/**
 * The controls of a kind of device, in signal order.
 *
 * @param owner the device of the rack, or the address of the plug-in.
 */
export function deviceControls(rig: Rig, owner: Address, kind: Device['kind']): Control[] {
  switch (kind) {
    case 'gain':
      return [trim(rig, owner, 'gain')];
    case 'reverb':
      return [trim(rig, owner, 'level')];
    case 'compressor':
      return [
        {
          kind: 'gain',
          ...named(rig, owner, 'threshold'),
          unit: 'dBu',
          min: dbu(-40),
          max: dbu(20),
          closes: false,
          default: 0,
        },
        choice(rig, owner, 'ratio', RATIOS.map(ratioOption), '4'),
        { ...trim(rig, owner, 'knee'), min: db(0), max: db(24) } as Control,
        trim(rig, owner, 'makeup'),
      ];
    case 'equaliser':
      return [
        choice(rig, owner, 'highpass', HIGHPASS.map(hertzOption), 'off'),
        trim(rig, owner, 'low', BAND_REACH),
        choice(rig, owner, 'mid-frequency', MID_BAND.map(hertzOption), '1250'),
        trim(rig, owner, 'mid', BAND_REACH),
        trim(rig, owner, 'high', BAND_REACH),
      ];
    case 'delay':
      return [
        choice(
          rig,
          owner,
          'time',
          DELAY_TIMES.map((time) => ({ value: time, label: `${time} ms` })),
          '120',
        ),
        { ...fader(rig, owner, 'feedback', -Infinity), max: db(0) } as Control,
        trim(rig, owner, 'level'),
      ];
  }
}

const ratioOption = (ratio: string): Option => ({
  value: ratio,
  label: ratio === 'inf' ? '∞ : 1' : `${ratio} : 1`,
});

const hertzOption = (value: string): Option => ({
  value,
  label: value === 'off' ? 'off' : `${value} Hz`,
});
