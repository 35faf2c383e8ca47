import { globSync, readFileSync } from 'node:fs';
import { parseFrontmatter } from '@astrojs/markdown-remark';
import { createProcessor } from '@mdx-js/mdx';
import type { Expression } from 'estree';
import type { Root, RootContent } from 'mdast';
import type { MdxJsxAttribute, MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx';

type Element = MdxJsxFlowElement | MdxJsxTextElement;
type Node = Root | RootContent;

/** A component in a lesson: its name, and its attributes with what they are worth. */
export interface Component {
  readonly name: string;
  readonly line: number;
  readonly props: Readonly<Record<string, unknown>>;
}

/** A piece of a lesson that stands by itself: a heading, a component, or words between them. */
export type Piece =
  | { readonly kind: 'heading'; readonly depth: number; readonly text: string }
  | { readonly kind: 'component'; readonly component: Component }
  | { readonly kind: 'words' };

/** A lesson or an article as its file has it. */
export interface Lesson {
  readonly slug: string;
  readonly file: string;
  /** All of the file. */
  readonly text: string;
  readonly frontmatter: unknown;
  /** In the order of the file. */
  readonly pieces: readonly Piece[];
  readonly components: readonly Component[];
  /** What a reader reads, without what components put in; paragraph by paragraph. */
  readonly prose: readonly string[];
  /** Addresses of links and pictures, of Markdown and of HTML. */
  readonly links: readonly string[];
  /** Lines that import or export, and braces in the prose: code that has no business in a lesson. */
  readonly code: readonly string[];
}

/** The lessons or articles in a folder, in the order of their names. */
export const readLessons = (folder: string): Lesson[] =>
  globSync(`${folder}/*.mdx`)
    .map((path) => path.replaceAll('\\', '/'))
    .sort()
    .map((file) => parseLesson(file, readFileSync(file, 'utf8')));

/** Reads a lesson or an article with the parser that the build uses. */
export function parseLesson(file: string, text: string): Lesson {
  const { frontmatter, content } = parseFrontmatter(text, { frontmatter: 'empty-with-lines' });
  const root = createProcessor().parse(content) as Root;
  const nodes = everyNode(root);
  const elements = nodes.filter(isElement);
  return {
    slug: file.slice(file.lastIndexOf('/') + 1).replace(/\.mdx$/, ''),
    file,
    text,
    frontmatter,
    pieces: root.children.map(pieceOf),
    components: elements.filter(isComponent).map(componentOf),
    prose: nodes.filter(isBlockOfWords).map(wordsOf),
    links: nodes.flatMap(linksOf),
    code: nodes.flatMap((node) => ('value' in node && isCode(node) ? [node.value] : [])),
  };
}

const everyNode = (node: Node): Node[] => [
  node,
  ...('children' in node ? node.children.flatMap(everyNode) : []),
];

const isElement = (node: Node): node is Element =>
  node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';

/** Components are named with a capital, elements of HTML without. */
const isComponent = ({ name }: Element) => /^[A-Z]/.test(name ?? '');

const isCode = ({ type }: Node) =>
  ['mdxjsEsm', 'mdxFlowExpression', 'mdxTextExpression'].includes(type);

/** What holds words itself: a paragraph, a heading, a component with words right inside. */
function isBlockOfWords(node: Node): boolean {
  if (node.type === 'paragraph' || node.type === 'heading') return true;
  const inside = node.type === 'mdxJsxFlowElement' ? node.children : [];
  return inside.some((child: Node) => child.type === 'text');
}

const wordsOf = (node: Node): string =>
  everyNode(node)
    .map((one) => (one.type === 'text' ? one.value : ''))
    .join('');

function pieceOf(node: RootContent): Piece {
  if (node.type === 'heading') return { kind: 'heading', depth: node.depth, text: wordsOf(node) };
  return isElement(node) && isComponent(node)
    ? { kind: 'component', component: componentOf(node) }
    : { kind: 'words' };
}

function componentOf({ name, attributes, position }: Element): Component {
  const line = position?.start.line ?? 0;
  const props = attributes.map((attribute) => {
    if (attribute.type === 'mdxJsxAttribute') return [attribute.name, worthOf(attribute)] as const;
    throw new Error(`Line ${line}: expected attributes by name, but got a spread in <${name}>.`);
  });
  return { name: name ?? '', line, props: Object.fromEntries(props) };
}

function worthOf({ value }: MdxJsxAttribute): unknown {
  if (value === null || value === undefined) return true;
  if (typeof value === 'string') return value;
  const [statement] = value.data?.estree?.body ?? [];
  if (statement?.type !== 'ExpressionStatement') throw notConstant(value.value);
  return constantOf(statement.expression, value.value);
}

/** What an expression is worth that is written out in full. @throws Error for anything that is not. */
function constantOf(expression: Expression, text: string): unknown {
  switch (expression.type) {
    case 'Literal':
      return expression.value;
    case 'UnaryExpression': {
      const value = constantOf(expression.argument, text);
      if (expression.operator === '-' && typeof value === 'number') return -value;
      throw notConstant(text);
    }
    case 'ArrayExpression':
      return expression.elements.map((element) => {
        if (!element || element.type === 'SpreadElement') throw notConstant(text);
        return constantOf(element, text);
      });
    case 'ObjectExpression':
      return Object.fromEntries(
        expression.properties.map((property) => {
          if (property.type === 'SpreadElement' || property.computed) throw notConstant(text);
          const { key, value } = property;
          const name = key.type === 'Identifier' ? key.name : constantOf(key as Expression, text);
          return [String(name), constantOf(value as Expression, text)];
        }),
      );
    default:
      throw notConstant(text);
  }
}

const notConstant = (text: string) =>
  new Error(`Expected a value that is written out, but got ${text}.`);

function linksOf(node: Node): string[] {
  if (node.type === 'link' || node.type === 'image' || node.type === 'definition') {
    return [node.url];
  }
  if (!isElement(node)) return [];
  return node.attributes.flatMap((attribute) =>
    attribute.type === 'mdxJsxAttribute' && /^(href|src|srcset|action)$/i.test(attribute.name)
      ? [String(worthOf(attribute))]
      : [],
  );
}
