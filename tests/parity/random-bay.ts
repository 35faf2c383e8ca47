import type { Random } from './random.ts';
import { type BayData, legs, type PointData, type SetupData, type Value } from './setup-file.ts';

const KINDS = ['full', 'half', 'open'] as const;

/**
 * Puts a patchbay into a setup: some of its cords become normals, or run through a mult; some inserts stand in its
 * rows; outputs of the room that were free hear what a normal or a mult splits off. No new loop comes of it.
 */
export function withBay(random: Random, setup: SetupData): SetupData {
  const defaults = { ...setup.rig.defaults };
  const board = { ...setup.board };
  const cords = (): [string, string][] =>
    Object.entries({ ...defaults, ...board }).filter((entry): entry is [string, string] =>
      /^out\.|^converter\.in|^(desk|rack)\.[^.]+\.in(\.[lr])?$|^desk\.control\.deck/.test(entry[0]),
    );
  const set = (input: string, value: Value) => {
    delete defaults[input];
    board[input] = value;
  };
  const unplug = (input: string) => {
    delete defaults[input];
    delete board[input];
  };
  const plugged = new Set(cords().map(([input]) => input));
  const free = setup.rig.outputs
    .flatMap(({ id, stereo }) => legs(`out.${id}`, stereo))
    .filter((jack) => !plugged.has(jack));

  const points = { full: [] as PointData[], half: [] as PointData[], open: [] as PointData[] };
  for (const [input, output] of random.shuffled(cords()).slice(0, 6)) {
    const kind = random.pick(KINDS);
    points[kind].push({ top: output, bottom: input });
    if (kind === 'open') continue;
    if (random.chance(0.2)) continue;
    unplug(input);
    // A plug in the top jack: it splits a half-normal, and breaks a full one.
    const listener = random.chance(kind === 'half' ? 0.8 : 0.2) ? free.pop() : undefined;
    if (listener) set(listener, output);
    if (random.chance(0.1)) set(input, 'open');
  }
  const onBay = new Set(KINDS.flatMap((kind) => points[kind].map(({ top }) => top)));
  for (const { id, takes } of setup.rig.desk.subgroups) {
    legs(`desk.${id}.insert.send`, takes === 'both').forEach((top) => {
      const bottom = top.replace('send', 'return');
      if (!onBay.has(top)) points[random.pick(KINDS)].push({ top, bottom });
    });
  }

  const mults: BayData['mults'][number][] = [];
  for (const [input, output] of random.shuffled(cords()).slice(0, 2)) {
    if (output === 'open' || output.startsWith('bay.')) continue;
    const id = `mult${mults.length + 1}`;
    mults.push({ id, label: id, outputs: 3 });
    set(`bay.${id}.in`, output);
    set(input, `bay.${id}.out1`);
    const listener = free.pop();
    if (listener) set(listener, `bay.${id}.out3`);
  }
  const bay: BayData = {
    rows: KINDS.flatMap((kind) =>
      points[kind].length > 0 ? [{ id: kind, label: kind, kind, points: points[kind] }] : [],
    ),
    mults,
    outputOhms: random.pick([50, 100, 600]),
    inputOhms: random.pick([600, 10_000, 20_000]),
  };
  return { ...setup, rig: { ...setup.rig, bay, defaults }, board };
}
