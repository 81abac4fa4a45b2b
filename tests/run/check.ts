// npm run check: types, lint, format and the rules of the house. Every part runs; any fault ends it with 1.
import { faultLine, findings } from '../house/tree.ts';
import { root, runTool } from './tool.ts';

/** How one part of the check ended: what it found, and whether that is good. */
interface Part {
  name: string;
  good: boolean;
  report: string;
  seconds: number;
}

/** The parts that are tools: name, package, command, arguments. */
const tools: [name: string, pack: string, bin: string, args: string[]][] = [
  ['lint and format', '@biomejs/biome', 'biome', ['ci', '--error-on-warnings', '--colors=off', '.']],
  ['engine without a screen', 'typescript', 'tsc', ['--noEmit', '--project', 'tests/run/engine.tsconfig.json']],
  ['types of .astro and .ts', '@astrojs/check', 'astro-check', ['--minimumFailingSeverity', 'warning']],
  [
    'types of .svelte',
    'svelte-check',
    'svelte-check',
    ['--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human'],
  ],
];

const parts = [...(await houseParts())];
// the content types that astro check and svelte-check read
await timed('content types', () => runTool('astro', 'astro', ['sync']), parts);
await Promise.all(tools.map(([name, pack, bin, args]) => timed(name, () => runTool(pack, bin, args), parts)));

for (const { good, report } of parts) if (!good && report) console.log(report.trimEnd(), '\n');
for (const { name, good, seconds } of parts)
  console.log(`${good ? 'good  ' : 'FAILED'}  ${name} (${seconds.toFixed(1)} s)`);
process.exit(parts.every(({ good }) => good) ? 0 : 1);

async function timed(name: string, run: () => Promise<{ code: number; output: string }>, into: Part[]): Promise<void> {
  const started = performance.now();
  const { code, output } = await run();
  into.push({ name, good: code === 0, report: output, seconds: (performance.now() - started) / 1000 });
}

/** The rules of tests/house; long files are only mentioned. */
async function houseParts(): Promise<Part[]> {
  const started = performance.now();
  const { boundaries, hygiene, warnings, files } = await findings(root);
  for (const warning of warnings) console.log(`warning: ${faultLine(warning)}`);
  const seconds = (performance.now() - started) / 1000;
  return [
    { name: `boundaries, ${files} files`, good: boundaries.length === 0, report: lines(boundaries), seconds },
    { name: 'paths, names, marks', good: hygiene.length === 0, report: lines(hygiene), seconds: 0 },
  ];
}

function lines(faults: Parameters<typeof faultLine>[0][]): string {
  return faults.map(faultLine).join('\n');
}
