import { abs, type Complex, complex, lusolve } from 'mathjs';
import { type Engine, largestEigenvalue } from './engines.ts';
import type { LinearSystem } from './setup-to-matrix.ts';
import { reachedBySome, ringsOf, type Stability, stabilityOf } from './stability.ts';

/** What another engine makes of a setup file at one frequency. */
export interface Elsewhere {
  readonly system: LinearSystem;
  /** Nodes that an unstable loop reaches: they have no level. */
  readonly unknown: ReadonlySet<number>;
  readonly loops: number;
  /** Power at each node of each source, that of the source where it enters being 1: by source, then node. */
  readonly powers: readonly (readonly number[])[];
}

/** How a loop is judged: by this system alone where nothing depends on frequency. */
export type Judge = (system: LinearSystem, ring: ReadonlySet<number>) => Stability;

/**
 * Solves a system: voltages as linear equations, then once more the powers that go through reverbs.
 *
 * @returns nothing where a loop cannot be judged from the equations alone.
 */
export function solveElsewhere(
  system: LinearSystem,
  engine: Engine,
  judge: Judge = stabilityOf,
): Elsewhere | undefined {
  const { network, nodes, indexOf, decorrelators } = system;
  const rings = ringsOf(system);
  const verdicts = rings.map((ring) => judge(system, ring));
  if (verdicts.includes('undecided')) return undefined;
  const unstable = new Set(rings.filter((_, index) => verdicts[index] === 'unstable'));

  const born = network.sources.map(({ node }) => indexOf.get(node) ?? -1);
  const columns = [...born, ...decorrelators.map(({ to }) => to)];
  const through = voltagesFrom(system, engine, columns).map((column) =>
    column.map((value) => Number(abs(value)) ** 2),
  );
  const wet = through.slice(born.length);
  const circulating = decorrelators.map(({ from }) => wet.map((column) => column[from] ?? 0));
  for (const ring of rings) {
    const own = decorrelators.flatMap(({ to }, index) => (ring.has(to) ? [index] : []));
    if (own.length === 0 || unstable.has(ring)) continue;
    const radius = largestEigenvalue(
      own.map((to) => own.map((from) => complex(circulating[to]?.[from] ?? 0, 0))),
    );
    if (Math.abs(radius - 1) < 1e-6) return undefined;
    if (radius > 1) unstable.add(ring);
  }
  const unknown = reachedBySome(
    system,
    [...unstable].flatMap((ring) => [...ring]),
  );
  const powers = born.map((_, source) => {
    const dry = through[source] ?? [];
    const entering = decorrelators.map(({ from, to }) => (unknown.has(to) ? 0 : (dry[from] ?? 0)));
    const shares = powersOfReverbs(
      circulating.map((row, to) =>
        row.map((value, from) =>
          unknown.has(decorrelators[to]?.to ?? -1) || unknown.has(decorrelators[from]?.to ?? -1)
            ? 0
            : value,
        ),
      ),
      entering,
    );
    return nodes.map((_node, node) =>
      wet.reduce(
        (sum, column, index) => sum + (column[node] ?? 0) * (shares[index] ?? 0),
        dry[node] ?? 0,
      ),
    );
  });
  return { system, unknown, loops: rings.length, powers };
}

/** Voltage ratios from some inputs to every node. Only nodes that one of them reaches are unknowns; the others are silent. */
function voltagesFrom(
  { nodes, entries, isReal, ...system }: LinearSystem,
  engine: Engine,
  inputs: readonly number[],
): Complex[][] {
  const reached = [...reachedBySome({ nodes, entries, isReal, ...system }, inputs)];
  const unknownOf = new Map(reached.map((node, unknown) => [node, unknown]));
  const at = (node: number) => unknownOf.get(node) ?? -1;
  const among = entries
    .filter(({ from }) => unknownOf.has(from))
    .map(({ from, to, ratio }) => ({ from: at(from), to: at(to), ratio }));
  const solved = engine(reached.length, among, inputs.map(at), isReal);
  return solved.map((column) => {
    const voltages = nodes.map(() => complex(0, 0));
    column.forEach((value, unknown) => {
      voltages[reached[unknown] ?? -1] = value;
    });
    return voltages;
  });
}

/** Powers that leave the reverbs: p = C p + e. */
function powersOfReverbs(
  circulating: readonly (readonly number[])[],
  entering: readonly number[],
): readonly number[] {
  if (entering.every((power) => power === 0)) return entering;
  const matrix = circulating.map((row, to) =>
    row.map((value, from) => (to === from ? 1 : 0) - value),
  );
  const solved = lusolve(matrix, [...entering]).valueOf() as (number | Complex)[][];
  return solved.map(([power]) => Number(power));
}
