import { expect, test } from 'vitest';
import { inParallel, loadedRatio, type Ohms } from '../../simulator/index.ts';
import { hasNgspice, runNgspice } from './run-ngspice.ts';

const SOURCE = 100;
const LOAD = 10_000;
const COUNTS = [1, 2, 3, 4, 8];

test.skipIf(!hasNgspice)('loadedRatio() of 1 to 8 inputs side by side agrees with ngspice', () => {
  const netlist = [
    '* one source of 100 ohms into so many inputs of 10 kilohms',
    'Vs s 0 1',
    ...COUNTS.flatMap((count) => [
      `Ro${count} s n${count} ${SOURCE}`,
      ...Array.from({ length: count }, (_, input) => `Ri${count}x${input} n${count} 0 ${LOAD}`),
    ]),
    '.control',
    'set numdgt=15',
    'op',
    ...COUNTS.map((count) => `print v(n${count})`),
    'quit',
    '.endc',
    '.end',
  ];
  const voltages = runNgspice(`${netlist.join('\n')}\n`);
  expect(voltages).toHaveLength(COUNTS.length);
  COUNTS.forEach((count, index) => {
    const ratio = loadedRatio(SOURCE as Ohms, inParallel(LOAD as Ohms, count));
    expect(ratio).toBeCloseTo(voltages[index] ?? Number.NaN, 10);
  });
});
