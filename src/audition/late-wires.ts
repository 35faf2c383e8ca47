import type { Solution } from '../../simulator/index.ts';

/** Names a wire by the stages that it joins. */
export const wireName = (from: number, to: number): string => `${from} ${to}`;

/**
 * The wires that close a loop without a delay in it. Web Audio plays a loop only with a delay of at least one
 * block, 128 frames; so these wires have to come later. A loop that has a delay of its own needs none.
 *
 * Each is the last wire of a walk against the signal that comes back to where it is already.
 */
export function lateWires({ circuit, order }: Solution): ReadonlySet<string> {
  const late = new Set<string>();
  for (const component of order) {
    const members = new Set(component.filter((stage) => !delays(stage)));
    const done = new Set<number>();
    const under = new Set<number>();
    const walk = (stage: number) => {
      under.add(stage);
      for (const { from, ratio } of circuit.wires[stage] ?? []) {
        if (ratio === 0 || !members.has(from)) continue;
        if (under.has(from)) late.add(wireName(from, stage));
        else if (!done.has(from)) walk(from);
      }
      under.delete(stage);
      done.add(stage);
    };
    for (const stage of members) if (!done.has(stage)) walk(stage);
  }
  return late;

  function delays(stage: number): boolean {
    const law = circuit.stages[stage]?.law;
    return law?.kind === 'delay' && law.time > 0;
  }
}
