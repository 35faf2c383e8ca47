import { test as base, expect } from '@playwright/test';

/**
 * Playwright's `test`, in which a page must also keep quiet: an error in the console, an uncaught
 * exception, a failed request or a request to another origin fails the test that caused it. What
 * the content security policy refuses is such an error: Chromium writes it to the console.
 */
export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ context, baseURL }, use) => {
      const noise: string[] = [];
      const home = new URL(baseURL ?? '').origin;

      context.on('console', (message) => {
        if (message.type() === 'error') noise.push(`Console: ${message.text()}`);
      });
      context.on('weberror', (error) => {
        const { name, message, stack } = error.error();
        // The browser may give up the transition from one page to the next; both are shown all the same.
        if (name === 'InvalidStateError' && message.startsWith('Transition was aborted')) return;
        noise.push(`Exception: ${stack ?? message}`);
      });
      context.on('requestfailed', (request) => {
        // Leaving a page drops what it was still loading, and that is nobody's fault.
        if (request.failure()?.errorText === 'net::ERR_ABORTED') return;
        noise.push(`Failed: ${request.url()} ${request.failure()?.errorText}`);
      });
      context.on('request', (request) => {
        const { origin, protocol } = new URL(request.url());
        if (/^https?:$/.test(protocol) && origin !== home) {
          noise.push(`Other origin: ${request.url()}`);
        }
      });

      await use(undefined);
      expect(noise, 'a page must keep quiet').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
