import type { Random } from './random.ts';
import { randomBox } from './random-box.ts';
import { randomDesk } from './random-desk.ts';
import { type Kinds, kin } from './random-kinds.ts';
import type { DeviceData, DeviceKind, RigData } from './setup-file.ts';

/** The strips behind this share of them are returns: what comes back from devices and buses goes there. */
const RETURNS = 0.25;
const RETURNS_WITH_LOOPS = 0.4;

/** A random rig as plain data; where its controls stand is not in it. As many strips as tracks are for what the box plays. */
export function randomRig(random: Random, kinds: Kinds): RigData {
  const stripCount = random.int(...kinds.strips);
  const share = kinds.loops ? RETURNS_WITH_LOOPS : RETURNS;
  const returns = Math.max(1, Math.floor(stripCount * share));
  const trackCount = Math.max(1, stripCount - returns - random.int(0, 1));
  const deviceCount = random.int(kinds.devices.length > 1 ? 2 : 1, 2 + Math.ceil(stripCount / 5));
  return {
    id: 'random',
    label: 'A random room',
    ...randomBox(random, kinds, trackCount),
    desk: randomDesk(random, stripCount, trackCount),
    rack: kin(deviceCount, 'dev').map((one) => ({ ...one, ...device(random, kinds.devices) })),
    outputs: [
      { id: 'capture', label: 'Capture', stereo: true },
      ...kin(random.int(1, 3), 'phones').map((one) => ({
        ...one,
        stereo: random.chance(0.4),
        ...(random.chance(0.3) ? { noiseDbu: random.decimal(-110, -80) } : {}),
      })),
    ],
    defaults: {},
  };
}

function device(random: Random, kinds: readonly DeviceKind[]): Omit<DeviceData, 'id' | 'label'> {
  const kind = random.pick(kinds);
  const inputs = random.pick([1, 1, 2] as const);
  const outputs = kind === 'reverb' && random.chance(0.6) ? 2 : inputs;
  return {
    kind,
    inputs,
    outputs,
    level: random.chance(0.3) ? 'minus10' : 'plus4',
    ...(random.chance(0.3) ? { noiseDbu: random.decimal(-110, -80) } : {}),
  };
}
