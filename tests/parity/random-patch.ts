import type { Random } from './random.ts';
import type { Kinds } from './random-kinds.ts';
import { assignsOf, auxesOf, typeOf } from './read-strip.ts';
import { type DeviceData, legs, type RigData, type StripData, type Value } from './setup-file.ts';

/** Cords, with each jack used once. */
export class Patch {
  readonly cords: Record<string, string> = {};
  readonly #taken = new Set<string>();

  plug(inputs: readonly string[], outputs: readonly string[]): boolean {
    const pairs = inputs.map(
      (input, index) => [input, outputs[index] ?? outputs[0] ?? ''] as const,
    );
    if (pairs.length === 0) return false;
    if (pairs.some(([input, output]) => !this.isFree(input) || !this.isFree(output))) return false;
    if (new Set(pairs.map(([, output]) => output)).size < pairs.length) return false;
    for (const [input, output] of pairs) {
      this.cords[input] = output;
      this.#taken.add(output);
    }
    return true;
  }

  isFree(jack: string): boolean {
    return !(jack in this.cords) && !this.#taken.has(jack);
  }
}

/** Whether a strip is for what comes back, and not for what the box plays. */
export const isReturn = ({ box, desk }: RigData, { id }: StripData): boolean =>
  desk.strips.findIndex((strip) => strip.id === id) >= box.tracks.length;

/** Plugs a room at random. @returns what capture tracks of the box record and play back to, by address. */
export function patchRoom(
  random: Random,
  rig: RigData,
  patch: Patch,
  kinds: Kinds,
): Record<string, Value> {
  patchStrips(random, rig, patch);
  patchDevices(random, rig, patch);
  const captures = patchCaptures(random, rig, patch, kinds);
  patchBuses(random, rig, patch, kinds);
  patchOutputs(random, rig, patch);
  return captures;
}

/** Strips that take what the box plays; the others are for what comes back. */
function patchStrips(random: Random, rig: RigData, patch: Patch): void {
  let line = 1;
  for (const strip of rig.desk.strips.filter((one) => !isReturn(rig, one))) {
    for (const jack of legs(`desk.${strip.id}.in`, typeOf(rig, strip).stereo)) {
      if (line <= rig.converter.outputs && random.chance(0.95)) {
        patch.plug([jack], [`converter.out${line}`]);
        line += 1;
      }
    }
  }
}

/** Plugs outputs into the next return that is free. */
function comeUp(rig: RigData, patch: Patch, outputs: readonly string[]): void {
  const jacksOf = (strip: StripData) => legs(`desk.${strip.id}.in`, typeOf(rig, strip).stereo);
  const strip = rig.desk.strips.find(
    (one) => isReturn(rig, one) && jacksOf(one).every((jack) => patch.isFree(jack)),
  );
  if (strip) patch.plug(jacksOf(strip).slice(0, outputs.length), outputs);
}

/** Direct outs of strips that the box plays on, each with its legs. */
const directOuts = (rig: RigData): (readonly string[])[] =>
  rig.desk.strips.flatMap((strip) => {
    const { directOut, stages, stereo } = typeOf(rig, strip);
    if (directOut === undefined || isReturn(rig, strip)) return [];
    const isStereo = stereo || stages.indexOf(directOut) >= stages.indexOf('pan');
    return [legs(`desk.${strip.id}.direct`, isStereo)];
  });

const subgroupOuts = ({ desk }: RigData): (readonly string[])[] =>
  desk.subgroups.map(({ id, takes }) => legs(`desk.${id}.out`, takes === 'both'));

const auxOuts = ({ desk }: RigData): (readonly string[])[] =>
  desk.auxes.map(({ id }) => [`desk.${id}.out`]);

/** Devices stand in inserts, or between an aux or a direct out and a return. */
function patchDevices(random: Random, rig: RigData, patch: Patch): void {
  const { strips, subgroups } = rig.desk;
  const inserts = [
    ...strips
      .filter((strip) => typeOf(rig, strip).stages.includes('insert'))
      .map((strip) => ({ owner: `desk.${strip.id}`, stereo: typeOf(rig, strip).stereo })),
    ...subgroups.map(({ id, takes }) => ({ owner: `desk.${id}`, stereo: takes === 'both' })),
    { owner: 'desk.main', stereo: true },
  ];
  for (const device of rig.rack) {
    const [ins, outs] = [deviceJacks(device, 'in'), deviceJacks(device, 'out')];
    const source = random
      .shuffled([...auxOuts(rig), ...directOuts(rig)])
      .find((outputs) => outputs.every((jack) => patch.isFree(jack)));
    const fits = inserts.filter(
      ({ owner, stereo }) =>
        stereo === (ins.length === 2) &&
        patch.isFree(legs(`${owner}.insert.send`, stereo)[0] ?? ''),
    );
    if (fits.length > 0 && (!source || random.chance(0.5))) {
      const { owner, stereo } = random.pick(fits);
      const sends = legs(`${owner}.insert.send`, stereo);
      patch.plug(ins, sends);
      // Now and then nothing returns: the strip passes straight on then.
      if (random.chance(0.9))
        patch.plug(legs(`${owner}.insert.return`, stereo), outs.slice(0, sends.length));
    } else if (source) {
      patch.plug(ins.slice(0, source.length), source);
      comeUp(rig, patch, outs);
    }
  }
}

const deviceJacks = ({ id, inputs, outputs }: DeviceData, side: 'in' | 'out') =>
  legs(`rack.${id}.${side}`, (side === 'in' ? inputs : outputs) === 2);

/** Some capture tracks play back to a return: without loops not what returns themselves come to. */
function patchCaptures(
  random: Random,
  rig: RigData,
  patch: Patch,
  kinds: Kinds,
): Record<string, Value> {
  const values: Record<string, Value> = {};
  const { captures } = rig.box;
  captures.forEach(({ id, stereo }, index) => {
    const first = 2 * index + 1;
    const line = rig.converter.outputs - 2 * captures.length + first;
    const before = [...directOuts(rig), ...auxOuts(rig), ...subgroupOuts(rig)];
    const behind = [legs('desk.main.out', true), legs('desk.control.out', true)].slice(
      0,
      rig.desk.controlRoom ? 2 : 1,
    );
    const isBefore = random.chance(0.7);
    const fed = random
      .shuffled(isBefore ? before : behind)
      .find((outputs) => outputs.every((jack) => patch.isFree(jack)));
    if (fed) {
      const ins = [`converter.in${first}`, `converter.in${first + 1}`];
      patch.plug(ins.slice(0, fed.length), fed);
    }
    values[`box.${id}.in`] = stereo ? `in${first}-${first + 1}` : `in${first}`;
    if ((isBefore || kinds.loops) && random.chance(0.7)) {
      values[`box.${id}.to`] = stereo ? `out${line}-${line + 1}` : `out${line}`;
      comeUp(
        rig,
        patch,
        stereo ? [`converter.out${line}`, `converter.out${line + 1}`] : [`converter.out${line}`],
      );
    }
  });
  return values;
}

/** Subgroups come up on returns, above all those that go nowhere else; where loops are allowed, auxes do too. */
function patchBuses(random: Random, rig: RigData, patch: Patch, kinds: Kinds): void {
  const back = [
    ...(kinds.loops ? auxOuts(rig) : []),
    ...subgroupOuts(rig),
    ...(kinds.loops && rig.desk.controlRoom ? [legs('desk.control.out', true)] : []),
  ];
  for (const outputs of random.shuffled(back).slice(0, 3)) {
    if (random.chance(0.6)) comeUp(rig, patch, outputs);
  }
}

/** The main bus or the control room is captured; the other outputs get an aux, a subgroup, a direct out or nothing. */
function patchOutputs(random: Random, rig: RigData, patch: Patch): void {
  const { controlRoom } = rig.desk;
  const isControl = controlRoom !== undefined && random.chance(0.3);
  patch.plug(
    legs('out.capture', true),
    legs(isControl ? 'desk.control.out' : 'desk.main.out', true),
  );
  for (const { id } of controlRoom?.inputs ?? []) {
    const spare = rig.converter.outputs - 2 * rig.box.captures.length;
    const sources = [...auxOuts(rig), ...subgroupOuts(rig), [`converter.out${spare}`]];
    const fed = random.pick(sources);
    if (fed.every((jack) => patch.isFree(jack)))
      patch.plug(legs(`desk.control.${id}`, true).slice(0, fed.length), fed);
  }
  for (const { id, stereo } of rig.outputs.slice(1)) {
    const jacks = legs(`out.${id}`, stereo);
    const buses = [...auxOuts(rig), ...subgroupOuts(rig), ...directOuts(rig)]
      .concat(controlRoom ? [legs('desk.control.out', true)] : [])
      .filter((outputs) => outputs.every((jack) => patch.isFree(jack)));
    if (buses.length === 0) continue;
    const outputs = random.pick(buses);
    patch.plug(jacks.slice(0, outputs.length), outputs);
  }
}

/** Ids of the auxes and buses that a strip may be sent and assigned to; without loops a return goes to the main bus alone. */
export function routesOf(rig: RigData, strip: StripData, kinds: Kinds) {
  const type = typeOf(rig, strip);
  const mayGoOn = kinds.loops || !isReturn(rig, strip);
  return {
    auxes: auxesOf(rig, type),
    sends: mayGoOn ? auxesOf(rig, type) : [],
    assigns: mayGoOn ? assignsOf(rig, type).filter((id) => id !== 'main') : [],
    main: assignsOf(rig, type).includes('main'),
  };
}
