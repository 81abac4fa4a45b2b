import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import ts from 'typescript';

/** A component as a lesson places it. */
export interface Placed {
  name: string;
  line: number;
  props: Record<string, unknown>;
  /** Props that are more than a literal, so that no one can check them. */
  computed: string[];
}

/** A piece of words that a reader meets, with its line. Numbers by component stand in it as the word of `numberWord`. */
export interface Prose {
  text: string;
  line: number;
}

/** A lesson read for checking. */
export interface LessonSource {
  path: string;
  /** The lines of the front matter. */
  head: Prose[];
  components: Placed[];
  /** Paragraphs, list items and headings. */
  prose: Prose[];
}

/** Stands in prose for a number that a component puts there. */
export const numberWord = '\u2460';

/** Every lesson under `root`. */
export async function lessonSources(root: string): Promise<LessonSource[]> {
  const folders = (await readdir(join(root, 'lessons'), { withFileTypes: true })).filter((entry) =>
    entry.isDirectory(),
  );
  return await Promise.all(
    folders.map(async ({ name }) => {
      const path = `lessons/${name}/index.mdx`;
      return readLesson(path, await readFile(join(root, path), 'utf8'));
    }),
  );
}

/** Reads the text of one lesson. */
export function readLesson(path: string, text: string): LessonSource {
  const head = /^---\n([\s\S]*?)\n---/.exec(text)?.[0] ?? '';
  const body = blanked(text.replace(head, (found) => found.replace(/[^\n]/g, ' ')));
  const tree = ts.createSourceFile('lesson.tsx', `<>${body}</>`, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const lineOf = (node: ts.Node) => tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1;
  const components: Placed[] = [];
  let words = '';
  const visit = (node: ts.Node): void => {
    if (ts.isJsxSelfClosingElement(node) || ts.isJsxOpeningElement(node)) {
      const name = node.tagName.getText(tree);
      components.push({ name, line: lineOf(node), ...propsOf(node.attributes, tree) });
      // a block's own words begin a paragraph; a number stands inside one
      words +=
        name === 'Num' || name === 'Cite' || name === 'In' ? numberWord : '\n'.repeat(newlinesIn(node.getText(tree)));
    } else if (ts.isJsxText(node)) words += node.text;
    else ts.forEachChild(node, visit);
  };
  visit(tree);
  return { path, head: linesOf(head), components, prose: paragraphsOf(words) };
}

/** Formulas, code and comments are no prose and hold braces of their own; lines stay. */
function blanked(text: string): string {
  const pieces = /```[\s\S]*?```|`[^`\n]*`|\$\$[\s\S]*?\$\$|\$[^$\n]+\$|\{\/\*[\s\S]*?\*\/\}|^(?:import|export)\s.*$/gm;
  return text.replace(pieces, (found) => found.replace(/[^\n]/g, ' '));
}

const newlinesIn = (text: string): number => text.split('\n').length - 1;

function linesOf(text: string): Prose[] {
  return text.split('\n').map((line, i) => ({ text: line, line: i + 1 }));
}

/** Paragraphs of the running words; a list item or heading is one of its own. */
function paragraphsOf(words: string): Prose[] {
  const found: Prose[] = [];
  let open: Prose | undefined;
  for (const [i, raw] of words.split('\n').entries()) {
    const text = raw.trim();
    if (text === '' || /^(#+|[-*]|\d+\.) /.test(text)) open = undefined;
    if (text === '') continue;
    if (open) open.text += ` ${text}`;
    else {
      open = { text: text.replace(/^(#+|[-*]) /, ''), line: i + 1 };
      found.push(open);
    }
  }
  return found;
}

function propsOf(attributes: ts.JsxAttributes, tree: ts.SourceFile): Pick<Placed, 'props' | 'computed'> {
  const props: Record<string, unknown> = {};
  const computed: string[] = [];
  for (const attribute of attributes.properties) {
    const name = attribute.name?.getText(tree) ?? '…';
    const value = ts.isJsxAttribute(attribute) ? literalOf(attribute.initializer) : { computed: true as const };
    if ('computed' in value) computed.push(name);
    else props[name] = value.literal;
  }
  return { props, computed };
}

type Literal = { literal: unknown } | { computed: true };

/** The value of a literal: text, number, true, list, record. */
function literalOf(node: ts.Node | undefined): Literal {
  if (node === undefined || node.kind === ts.SyntaxKind.TrueKeyword) return { literal: true };
  if (node.kind === ts.SyntaxKind.FalseKeyword) return { literal: false };
  if (ts.isJsxExpression(node)) return node.expression ? literalOf(node.expression) : { computed: true };
  if (ts.isStringLiteralLike(node)) return { literal: node.text };
  if (ts.isNumericLiteral(node)) return { literal: Number(node.text) };
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const inner = literalOf(node.operand);
    return 'literal' in inner && typeof inner.literal === 'number' ? { literal: -inner.literal } : { computed: true };
  }
  if (ts.isArrayLiteralExpression(node)) return listOf(node.elements.map(literalOf));
  if (ts.isObjectLiteralExpression(node)) {
    const pairs = node.properties.map((property): [string, Literal] =>
      ts.isPropertyAssignment(property)
        ? [property.name.getText().replace(/^['"]|['"]$/g, ''), literalOf(property.initializer)]
        : ['', { computed: true }],
    );
    const values = listOf(pairs.map(([, value]) => value));
    if ('computed' in values) return values;
    return { literal: Object.fromEntries(pairs.map(([name], i) => [name, (values.literal as unknown[])[i]])) };
  }
  return { computed: true };
}

function listOf(items: Literal[]): Literal {
  const literal: unknown[] = [];
  for (const item of items) {
    if ('computed' in item) return item;
    literal.push(item.literal);
  }
  return { literal };
}
