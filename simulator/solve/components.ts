import type { Circuit } from '../circuit/circuit.ts';

/**
 * The stages of a circuit in an order in which each comes after all that it depends on, with those that
 * depend on one another taken together: its strongly connected components.
 *
 * A stage depends on the stages at its open wires, and a compressor on those that it listens to.
 * Tarjan's algorithm, which yields the components in this very order.
 */
export function componentsInOrder({ stages, wires }: Circuit): number[][] {
  const components: number[][] = [];
  const found = new Int32Array(stages.length).fill(-1);
  const lowest = new Int32Array(stages.length);
  const open: number[] = [];
  const isOpen = new Uint8Array(stages.length);
  let count = 0;

  const dependOn = (stage: number, on: number) => {
    if (found[on] === -1) {
      visit(on);
      lowest[stage] = Math.min(lowest[stage] ?? 0, lowest[on] ?? 0);
    } else if (isOpen[on]) {
      lowest[stage] = Math.min(lowest[stage] ?? 0, found[on] ?? 0);
    }
  };
  const visit = (stage: number) => {
    found[stage] = count;
    lowest[stage] = count;
    count += 1;
    open.push(stage);
    isOpen[stage] = 1;
    for (const { from, ratio } of wires[stage] ?? []) if (ratio !== 0) dependOn(stage, from);
    const law = stages[stage]?.law;
    if (law?.kind === 'compressor') for (const heard of law.listensTo) dependOn(stage, heard);
    if (lowest[stage] !== found[stage]) return;
    const component = open.splice(open.lastIndexOf(stage));
    for (const member of component) isOpen[member] = 0;
    components.push(component);
  };
  for (let stage = 0; stage < stages.length; stage += 1) if (found[stage] === -1) visit(stage);
  return components;
}
