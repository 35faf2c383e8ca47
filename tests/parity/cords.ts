import type { BayData, SetupData, Value } from './setup-file.ts';

/** A connection from an output jack to an input jack, with what it loses by the inputs that share the output. */
export interface Cord {
  readonly output: string;
  readonly input: string;
  readonly ratio: number;
}

/**
 * What feeds the input jacks of a setup file: cords, and the normals that nothing breaks, by the documentation of
 * the format. Mults that feed themselves are not looked for.
 */
export function cordsAndNormals(setup: SetupData, inputs: readonly string[]): Cord[] {
  const { bay, defaults } = setup.rig;
  const values: Record<string, Value> = { ...defaults, ...setup.board };
  const used = new Set(inputs.map((input) => values[input]));
  const joints = inputs.flatMap((input) => {
    const value = values[input] ?? 'none';
    if (value === 'open') return [];
    if (value !== 'none') return [{ input, output: String(value) }];
    const output = normalInto(bay, input, used);
    return output === undefined ? [] : [{ input, output }];
  });
  const loadsOn = (output: string): number =>
    joints
      .filter((joint) => joint.output === output)
      .map(({ input }) => {
        const mult = bay?.mults.find(({ id }) => input === `bay.${id}.in`);
        if (!mult) return 1;
        return multOuts(mult).reduce((sum, out) => sum + loadsOn(out), 0);
      })
      .reduce((sum, count) => sum + count, 0);
  return joints.map(({ input, output }) => {
    const isSplit = !output.startsWith('bay.') && bay !== undefined;
    return { input, output, ratio: isSplit ? lossOf(bay, loadsOn(output)) : 1 };
  });
}

export const multOuts = ({ id, outputs }: BayData['mults'][number]): string[] =>
  Array.from({ length: outputs }, (_, index) => `bay.${id}.out${index + 1}`);

/** The output jack that an input is normalled to, where no plug breaks it. */
function normalInto(
  bay: BayData | undefined,
  input: string,
  used: ReadonlySet<Value | undefined>,
): string | undefined {
  for (const { kind, points } of bay?.rows ?? []) {
    const point = points.find(({ bottom }) => bottom === input);
    if (!point) continue;
    const isBroken = kind === 'open' || (kind === 'full' && used.has(point.top));
    return isBroken ? undefined : point.top;
  }
  return input.includes('.insert.return') ? input.replace('return', 'send') : undefined;
}

/** Current through what several inputs are together, over that through one: levels are those into one. */
function lossOf({ outputOhms, inputOhms }: BayData, count: number): number {
  if (count <= 1) return 1;
  return (outputOhms + inputOhms) / (count * outputOhms + inputOhms);
}
