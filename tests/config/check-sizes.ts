/** Fails when a built page loads more JavaScript at first than its budget allows. */
import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { initialScripts } from './page-scripts.ts';

/** Budgets in bytes after gzip, as DEVELOPERS.md promises them; 1 kB is 1000 bytes. */
const BUDGET = { withIsland: 60_000, withoutIsland: 5_000 };
const SHOWN = 12;

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const zippedSizes = new Map<string, number>();

const read = (address: string): string => readFileSync(`${dist}${address}`, 'utf8');
const zipped = (text: string): number => gzipSync(text).length;
function zippedFile(address: string): number {
  const known = zippedSizes.get(address) ?? zipped(read(address));
  zippedSizes.set(address, known);
  return known;
}

const pages = globSync('**/*.html', { cwd: dist }).map((file) => {
  const address = `/${file.replaceAll('\\', '/')}`.replace(/index\.html$/, '');
  const scripts = initialScripts(readFileSync(`${dist}/${file}`, 'utf8'), address, read);
  const bytes = [...scripts.files.map(zippedFile), ...scripts.inline.map(zipped)];
  return {
    address,
    size: bytes.reduce((sum, size) => sum + size, 0),
    budget: scripts.hasIsland ? BUDGET.withIsland : BUDGET.withoutIsland,
  };
});

if (pages.length === 0) throw new Error('There is no built site to weigh. Run: npm run build');

const heaviestFirst = pages.toSorted((a, b) => b.size / b.budget - a.size / a.budget);
const over = heaviestFirst.filter(({ size, budget }) => size > budget);

const kB = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(6);
console.log('JavaScript at first load, gzip:    kB   of');
for (const { address, size, budget } of heaviestFirst.slice(0, Math.max(SHOWN, over.length))) {
  console.log(`  ${address.padEnd(30)} ${kB(size)} ${kB(budget)}${size > budget ? '  OVER' : ''}`);
}
console.log(`${pages.length} pages, ${over.length} over their budget.`);
process.exitCode = over.length > 0 ? 1 : 0;
