import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig, fontProviders } from 'astro/config';
import { minify } from 'terser';
import { passages } from './src/components/lesson/passages.ts';

const FONT_FILES = '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght';

/** Code of others that no page has a use for, and what stands in for it. */
const EMPTIED = [
  { file: 'vite/preload-helper', code: 'export const __vitePreload = (load) => load();' },
  { file: 'xstate-dev.esm', code: 'export const devToolsAdapter = () => {};' },
];
/**
 * Nothing is preloaded: what comes later is fetched before anybody needs it, and the code for preloads
 * would weigh more than it saves. Astro sets this option itself; only a plugin comes after it.
 */
const WITHOUT_WHAT_NOBODY_USES = {
  name: 'without-what-nobody-uses',
  enforce: 'pre',
  // What would make them is left out as well, so that code which comes later cannot bring styles of its own.
  load: (id) => EMPTIED.find(({ file }) => id.includes(file))?.code,
  configEnvironment: (name) =>
    name === 'client' ? { build: { modulePreload: false } } : undefined,
};

/** The client of islands looks for signals, of which there are none; without them it is half as long. */
const WITHOUT_SIGNALS = {
  name: 'without-signals',
  enforce: 'pre',
  transform: (code, id) =>
    /astrojs.preact.dist.client\.js/.test(id)
      ? { code: code.replace('element.dataset.preactSignals', 'undefined'), map: null }
      : undefined,
};

/** What the bundler wraps around an import that comes later, for the preloads that nothing here has. */
const WRAPPED =
  /__vitePreload\((?:async \(\) => \{\s*const \{[^}]*\} = await (import\("[^"]+"\)(?:\.then\(.*?\))?);\s*return \{[^}]*\};\s*\}|\(\) => (import\("[^"]+"\)(?:\.then\(.*?\))?)), __VITE_PRELOAD__\)/g;
const WRAPPER = /import \{ \w+ as __vitePreload \} from "[^"]+";/;
function unwrapped(chunk) {
  const code = chunk.replaceAll(WRAPPED, '$1$2');
  return code.includes('__vitePreload(') ? code : code.replace(WRAPPER, '');
}

/** Two minifiers, one after the other, make what is loaded at first a hundredth smaller than either alone. */
const MINIFIED_TWICE = {
  name: 'minified-twice',
  applyToEnvironment: ({ name }) => name === 'client',
  renderChunk: async (chunk) => {
    const { code } = await minify(unwrapped(chunk), {
      module: true,
      ecma: 2022,
      compress: { passes: 3 },
    });
    return { code, map: null };
  },
};

/** What some pages with a desk have no use for; it stays out of the file that all of them share. */
const OF_SOME_PAGES =
  /desk.(whole-room|use-fragment|later-measurements)|(setup|drill)-fragment|desk-parts|drill-names|new-seed|simulator.puzzle/;
const OF_TASKS = /desk.(TaskDesk|QuizCard|use-task|\w+Form|answer-form)|grade.task-machine/;
const isOfDesk = (id) => !OF_SOME_PAGES.test(id) && !OF_TASKS.test(id);

export default defineConfig({
  output: 'static',
  srcDir: './src',
  publicDir: './src/public',
  outDir: './dist',
  cacheDir: './node_modules/.cache/astro',
  server: { host: '127.0.0.1', port: 4321 },
  devToolbar: { enabled: false },
  vite: {
    // Small files stay files: an inlined image would need `data:` in the policy below, and a script
    // of its own is fetched once for all pages.
    build: { assetsInlineLimit: 0 },
    plugins: [WITHOUT_WHAT_NOBODY_USES, WITHOUT_SIGNALS, MINIFIED_TWICE],
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              // What several islands need at first is one file, which packs better than many.
              // Units, and how figures are typed, stay out of it: the reference has no desk.
              codeSplitting: {
                groups: [
                  {
                    name: 'figures',
                    test: /simulator.units.level\.ts$|text.read-number\.ts$/,
                    priority: 2,
                  },
                  // So does what fetches code later: pages without a desk do that too.
                  { name: 'fetch', test: /vite.preload-helper/, priority: 2 },
                  {
                    name: 'desk',
                    test: isOfDesk,
                    tags: ['$initial'],
                    minShareCount: 2,
                    priority: 1,
                  },
                  // Lessons have tasks and quizzes; the other desks have neither.
                  { name: 'tasks', test: OF_TASKS, tags: ['$initial'] },
                ],
              },
            },
          },
        },
      },
    },
  },
  // Highlighted code needs inline styles, which the content security policy forbids.
  markdown: { processor: unified({ rehypePlugins: [passages] }), syntaxHighlight: false },
  integrations: [mdx(), preact()],
  fonts: [
    {
      name: 'Source Sans 3',
      cssVariable: '--font-text',
      provider: fontProviders.local(),
      fallbacks: ['system-ui', 'sans-serif'],
      options: {
        variants: [
          { src: [`${FONT_FILES}-normal.woff2`], weight: '200 900', style: 'normal' },
          { src: [`${FONT_FILES}-italic.woff2`], weight: '200 900', style: 'italic' },
        ],
      },
    },
  ],
  security: {
    csp: {
      // Everything is refused but what is named here; Astro adds the hashes of its own scripts
      // and styles. A worker that starts from a string URL needs a Trusted Types policy.
      directives: [
        "default-src 'none'",
        "base-uri 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "form-action 'none'",
        "img-src 'self'",
        "manifest-src 'self'",
        "object-src 'none'",
        "worker-src 'self'",
        "require-trusted-types-for 'script'",
      ],
    },
  },
});
