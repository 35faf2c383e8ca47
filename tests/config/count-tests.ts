import { existsSync, readFileSync } from 'node:fs';
import * as z from 'zod/mini';

export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** What is read of the JSON report of Vitest or of Playwright. */
const reportSchema = z.union([
  z.object({
    numPassedTests: z.number(),
    numFailedTests: z.number(),
    numPendingTests: z.number(),
    numTodoTests: z.number(),
  }),
  z.object({
    stats: z.object({
      expected: z.number(),
      unexpected: z.number(),
      flaky: z.number(),
      skipped: z.number(),
    }),
  }),
]);

/**
 * Tests of a stage. A stage without tests counts as one, and so does one that fails without a test
 * of it failing: a file that does not load, a browser that does not start.
 *
 * @param hasPassed whether the stage itself passed.
 * @param report file with the JSON report, for a stage that has tests.
 */
export function countTests(hasPassed: boolean, report?: string): Count {
  if (!report) return { passed: hasPassed ? 1 : 0, failed: hasPassed ? 0 : 1, skipped: 0 };
  const count = existsSync(report)
    ? countIn(reportSchema.parse(JSON.parse(readFileSync(report, 'utf8'))))
    : { passed: 0, failed: 0, skipped: 0 };
  return hasPassed || count.failed > 0 ? count : { ...count, failed: 1 };
}

function countIn(report: z.infer<typeof reportSchema>): Count {
  if ('stats' in report) {
    const { expected, unexpected, flaky, skipped } = report.stats;
    return { passed: expected, failed: unexpected + flaky, skipped };
  }
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = report;
  return {
    passed: numPassedTests,
    failed: numFailedTests,
    skipped: numPendingTests + numTodoTests,
  };
}
