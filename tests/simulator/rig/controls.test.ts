import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { misfitOf, NONE, OPEN } from '../../../simulator/rig/control.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { jacks } from '../../../simulator/rig/jacks.ts';
import { fullLabel } from '../../../simulator/rig/labels.ts';
import { normals } from '../../../simulator/rig/normals.ts';
import { arbitraryRig, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const list = [...controls(rig).values()];

describe('controls()', () => {
  test('lists a control under its own address, each address once', () => {
    fc.assert(
      fc.property(arbitraryRig(), (random) => {
        const all = controls(random);
        for (const [address, control] of all) expect(control.address).toBe(address);
        const { inputs } = jacks(random);
        const cords = [...all.values()].filter(({ kind }) => kind === 'cord');
        expect(cords.map(({ address }) => address)).toEqual(inputs);
      }),
      RUNS,
    );
  });

  test('gives every control a default that fits it, and options that differ', () => {
    fc.assert(
      fc.property(arbitraryRig(), (random) => {
        for (const control of controls(random).values()) {
          expect(misfitOf(control, control.default)).toBeUndefined();
          if (!('options' in control)) continue;
          const values = control.options.map(({ value }) => value);
          expect(new Set(values).size).toBe(values.length);
        }
      }),
      RUNS,
    );
  });

  test('offers a cord nothing but "none", the output jacks, and an open plug where there is a normal', () => {
    fc.assert(
      fc.property(arbitraryRig(), (random) => {
        const { outputs } = jacks(random);
        for (const control of controls(random).values()) {
          if (control.kind !== 'cord') continue;
          const open = normals(random).into.has(control.address) ? [OPEN] : [];
          const values = control.options.map(({ value }) => value);
          expect(values).toEqual([NONE, ...outputs, ...open]);
        }
      }),
      RUNS,
    );
  });

  test('names every control in full: no label is empty, no two are the same', () => {
    fc.assert(
      fc.property(arbitraryRig(), (random) => {
        const all = [...controls(random).values()];
        for (const { ownerLabel, label } of all) {
          expect(ownerLabel.trim()).not.toBe('');
          expect(label.trim()).not.toBe('');
        }
        const names = all.map(({ ownerLabel, label }) => `${ownerLabel} ${label}`);
        expect(new Set(names).size).toBe(names.length);
      }),
      RUNS,
    );
  });

  test('names every option: no label is empty, no two of one control are the same', () => {
    for (const control of list) {
      if (!('options' in control)) continue;
      const labels = control.options.map(({ label }) => label);
      expect(labels.every((label) => label.trim() !== '')).toBe(true);
      expect(new Set(labels).size).toBe(labels.length);
    }
  });

  test('gives the same list for the same rig, and takes defaults from the rig', () => {
    expect(controls(rig)).toBe(controls(rig));
    expect(controls(rig).get('box.organ.to')?.default).toBe('out3-4');
    const shut = smallRoom((text) => `${text}  desk.c.fader: -.inf\n`);
    expect(controls(shut).get('desk.c.fader')?.default).toBe(-Infinity);
  });

  test('offers a bus of the box only to tracks and to earlier buses', () => {
    const optionsOf = (address: string) => {
      const control = controls(rig).get(address);
      return control && 'options' in control ? control.options.map(({ value }) => value) : [];
    };
    const buses = (address: string) =>
      optionsOf(address).filter((value) => ['stack', 'heap'].includes(value));
    expect(buses('box.viola.to')).toEqual(['stack', 'heap']);
    expect(buses('box.stack.to')).toEqual(['heap']);
    expect(buses('box.heap.to')).toEqual([]);
    expect(optionsOf('box.main.to')).toEqual([
      'none',
      'out1-2',
      'out2-3',
      'out3-4',
      'out4-5',
      'out5-6',
    ]);
  });

  test('puts a tap switch only where the tap of the aux can be switched', () => {
    const taps = list.flatMap(({ address }) => (address.endsWith('.tap') ? [address] : []));
    expect(taps).toEqual([
      'desk.a.wash.tap',
      'desk.b.wash.tap',
      'desk.c.wash.tap',
      'desk.w.wash.tap',
    ]);
  });
});

describe('jacks()', () => {
  test('has no jack twice, nor one that is both input and output', () => {
    fc.assert(
      fc.property(arbitraryRig(), (random) => {
        const { inputs, outputs } = jacks(random);
        const all = [...inputs, ...outputs];
        expect(new Set(all).size).toBe(all.length);
      }),
      RUNS,
    );
  });

  test('gives legs to what is stereo: a wide strip, a bus, a device with two', () => {
    const { inputs, outputs } = jacks(rig);
    expect(inputs).toContain('desk.a.insert.return');
    expect(inputs).toContain('desk.w.insert.return.r');
    expect(inputs).toContain('desk.band.insert.return.l');
    expect(inputs).toContain('rack.twin.in.r');
    expect(inputs).toContain('rack.hall.in');
    expect(outputs).toContain('rack.hall.out.l');
    expect(outputs).toContain('desk.ears.out');
    expect(outputs.filter((jack) => jack.startsWith('converter.'))).toHaveLength(6);
  });

  test('gives no insert jacks to a strip without an insert', () => {
    const bare = smallRoom((text) =>
      text.replace(
        '[trim, insert, fader, mute, pan]\n      taps: { pre: insert',
        '[trim, fader, mute, pan]\n      taps: { pre: trim',
      ),
    );
    const all = [...jacks(bare).inputs, ...jacks(bare).outputs];
    expect(all.filter((jack) => jack.startsWith('desk.w.insert'))).toEqual([]);
  });
});

describe('fullLabel()', () => {
  test.each([
    ['desk.a.fader', 'Strip A Viola fader'],
    ['desk.w.pan', 'Strip W Hall return balance'],
    ['desk.w.in.l', 'Strip W Hall return line input left'],
    ['converter.out3', 'Output 3'],
  ])('%s is %s', (address, name) => {
    expect(fullLabel(rig, address)).toBe(name);
  });
});
