import { describe, expect, test } from 'vitest';
import { brokenRule } from './import-rules.ts';
import { importsOf } from './read-imports.ts';

describe('brokenRule()', () => {
  test.each([
    ['simulator/rig/schema.ts', '../units/level.ts'],
    ['simulator/rig/schema.ts', '../file/read-document.ts'],
    ['simulator/grade/check.ts', './verdict.ts'],
    ['simulator/index.ts', './puzzle/generate.ts'],
    ['simulator/board/machine.ts', 'xstate'],
    ['simulator/rig/schema.ts', 'zod/mini'],
    ['src/pages/index.astro', '../../simulator/index.ts'],
    ['src/islands/Desk.tsx', 'preact/hooks'],
    ['src/cli/desk.ts', 'node:fs'],
    ['tests/simulator/solve/levels.test.ts', '../../../simulator/solve/levels.ts'],
    ['tests/published/itu-r-bs645.test.ts', '../../simulator/units/level.ts'],
    ['tests/lessons/contract.test.ts', '../../simulator/index.ts'],
  ])('%s may import %s', (from, specifier) => {
    expect(brokenRule({ from, specifier })).toBeUndefined();
  });

  test.each([
    ['simulator/rig/schema.ts', '../board/board.ts', 'comes before'],
    ['simulator/solve/levels.ts', '../trace/paths.ts', 'comes before'],
    ['simulator/units/level.ts', '../file/read-document.ts', 'imports nothing'],
    ['simulator/file/read-document.ts', '../units/level.ts', 'imports nothing'],
    ['simulator/grade/check.ts', '../index.ts', 'those outside'],
    ['simulator/grade/check.ts', '../../src/text/findings.ts', 'knows nothing of src/'],
    ['simulator/rig/schema.ts', '../../lessons/rigs/shed.ts', 'knows nothing of lessons/'],
    ['simulator/file/read-document.ts', 'node:fs', 'of packages'],
    ['simulator/rig/schema.ts', 'zod', 'of packages'],
    ['simulator/board/machine.ts', 'preact/hooks', 'of packages'],
    ['simulator/extras/tool.ts', '../units/level.ts', 'is no row'],
    ['lessons/sends/tap.mdx', '../../src/islands/Desk.tsx', 'imports nothing'],
    ['src/islands/Desk.tsx', '../../simulator/solve/levels.ts', 'from outside'],
    ['src/pages/index.astro', '../../tests/site/fixture.ts', 'what ships'],
    ['tests/cli/desk.test.ts', '../../simulator/rig/schema.ts', 'from outside'],
  ])('%s may not import %s', (from, specifier, reason) => {
    expect(brokenRule({ from, specifier })).toContain(reason);
  });
});

describe('importsOf()', () => {
  const found = (from: string, text: string) =>
    importsOf(from, text).map(({ specifier, line }) => `${line} ${specifier}`);

  test('finds every way of writing an import, with its line', () => {
    const text = [
      "import type { A } from './type.ts';",
      "import './effect.css';",
      "export * from './all.ts';",
      "type B = import('./of-type.ts').B;",
      "const c = <p>don't import d from 'nowhere'</p>; await import('./late.ts');",
      "new Worker(new URL('./worker.ts', import.meta.url));",
      "// import './comment.ts'",
      'const s = "import \'./string.ts\'";',
    ].join('\n');
    expect(found('src/a.tsx', text)).toEqual([
      '1 ./type.ts',
      '2 ./effect.css',
      '3 ./all.ts',
      '4 ./of-type.ts',
      '5 ./late.ts',
      '6 ./worker.ts',
    ]);
  });

  test('reads the front matter and the scripts of an Astro file', () => {
    const text = [
      '---',
      "import A from './A.astro';",
      '---',
      "<p>import b from 'nowhere'</p>",
      '<script>',
      "  import { c } from '../c.ts';",
      '</script>',
    ].join('\n');
    expect(found('src/a.astro', text)).toEqual(['2 ./A.astro', '6 ../c.ts']);
  });

  test('reads the import lines of an MDX file', () => {
    expect(found('lessons/a.mdx', "# Title\n\nimport D from '../D.astro';\n\nProse.")).toEqual([
      '3 ../D.astro',
    ]);
  });
});
