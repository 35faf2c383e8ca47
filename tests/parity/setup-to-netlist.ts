import { type Network, nodesOf } from './network.ts';
import { foldRatios, panRatios } from './pan-ratios.ts';
import type { SetupData } from './setup-file.ts';
import { setupToNetwork } from './setup-to-network.ts';

/** A setup file as a netlist, and the numbers of its nodes by their names. */
export interface Netlist {
  readonly text: string;
  readonly network: Network;
  readonly numberOf: ReadonlyMap<string, number>;
}

/**
 * Writes a flat, linear setup file as a circuit for SPICE: every node a stack of voltage-controlled voltage
 * sources, one for each connection into it, with a resistor to ground. One source after the other is set to
 * 1 V, and the voltages of the wanted nodes are printed.
 *
 * @throws RangeError for a setup that holds anything but gains.
 */
export function setupToNetlist(setup: SetupData, wanted: readonly string[]): Netlist {
  const network = setupToNetwork(setup);
  const numberOf = new Map<string, number>();
  const at = (node: string): number => {
    const number = numberOf.get(node) ?? numberOf.size + 1;
    numberOf.set(node, number);
    return number;
  };
  const into = new Map(nodesOf(network).map((node): [number, string[]] => [at(node), []]));
  const connect = (from: string, to: string, ratio: number) => {
    if (ratio !== 0) into.get(at(to))?.push(`n${at(from)} 0 ${ratio.toExponential(17)}`);
  };
  for (const part of network.parts) {
    if (part.kind === 'gain') connect(part.from, part.to, part.ratio);
    else if (part.kind === 'pan') {
      panRatios(part.law, part.position).forEach((ratio, leg) => {
        connect(part.from, part.to[leg] ?? '', ratio);
      });
    } else if (part.kind === 'fold') {
      const { fromLeft, fromRight } = foldRatios(part.position);
      [fromLeft, fromRight].forEach((ratios, side) => {
        ratios.forEach((ratio, leg) => {
          connect(part.from[side] ?? '', part.to[leg] ?? '', ratio);
        });
      });
    } else throw new RangeError(`Expected gains only, but got ${part.kind}.`);
  }
  const sources = network.sources.map(({ node }) => at(node));
  const lines = [
    '* written from a setup file',
    ...sources.map((number, index) => `Vs${index} n${number} 0 0`),
    ...[...into].flatMap(([number, controls]) =>
      sources.includes(number) ? [] : stack(number, controls),
    ),
    ...[...into.keys()].map((number) => `Rg${number} n${number} 0 1k`),
    '.control',
    'set numdgt=15',
    ...sources.flatMap((_, index) => [
      ...(index > 0 ? [`alter Vs${index - 1} = 0`] : []),
      `alter Vs${index} = 1`,
      'op',
      ...wanted.map((node) => `print v(n${at(node)})`),
    ]),
    'quit',
    '.endc',
    '.end',
  ];
  return { text: `${lines.join('\n')}\n`, network, numberOf };
}

/** Sources one on top of the other from a node down to ground: their voltages add up. */
function stack(number: number, controls: readonly string[]): string[] {
  if (controls.length === 0) return [`Vz${number} n${number} 0 0`];
  return controls.map((control, index) => {
    const top = index === 0 ? `n${number}` : `m${number}x${index}`;
    const bottom = index === controls.length - 1 ? '0' : `m${number}x${index + 1}`;
    return `E${number}x${index} ${top} ${bottom} ${control}`;
  });
}
