import ts from 'typescript';

/** One fault against a rule of the house. */
export interface Fault {
  /** From the project's folder, with forward slashes. */
  path: string;
  line: number;
  message: string;
}

/** A file as the rules see it: its path and whole text. */
export interface SourceFile {
  path: string;
  text: string;
}

/** The code of a file as a syntax tree; what is not code is blank, so that lines are those of the file. */
export interface Code {
  file: SourceFile;
  tree: ts.SourceFile;
}

/** Reads the code out of a .ts, .mjs, .svelte, .astro or .mdx file. Markup counts by its `{expressions}`. */
export function codeOf(file: SourceFile): Code {
  const text = codeText(file);
  const tree = ts.createSourceFile(`${file.path}.ts`, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);
  return { file, tree };
}

/** Every node of the tree, in the order of the text. */
export function* nodesOf(code: Code): Generator<ts.Node> {
  const waiting: ts.Node[] = [code.tree];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    yield node;
    const children: ts.Node[] = [];
    ts.forEachChild(node, (child) => void children.push(child));
    waiting.push(...children.reverse());
  }
}

/** A fault at a node. */
export function faultAt(code: Code, node: ts.Node, message: string): Fault {
  const { line } = code.tree.getLineAndCharacterOfPosition(node.getStart(code.tree));
  return { path: code.file.path, line: line + 1, message };
}

/** The module names that a file imports or re-exports, also as types and by `import()`. */
export function importsOf(code: Code): { name: string; node: ts.Node }[] {
  return [...nodesOf(code)].flatMap((node) => {
    const given = moduleName(node);
    return given && ts.isStringLiteralLike(given) ? [{ name: given.text, node }] : [];
  });
}

function moduleName(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return node.arguments[0];
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) return node.argument.literal;
  return undefined;
}

function codeText({ path, text }: SourceFile): string {
  if (/\.(ts|mjs|js)$/.test(path)) return text;
  if (path.endsWith('.mdx')) return keep(withoutProse(text), [...spans(text, /^(?:import|export)\s.*$/gm)]);
  const scripts = [...spans(text, /(?<=<script\b[^>]*>)[\s\S]*?(?=<\/script>)/g)];
  const head = path.endsWith('.astro') ? [...spans(text, /(?<=^---\n)[\s\S]*?(?=\n---)/g)].slice(0, 1) : [];
  const code = [...head, ...scripts];
  const markup = blank(text, [...code, ...spans(text, /<style\b[\s\S]*?<\/style>|<!--[\s\S]*?-->/g)]);
  return merge(keep(text, code, false), keep(markup, []));
}

type Span = [from: number, to: number];

function* spans(text: string, pattern: RegExp): Generator<Span> {
  for (const match of text.matchAll(pattern)) yield [match.index, match.index + match[0].length];
}

/** MDX without front matter, comments, code and formulas, whose braces are no expressions. */
function withoutProse(text: string): string {
  const frontMatter = [...spans(text, /^---\n[\s\S]*?\n---/g)].filter(([from]) => from === 0);
  const prose = /```[\s\S]*?```|`[^`\n]*`|\$\$[\s\S]*?\$\$|\$[^$\n]+\$|\{\/\*[\s\S]*?\*\/\}/g;
  return blank(text, [...frontMatter, ...spans(text, prose)]);
}

function blank(text: string, parts: Span[]): string {
  return parts.reduce((now, [from, to]) => now.slice(0, from) + spaces(now.slice(from, to)) + now.slice(to), text);
}

function spaces(text: string): string {
  return text.replace(/[^\n]/g, ' ');
}

/** Only the given parts of the text and, unless told otherwise, the insides of its outermost braces; the rest blank. */
function keep(text: string, parts: Span[], braces = true): string {
  const kept = braces ? [...parts, ...braceSpans(blank(text, parts))] : parts;
  const pieces = kept.toSorted(([a], [b]) => a - b);
  let at = 0;
  let result = '';
  for (const [from, to] of pieces) {
    result += `${spaces(text.slice(at, from)).replace(/ $/, ';')}${text.slice(from, to)}`;
    at = to;
  }
  return result + spaces(text.slice(at));
}

function braceSpans(text: string): Span[] {
  const found: Span[] = [];
  let depth = 0;
  let start = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '{' && depth++ === 0) start = at + 1;
    if (text[at] === '}' && depth > 0 && --depth === 0) found.push([start, at]);
  }
  return found;
}

/** Two texts of one length laid over each other: blanks let the other show. */
function merge(above: string, below: string): string {
  let result = '';
  for (let at = 0; at < above.length; at += 1) result += above[at] === ' ' ? below[at] : above[at];
  return result;
}
