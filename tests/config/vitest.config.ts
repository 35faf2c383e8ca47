import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Folders of tests that are a stage of their own in `tests/run.ts`; the rest are unit tests. */
const STAGES = ['published', 'parity', 'audition', 'lessons'];

const project = (name: string, include: string[], exclude: string[] = []) => ({
  extends: true as const,
  test: { name, include, exclude },
});

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    // Properties and processes take their time on a machine that is busy.
    testTimeout: 30_000,
    // A folder of tests may still be empty.
    passWithNoTests: true,
    // Files share what they import, which takes a third of the time; each puts back what it changes.
    isolate: false,
    projects: [
      project(
        'unit',
        ['tests/**/*.test.ts'],
        ['site', 'bench', ...STAGES].map((folder) => `tests/${folder}/**`),
      ),
      ...STAGES.map((folder) => project(folder, [`tests/${folder}/**/*.test.ts`])),
    ],
    coverage: {
      provider: 'v8',
      include: ['simulator/**/*.ts', 'src/**/*.ts'],
      reportsDirectory: 'node_modules/.cache/coverage',
    },
  },
});
