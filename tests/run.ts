/**
 * Everything a reviewer would run, in one command: `npm test`.
 *
 * All stages run, whatever fails; what failed is listed at the end. The exit code is 1 if anything
 * failed. The last line counts tests, and each stage without tests as one.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Count, countTests } from './config/count-tests.ts';
import { runStages, type Stage, type StageResult } from './config/run-stages.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = `${root}/node_modules/.cache/tests`;

const reportOf = (name: string): string => `${reports}/${name}.json`;
const vitest = (project: string): string =>
  [
    `vitest run --config tests/config/vitest.config.ts --project ${project}`,
    `--reporter=default --reporter=json --outputFile.json="${reportOf(project)}"`,
  ].join(' ');

/** In the order they are shown at the end. `report` is where a stage with tests counts them. */
const STAGES: readonly (Stage & { report?: string })[] = [
  { name: 'build', command: 'node src/cli/astro.ts build' },
  {
    name: 'format and lint',
    command: 'biome check --error-on-warnings --config-path tests/config/biome.config.jsonc',
  },
  { name: 'direction of imports', command: 'node tests/config/check-imports.ts' },
  { name: 'types of the simulator', command: 'tsc -p simulator' },
  { name: 'unit tests', command: vitest('unit'), report: reportOf('unit') },
  { name: 'published values', command: vitest('published'), report: reportOf('published') },
  { name: 'other engines', command: vitest('parity'), report: reportOf('parity') },
  { name: 'what is heard', command: vitest('audition'), report: reportOf('audition') },
  { name: 'contract of the lessons', command: vitest('lessons'), report: reportOf('lessons') },
  // It writes the types of the content into the same place as the build.
  { name: 'types of the site', command: 'node src/cli/astro.ts check', after: ['build'] },
  { name: 'size budgets', command: 'node tests/config/check-sizes.ts', after: ['build'] },
  {
    name: 'browser tests',
    command: 'playwright test --config tests/config/playwright.config.ts',
    report: reportOf('browser'),
    after: ['build'],
    alone: true,
  },
];

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
const started = performance.now();
const results = await runStages(STAGES, { cwd: root, onEnd: printStage });
printEnd(results, (performance.now() - started) / 1000);

function printStage(result: StageResult): void {
  console.log(`\n──── ${headline(result)}`);
  if (result.output) console.log(result.output);
}

function headline({ name, outcome, seconds }: StageResult): string {
  return outcome === 'not run'
    ? `${name}: not run`
    : `${name}: ${outcome}, ${seconds.toFixed(1)} s`;
}

function printEnd(ended: readonly StageResult[], seconds: number): void {
  const counts = STAGES.map(({ name, report }) => {
    const result = ended.find((stage) => stage.name === name);
    return countTests(result?.outcome === 'passed', report);
  });
  const total = (key: keyof Count): number => counts.reduce((sum, count) => sum + count[key], 0);
  const failed = ended.filter(({ outcome }) => outcome !== 'passed');

  console.log(`\n──── all stages, ${seconds.toFixed(1)} s`);
  for (const { name } of STAGES) {
    const result = ended.find((stage) => stage.name === name);
    if (result) console.log(headline(result));
  }
  if (failed.length > 0) {
    console.log(`\nFailed: ${failed.map(({ name }) => name).join(', ')}. Their output is above.`);
  }
  const skipped = total('skipped') > 0 ? `, ${total('skipped')} skipped` : '';
  console.log(`\n${total('passed')} passed, ${total('failed')} failed${skipped}`);
  process.exitCode = failed.length > 0 ? 1 : 0;
}
