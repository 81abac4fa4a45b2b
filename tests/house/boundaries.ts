import { posix } from 'node:path';
import ts from 'typescript';
import { type Code, codeOf, type Fault, faultAt, importsOf, nodesOf, type SourceFile } from './source.ts';

/** The packages that the engine may stand on. */
const enginePackages = [
  'valibot',
  'pure-rand',
  'lz-string',
  'papaparse',
  'ml-levenberg-marquardt',
  'ml-matrix',
  'ts-fsrs',
];

/** What would make the engine's answer depend on the clock, on chance or on a screen. */
const impure = /^(Date\.now|Math\.random|performance\.\w+|crypto\.\w+|process\.\w+|console\.\w+|import\.meta)$/;
const screens = /^(window|document|localStorage|sessionStorage|indexedDB|navigator|fetch|setTimeout|setInterval)$/;

/** Numbers of physics that belong to an engine table: 0 °C, σ, ρ and α of copper and aluminium, g, R. */
const constants = [
  273.15, 273.16, 5.67e-8, 5.67037e-8, 5.670374419e-8, 1.7241e-8, 0.017241, 17.241, 2.8264e-8, 0.028264, 58e6, 234.5,
  0.00393, 0.00403, 9.80665, 9.81, 8.314, 8.314462618,
];

/** Where the site draws: powers and roots there are geometry of the picture, not physics. */
const drawing = /^site\/(charts|controls|lib)\//;

const endings = /\.(ts|mjs|js|svelte|astro|mdx|md|css|json|csv|svg|png|webp|avif|woff2|txt)(\?\w+)?$/;

/** Every fault of one file against the boundaries between engine, site, lessons and tests. */
export function boundaryFaults(file: SourceFile): Fault[] {
  if (!/\.(ts|mjs|svelte|astro|mdx)$/.test(file.path)) return [];
  const code = codeOf(file);
  const room = file.path.split('/')[0];
  if (room === 'engine') return [...endingFaults(code), ...engineFaults(code)];
  if (room === 'site' || room === 'lessons')
    return [...endingFaults(code), ...siteFaults(code), ...physicsFaults(code)];
  return endingFaults(code);
}

/** Node and the browser find a file only by its whole name. */
function endingFaults(code: Code): Fault[] {
  return importsOf(code)
    .filter(({ name }) => /^(\.|#)/.test(name) && name !== '#engine' && !endings.test(name))
    .map(({ name, node }) => faultAt(code, node, `the import '${name}' is written without its file ending`));
}

function engineFaults(code: Code): Fault[] {
  const foreign = importsOf(code).filter(({ name }) => !isEngineImport(code.file.path, name));
  const faults = foreign.map(({ name, node }) => faultAt(code, node, `the engine imports '${name}'`));
  for (const node of nodesOf(code)) {
    const used = impurity(node);
    if (used) faults.push(faultAt(code, node, `the engine uses ${used}`));
  }
  if (code.file.path === 'engine/index.ts') faults.push(...ownStatements(code));
  return faults;
}

function isEngineImport(path: string, name: string): boolean {
  if (name.startsWith('.')) return resolved(path, name).startsWith('engine/');
  return name.startsWith('#engine') || enginePackages.some((known) => name === known || name.startsWith(`${known}/`));
}

function resolved(path: string, name: string): string {
  return posix.normalize(posix.join(posix.dirname(path), name));
}

/** The clock, chance or the screen, when the node uses one: `Date.now`, `new Date()`, `window.x`, `fetch(x)`. */
function impurity(node: ts.Node): string | undefined {
  if (ts.isPropertyAccessExpression(node)) {
    const text = node.getText();
    if (impure.test(text)) return text;
    const owner = node.expression.getText();
    return screens.test(owner) && !isDeclared(node.getSourceFile(), owner) ? owner : undefined;
  }
  if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) return 'new Date()';
  if (!ts.isCallExpression(node)) return undefined;
  const callee = node.expression.getText();
  return screens.test(callee) && !isDeclared(node.getSourceFile(), callee) ? callee : undefined;
}

/** A file may call a value of its own `document` or `window`. */
function isDeclared(tree: ts.SourceFile, name: string): boolean {
  const declares = (node: ts.Node): boolean =>
    ((ts.isParameter(node) ||
      ts.isVariableDeclaration(node) ||
      ts.isBindingElement(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isImportSpecifier(node)) &&
      node.name?.getText() === name) ||
    (ts.forEachChild(node, (child) => declares(child) || undefined) ?? false);
  return declares(tree);
}

function ownStatements(code: Code): Fault[] {
  return code.tree.statements
    .filter((statement) => !(ts.isExportDeclaration(statement) && statement.moduleSpecifier))
    .map((statement) => faultAt(code, statement, 'engine/index.ts only re-exports'));
}

/** Everyone outside enters the engine by its public face, and nothing but tests knows the tests. */
function siteFaults(code: Code): Fault[] {
  return importsOf(code).flatMap(({ name, node }) => {
    const target = name.startsWith('.') ? resolved(code.file.path, name) : name;
    if (/^#?engine\//.test(target)) return [faultAt(code, node, `'${name}' enters the engine past '#engine'`)];
    if (/^#?tests\//.test(target)) return [faultAt(code, node, `'${name}' belongs to the tests`)];
    return [];
  });
}

/** Signs that something is being computed that the engine should compute. */
function physicsFaults(code: Code): Fault[] {
  const lines = code.file.text.split('\n');
  return [...nodesOf(code)].flatMap((node) => {
    const sign = physicsSign(node, drawing.test(code.file.path));
    if (!sign) return [];
    const fault = faultAt(code, node, `${sign}: physics belongs to the engine`);
    return /drawing: \w/.test(lines[fault.line - 1] ?? '') ? [] : [fault];
  });
}

function physicsSign(node: ts.Node, draws: boolean): string | undefined {
  if (ts.isNumericLiteral(node)) {
    const value = Number(node.text);
    return constants.some((known) => Math.abs(value / known - 1) < 1e-6) ? `the constant ${node.getText()}` : undefined;
  }
  if (ts.isBinaryExpression(node)) return squareSign(node, draws);
  if (draws || !ts.isPropertyAccessExpression(node)) return undefined;
  return /^Math\.(exp|expm1|log|log1p|pow|sqrt|cbrt|sinh|cosh|tanh)$/.test(node.getText()) ? node.getText() : undefined;
}

/** A power, or a current or voltage times itself. */
function squareSign(node: ts.BinaryExpression, draws: boolean): string | undefined {
  const { kind } = node.operatorToken;
  if (kind === ts.SyntaxKind.AsteriskAsteriskToken && !draws) return `the power ${node.getText()}`;
  const [left, right] = [node.left.getText(), node.right.getText()];
  const isSquare = kind === ts.SyntaxKind.AsteriskToken && left === right && /^(\w+\.)*[IUV](_\w+)?$/.test(left);
  return isSquare ? `the square ${node.getText()}` : undefined;
}
