import ts from 'typescript';
import type { Import } from './import-rules.ts';

/**
 * Imports of a file, in the order they are written: static, re-exported, dynamic, of types, and
 * `new URL('…', import.meta.url)`, which is how a worker is named.
 *
 * Reads `.ts`, `.tsx`, `.js`, `.mjs`, the script parts of `.astro`, and the import lines of `.mdx`.
 *
 * @param from the file's path from the root of the repository.
 */
export function importsOf(from: string, text: string): Import[] {
  return scriptsOf(from, text).flatMap((script) => {
    const source = ts.createSourceFile(script.name, script.text, ts.ScriptTarget.Latest);
    return specifiersIn(source).map((literal) => ({
      from,
      specifier: literal.text,
      line: script.firstLine + source.getLineAndCharacterOfPosition(literal.getStart(source)).line,
    }));
  });
}

interface Script {
  readonly name: string;
  readonly text: string;
  /** Line of the file on which the script's own first line stands. */
  readonly firstLine: number;
}

function scriptsOf(from: string, text: string): Script[] {
  if (from.endsWith('.mdx')) {
    // An import in MDX begins its line; prose that begins so would not compile either.
    const lines = text.split('\n').map((line) => (/^(import|export)\s/.test(line) ? line : ''));
    return [{ name: `${from}.tsx`, text: lines.join('\n'), firstLine: 1 }];
  }
  if (!from.endsWith('.astro')) return [{ name: from, text, firstLine: 1 }];
  const parts = /^---\n(.*?)^---$|<script(?:\s[^>]*)?>(.*?)<\/script>/gms;
  return [...text.matchAll(parts)].map((match) => {
    const script = match[1] ?? match[2] ?? '';
    const start = match.index + match[0].indexOf(script);
    return {
      name: `${from}.ts`,
      text: script,
      firstLine: text.slice(0, start).split('\n').length,
    };
  });
}

function specifiersIn(source: ts.SourceFile): ts.StringLiteralLike[] {
  const found: ts.StringLiteralLike[] = [];
  const visit = (node: ts.Node): void => {
    const specifier = specifierOf(node);
    if (specifier && ts.isStringLiteralLike(specifier)) found.push(specifier);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function specifierOf(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    return node.argument.literal;
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return node.arguments[0];
  }
  if (ts.isNewExpression(node) && ts.isIdentifier(node.expression)) {
    const [address, base] = node.arguments ?? [];
    if (node.expression.text === 'URL' && base && isOwnAddress(base)) return address;
  }
  return undefined;
}

/** Whether an expression is `import.meta.url`. */
function isOwnAddress(node: ts.Node): boolean {
  return (
    ts.isPropertyAccessExpression(node) &&
    node.name.text === 'url' &&
    ts.isMetaProperty(node.expression)
  );
}
