import { type Complex, complex, multiply } from 'mathjs';
import { largestEigenvalue } from './engines.ts';
import type { LinearSystem } from './setup-to-matrix.ts';

/**
 * What circulates: dies away, grows, or cannot be told from the equations alone. The last is a loop with
 * several rings of different signs: there it depends on how long each of them takes.
 */
export type Stability = 'stable' | 'unstable' | 'undecided';

/** Eigenvalues nearer to 1 than this decide nothing. */
const MARGIN = 1e-6;

/** Sets of nodes that feed one another, through reverbs too; those of one node without a ring are left out. */
export function ringsOf(system: LinearSystem): ReadonlySet<number>[] {
  const edges = [...system.entries, ...system.decorrelators];
  const forward = neighbours(edges.map(({ from, to }) => [from, to]));
  const backward = neighbours(edges.map(({ from, to }) => [to, from]));
  const core = cycleCore(system.nodes.length, forward, backward);
  const rings: Set<number>[] = [];
  const done = new Set<number>();
  for (const node of core) {
    if (done.has(node)) continue;
    const before = reachedFrom([node], backward, core);
    const ring = new Set([...reachedFrom([node], forward, core)].filter((one) => before.has(one)));
    for (const one of ring) done.add(one);
    const isRing = ring.size > 1 || (forward.get(node) ?? []).includes(node);
    if (isRing) rings.push(ring);
  }
  return rings;
}

/** Nodes that something open leads to from these, or that a compressor turns down by them. */
export function reachedBySome(system: LinearSystem, from: Iterable<number>): Set<number> {
  const edges = [...system.entries, ...system.decorrelators, ...system.sideChains];
  return reachedFrom(from, neighbours(edges.map((edge) => [edge.from, edge.to])));
}

type Neighbours = ReadonlyMap<number, readonly number[]>;

function neighbours(pairs: readonly (readonly [number, number])[]): Neighbours {
  const found = new Map<number, number[]>();
  for (const [from, to] of pairs) {
    const list = found.get(from);
    if (list) list.push(to);
    else found.set(from, [to]);
  }
  return found;
}

/** What is left when nodes that nothing comes to, or that lead nowhere, are taken away again and again. */
function cycleCore(size: number, forward: Neighbours, backward: Neighbours): Set<number> {
  const core = new Set(Array.from({ length: size }, (_, node) => node));
  const isOpen = (node: number, side: Neighbours) =>
    (side.get(node) ?? []).some((one) => core.has(one));
  for (let before = -1; before !== core.size; ) {
    before = core.size;
    for (const node of core) {
      if (!isOpen(node, forward) || !isOpen(node, backward)) core.delete(node);
    }
  }
  return core;
}

function reachedFrom(
  start: Iterable<number>,
  side: Neighbours,
  within?: ReadonlySet<number>,
): Set<number> {
  const reached = new Set(start);
  for (const node of reached) {
    for (const next of side.get(node) ?? []) if (!within || within.has(next)) reached.add(next);
  }
  return reached;
}

/** Whether voltages that circulate among some nodes die away, all frequencies being alike. */
export function stabilityOf(system: LinearSystem, ring: ReadonlySet<number>): Stability {
  const matrix = condensed(system, ring, (ratio) => ratio);
  const sizes = condensed(system, ring, ({ re, im }) => complex(Math.hypot(re, im), 0));
  const bound = largestEigenvalue(sizes);
  if (bound < 1 - MARGIN) return 'stable';
  const isPositive = matrix.every((row) => row.every(({ re, im }) => re >= 0 && im === 0));
  if (!isPositive && matrix.length > 1) return 'undecided';
  return bound > 1 + MARGIN ? 'unstable' : 'undecided';
}

/**
 * The matrix of some nodes with all those eliminated that have no ring through themselves alone and only
 * one neighbour before or behind them: a plain ring becomes one number, its gain once round.
 */
export function condensed(
  system: LinearSystem,
  ring: ReadonlySet<number>,
  ratioOf: (ratio: Complex) => Complex,
): Complex[][] {
  const into = new Map<number, Map<number, Complex>>();
  const outOf = new Map<number, Map<number, Complex>>();
  for (const node of ring) {
    into.set(node, new Map());
    outOf.set(node, new Map());
  }
  const add = (from: number, to: number, ratio: Complex) => {
    const before = into.get(to)?.get(from) ?? complex(0, 0);
    const sum = complex(before.re + ratio.re, before.im + ratio.im);
    into.get(to)?.set(from, sum);
    outOf.get(from)?.set(to, sum);
  };
  for (const { from, to, ratio } of system.entries) {
    if (ring.has(from) && ring.has(to)) add(from, to, ratioOf(ratio));
  }
  for (let before = -1; before !== into.size; ) {
    before = into.size;
    for (const [node, sources] of into) {
      const targets = outOf.get(node) ?? new Map<number, Complex>();
      if (sources.has(node) || (sources.size > 1 && targets.size > 1)) continue;
      for (const [from, first] of sources) {
        for (const [to, second] of targets) add(from, to, multiply(first, second) as Complex);
      }
      for (const from of sources.keys()) outOf.get(from)?.delete(node);
      for (const to of targets.keys()) into.get(to)?.delete(node);
      into.delete(node);
      outOf.delete(node);
    }
  }
  const left = [...into.keys()];
  return left.map((to) => left.map((from) => into.get(to)?.get(from) ?? complex(0, 0)));
}
