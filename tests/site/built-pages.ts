import { existsSync, globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The built site. */
export const DIST = fileURLToPath(new URL('../../dist', import.meta.url));

/**
 * Addresses of all built pages, sorted: `dist/lessons/index.html` is `/lessons/`.
 *
 * @throws Error when the site has not been built.
 */
export function builtPages(): string[] {
  if (!existsSync(`${DIST}/index.html`)) {
    throw new Error('There is no built site to test. Run: npm run build');
  }
  return builtFiles('html')
    .map((path) => path.replace(/\/index\.html$/, '/'))
    .sort();
}

/** Addresses of all built files with this ending: `dist/schema/setup.json` is `/schema/setup.json`. */
export const builtFiles = (ending: string): string[] =>
  globSync(`**/*.${ending}`, { cwd: DIST }).map((file) => `/${file.replaceAll('\\', '/')}`);

/** The text of a built page. */
export const builtText = (address: string): string =>
  readFileSync(`${DIST}${address.endsWith('/') ? `${address}index.html` : address}`, 'utf8');
