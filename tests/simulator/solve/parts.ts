import type { Circuit, Law, Wire } from '../../../simulator/circuit/circuit.ts';

/** A bare circuit of stages that sum, `s0` and so on, from its wires: from, to and ratio. */
export function circuitOf(
  count: number,
  connections: readonly (readonly [from: number, to: number, ratio?: number])[],
  laws: Readonly<Record<number, Law>> = {},
): Circuit {
  const wires: Wire[][] = Array.from({ length: count }, () => []);
  for (const [from, to, ratio = 1] of connections) wires[to]?.push({ from, ratio });
  const stages = Array.from({ length: count }, (_, index) => ({
    id: `s${index}`,
    place: `s${index}`,
    leg: undefined,
    law: laws[index] ?? ({ kind: 'sum' } as const),
  }));
  return {
    stages,
    wires,
    signals: [],
    stagesAt: new Map(stages.map(({ id }, index) => [id, [index]])),
    active: new Map(),
  };
}
