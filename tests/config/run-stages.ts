import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { delimiter, join } from 'node:path';

/** A command that passes when it exits with 0. */
export interface Stage {
  readonly name: string;
  /** One line for the shell; commands of installed packages are found by name. */
  readonly command: string;
  /** Names of stages that must have passed before. */
  readonly after?: readonly string[];
  /** Runs with nothing beside it, because it measures time or fills the machine by itself. */
  readonly alone?: boolean;
}

export interface StageResult {
  readonly name: string;
  /** `not run` when a stage that it comes after did not pass. */
  readonly outcome: 'passed' | 'failed' | 'not run';
  readonly seconds: number;
  /** All that it printed, in order. */
  readonly output: string;
}

interface Options {
  readonly cwd: string;
  /** Called as soon as a stage has ended, once for each. */
  readonly onEnd: (result: StageResult) => void;
  /** How many stages run at a time. */
  readonly places?: number;
}

/**
 * Runs all stages, as many at a time as the machine has room for, each as early as it may.
 *
 * @returns results in the order the stages ended.
 */
export async function runStages(
  stages: readonly Stage[],
  { cwd, onEnd, places = Math.min(availableParallelism(), 3) }: Options,
): Promise<StageResult[]> {
  const ended: StageResult[] = [];
  const waiting = [...stages];
  const running = new Map<string, Promise<void>>();
  let isAlone = false;

  const end = (result: StageResult): void => {
    ended.push(result);
    onEnd(result);
  };
  const outcomeOf = (name: string) => ended.find((result) => result.name === name)?.outcome;
  const mayStart = ({ after = [], alone = false }: Stage): boolean =>
    after.every((name) => outcomeOf(name) === 'passed') &&
    !isAlone &&
    running.size < (alone ? 1 : places);

  while (waiting.length > 0 || running.size > 0) {
    const stage = waiting.find(({ after = [] }) =>
      after.some((name) => outcomeOf(name) !== undefined && outcomeOf(name) !== 'passed'),
    );
    if (stage) {
      waiting.splice(waiting.indexOf(stage), 1);
      end({ name: stage.name, outcome: 'not run', seconds: 0, output: '' });
      continue;
    }
    const next = waiting.find(mayStart);
    if (next) {
      waiting.splice(waiting.indexOf(next), 1);
      isAlone = next.alone ?? false;
      const run = runStage(next, cwd).then((result) => {
        running.delete(next.name);
        if (next.alone) isAlone = false;
        end(result);
      });
      running.set(next.name, run);
      continue;
    }
    if (running.size === 0) {
      const names = waiting.map(({ name }) => name).join(', ');
      throw new Error(`Each stage must come after stages of the list, but these cannot: ${names}.`);
    }
    await Promise.race(running.values());
  }
  return ended;
}

function runStage({ name, command }: Stage, cwd: string): Promise<StageResult> {
  const { promise, resolve } = Promise.withResolvers<StageResult>();
  const started = performance.now();
  const output: Buffer[] = [];
  const child = spawn(command, {
    cwd,
    shell: true,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...process.env,
      // The commands write into a buffer; what they may colour depends on where it goes in the end.
      ...(process.stdout.isTTY ? { FORCE_COLOR: '1' } : { NO_COLOR: '1' }),
      PATH: [join(cwd, 'node_modules', '.bin'), process.env['PATH']].join(delimiter),
    },
  });
  child.stdout.on('data', (chunk: Buffer) => output.push(chunk));
  child.stderr.on('data', (chunk: Buffer) => output.push(chunk));
  child.on('close', (code) =>
    resolve({
      name,
      outcome: code === 0 ? 'passed' : 'failed',
      seconds: (performance.now() - started) / 1000,
      output: Buffer.concat(output).toString('utf8').trim(),
    }),
  );
  return promise;
}
