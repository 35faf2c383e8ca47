import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether ngspice is installed here. */
export const hasNgspice = spawnSync('ngspice', ['--version']).status === 0;

/** Voltages that ngspice prints, in the order they were asked for. @throws Error when it could not solve. */
export function runNgspice(netlist: string): number[] {
  const folder = mkdtempSync(join(tmpdir(), 'tap-and-sum-'));
  try {
    const file = join(folder, 'setup.cir');
    writeFileSync(file, netlist);
    const { stdout, stderr, status } = spawnSync('ngspice', ['-b', file], { encoding: 'utf8' });
    const said = `${stdout}\n${stderr}`;
    // It exits with 0 even then.
    if (status !== 0 || /singular matrix|error/i.test(said)) {
      throw new Error(`ngspice could not solve the netlist:\n${said.slice(-2000)}`);
    }
    return [...stdout.matchAll(/^v\(n\d+\) = (\S+)$/gm)].map(([, voltage]) => Number(voltage));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
