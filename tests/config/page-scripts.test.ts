import { expect, test } from 'vitest';
import { initialScripts } from './page-scripts.ts';

const SITE = new Map([
  ['/theme.js', 'document.title;'],
  ['/_astro/desk.js', 'import{h}from"./preact.js";import("./audition.js");export{h as default}'],
  ['/_astro/renderer.js', 'import"./preact.js";'],
  ['/_astro/preact.js', 'export const h=1;export*from"./hooks.js"'],
  ['/_astro/hooks.js', 'export const u=2;'],
]);

const read = (address: string): string => {
  const text = SITE.get(address);
  if (text === undefined) throw new Error(`${address} must not be read.`);
  return text;
};

test('initialScripts() follows islands and static imports, each once, but no dynamic import', () => {
  const html = `<script src="/theme.js"></script>
    <script type="application/json">{"data":true}</script>
    <script type="module">import "../../_astro/hooks.js"; go()</script>
    <astro-island component-url="/_astro/desk.js" renderer-url="/_astro/renderer.js" ssr>
    </astro-island>`;
  expect(initialScripts(html, '/lessons/sends/', read)).toEqual({
    files: [
      '/_astro/desk.js',
      '/_astro/hooks.js',
      '/_astro/preact.js',
      '/_astro/renderer.js',
      '/theme.js',
    ],
    inline: ['import "../../_astro/hooks.js"; go()'],
    hasIsland: true,
  });
});

test('initialScripts() finds nothing on a page without script', () => {
  expect(initialScripts('<p>Quiet.</p>', '/', read)).toEqual({
    files: [],
    inline: [],
    hasIsland: false,
  });
});
