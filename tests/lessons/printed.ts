import { globSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { readDocument } from '../../simulator/index.ts';
import { articles, lessons } from './the-course.ts';

/** Text that people read, with the file that it stands in. */
export interface Printed {
  readonly file: string;
  readonly text: string;
}

/** Everything that the course, the site and the two documents print, but for what is computed. */
export const printed = (): Printed[] => [
  ...[...lessons, ...articles].map(({ file, frontmatter, prose, components }) => {
    const props = components.map((component) => component.props);
    return { file, text: [...prose, ...sentencesOf([frontmatter, props])].join('\n') };
  }),
  ...filesOf('lessons/**/*.yaml').map((file) => {
    const { data } = readDocument(file, readFileSync(file, 'utf8'));
    return { file, text: sentencesOf(data).join('\n') };
  }),
  ...filesOf('*.md').map(wordsOfDocument),
  ...filesOf('src/**/*.astro').map(wordsOfPage),
  ...filesOf('src/{text,components}/**/*.{ts,tsx}').map(stringsOf),
];

const filesOf = (pattern: string): string[] =>
  globSync(pattern)
    .map((path) => path.replaceAll('\\', '/'))
    .sort();

/** The strings in some data that are words to read: those with a blank. Ids, addresses and values have none. */
function sentencesOf(data: unknown): string[] {
  if (typeof data === 'string') return data.includes(' ') ? [data] : [];
  if (typeof data !== 'object' || data === null) return [];
  return Object.values(data).flatMap(sentencesOf);
}

/** A document in Markdown, without its code and the addresses of its links. */
const wordsOfDocument = (file: string): Printed => ({
  file,
  text: readFileSync(file, 'utf8')
    .replace(/^ {4,}.*$/gm, ' ')
    .replace(/\]\([^)]*\)/g, ']'),
});

/** What a page prints between its tags. */
function wordsOfPage(file: string): Printed {
  const [, , ...body] = readFileSync(file, 'utf8').split(/^---$/m);
  const markup = body.join('---').replace(/<(script|style|code)\b[\s\S]*?<\/\1>/g, ' ');
  return { file, text: withoutCode(markup).replace(/<[^>]*>/g, ' ') };
}

/** Takes out what stands in braces, from the inside out. */
function withoutCode(markup: string): string {
  const less = markup.replace(/\{[^{}]*\}/g, ' ');
  return less === markup ? markup : withoutCode(less);
}

/** What code prints: strings with a blank, pieces of templates, and words between tags; classes are not printed. */
function stringsOf(file: string): Printed {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
  const strings: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isJsxAttribute(node) && node.name.getText(source) === 'class') return;
    if (ts.isStringLiteral(node) && node.text.includes(' ')) strings.push(node.text);
    else if (ts.isTemplateLiteralToken(node) && node.text.includes(' ')) strings.push(node.text);
    else if (ts.isJsxText(node)) strings.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return { file, text: strings.join('\n') };
}
