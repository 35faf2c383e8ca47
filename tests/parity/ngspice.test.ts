import { expect, test } from 'vitest';
import { levelOf, parseSetup, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { SILENT_BELOW, Tally } from './comparison.ts';
import { randomSetup } from './random-setup.ts';
import { hasNgspice, runNgspice } from './run-ngspice.ts';
import type { SetupData } from './setup-file.ts';
import { setupToMatrix } from './setup-to-matrix.ts';
import { setupToNetlist } from './setup-to-netlist.ts';
import { ringsOf, stabilityOf } from './stability.ts';

/** Whether every loop dies away: a circuit without time cannot tell that. */
const isStable = (setup: SetupData): boolean => {
  const system = setupToMatrix(setup, 1000);
  return ringsOf(system).every((ring) => stabilityOf(system, ring) === 'stable');
};

/** Its figures are doubles; below this share of the source, what is left of a cancellation is rounding. */
const NGSPICE_SILENT_BELOW = 180;

if (!hasNgspice)
  console.warn('SKIPPED: there is no ngspice here. Install it to run 20 rigs through it.');

test.skipIf(!hasNgspice)(
  'levels agree with ngspice on 20 random rigs, to 0.0001 dB',
  {
    timeout: 120_000,
  },
  () => {
    const tally = new Tally(RUNS.ngspice);
    for (let seed = 4001; tally.rigs < 20; seed += 1) {
      const setup = randomSetup(seed, { strips: [2, 16], devices: ['gain'], loops: seed % 2 > 0 });
      if (!isStable(setup)) continue;
      tally.rigs += 1;
      if (ringsOf(setupToMatrix(setup, 1000)).length > 0) tally.looped += 1;
      compareRig(tally, setup, seed);
    }
    holdAgainstFile('ngspice', tally);
    expect(tally.looped).toBeGreaterThanOrEqual(3);
  },
);

/** Every source at every output and bus. */
function compareRig(tally: Tally, setup: SetupData, seed: number): void {
  const { rig } = setup;
  const places = [
    ...rig.outputs.map(({ id }) => `out.${id}`),
    ...rig.desk.auxes.map(({ id }) => `desk.${id}.out`),
    ...rig.desk.subgroups.map(({ id }) => `desk.${id}.out`),
    'desk.main.out',
    ...(rig.desk.controlRoom ? ['desk.control.out'] : []),
    ...rig.box.captures.map(({ id }) => `box.${id}.in`),
  ];
  const nodesAt = setupToNetlist(setup, []).network.places;
  const wanted = places.flatMap((place) => nodesAt.get(place) ?? []);
  const { text, network } = setupToNetlist(setup, wanted);
  const voltages = runNgspice(text);
  expect(voltages).toHaveLength(network.sources.length * wanted.length);

  const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
  for (const { id, levelDbfs } of rig.box.tracks) {
    const born = levelDbfs + rig.converter.fullScaleDbu;
    for (const place of places) {
      let power = 0;
      network.sources.forEach(({ track }, source) => {
        if (track !== id) return;
        for (const node of nodesAt.get(place) ?? []) {
          power += (voltages[source * wanted.length + wanted.indexOf(node)] ?? Number.NaN) ** 2;
        }
      });
      const floor = born - Math.min(SILENT_BELOW, NGSPICE_SILENT_BELOW);
      const where = `setup ${seed}, ${id} at ${place}`;
      tally.compare(where, levelOf(solution, id, place), 10 * Math.log10(power) + born, floor);
    }
  }
}
