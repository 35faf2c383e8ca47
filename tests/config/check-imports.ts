/** Fails when an import runs against the direction of the project. Cycles are Biome's to find. */
import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { brokenRule } from './import-rules.ts';
import { importsOf } from './read-imports.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const files = globSync('{simulator,lessons,src,tests}/**/*.{ts,tsx,js,mjs,astro,mdx}', {
  cwd: root,
}).map((path) => path.replaceAll('\\', '/'));

const broken = files.sort().flatMap((file) =>
  importsOf(file, readFileSync(`${root}/${file}`, 'utf8')).flatMap((found) => {
    const rule = brokenRule(found);
    return rule ? [`${file}:${found.line} imports '${found.specifier}', but ${rule}`] : [];
  }),
);

for (const message of broken) console.error(message);
console.log(`${files.length} files, ${broken.length} imports in the wrong direction.`);
process.exitCode = broken.length > 0 ? 1 : 0;
