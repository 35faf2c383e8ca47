import { posix } from 'node:path';
import { init, parse } from 'es-module-lexer';

await init;

/** The JavaScript that a built page loads without anybody doing anything. */
export interface PageScripts {
  /** Addresses of script files from the root of the site, each once. */
  readonly files: readonly string[];
  /** Scripts written into the page itself. */
  readonly inline: readonly string[];
  /** Whether the page has an island: a component that comes to life. */
  readonly hasIsland: boolean;
}

/**
 * Scripts that a page loads at first: its own, its islands', and all that these import statically.
 * A dynamic import waits for somebody to need it, and does not count.
 *
 * @param html the built page.
 * @param address the page's address, for relative ones: `/lessons/sends/`.
 * @param read the text of a script file by its address from the root of the site.
 */
export function initialScripts(
  html: string,
  address: string,
  read: (address: string) => string,
): PageScripts {
  const inline: string[] = [];
  const entries: string[] = [];
  for (const [, attributes = '', text = ''] of html.matchAll(
    /<script\b([^>]*)>(.*?)<\/script>/gs,
  )) {
    const type = attribute(attributes, 'type');
    if (type && type !== 'module' && type !== 'text/javascript') continue;
    const source = attribute(attributes, 'src');
    if (source) entries.push(posix.resolve(address, source));
    else {
      inline.push(text);
      if (type === 'module') entries.push(...staticImports(text, address));
    }
  }

  const islands = [...html.matchAll(/<astro-island\b([^>]*)>/g)].map(([, written = '']) => written);
  for (const island of islands) {
    for (const name of ['component-url', 'renderer-url', 'before-hydration-url']) {
      const source = attribute(island, name);
      if (source) entries.push(posix.resolve(address, source));
    }
  }

  return { files: withImports(entries, read), inline, hasIsland: islands.length > 0 };
}

/** Files, and all that they import statically, each once. */
function withImports(entries: readonly string[], read: (address: string) => string): string[] {
  const seen = new Set<string>();
  const waiting = [...entries];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (seen.has(file)) continue;
    seen.add(file);
    waiting.push(...staticImports(read(file), posix.dirname(file)));
  }
  return [...seen].sort();
}

function staticImports(script: string, folder: string): string[] {
  const NOT_DYNAMIC = -1;
  const [imports] = parse(script);
  return imports.flatMap(({ d, n }) => (d === NOT_DYNAMIC && n ? [posix.resolve(folder, n)] : []));
}

const attribute = (written: string, name: string): string | undefined =>
  new RegExp(`\\s${name}="([^"]*)"`).exec(written)?.[1];
