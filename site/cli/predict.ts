// `npm run predict -- case.json`: prints what follows from a scenario as JSON. One line a fault on standard error.
import { readFileSync } from 'node:fs';
import { faultLine, parseScenario, predictWithDevice } from '#engine';
import { report } from './report.ts';

const help = `Usage: npm run predict -- case.json [--samples N]
Prints the prediction of a scenario as JSON. '-' reads it from standard input; N curve samples a solver step, 1 to 50.`;

function fail(...lines: string[]): never {
  for (const line of lines) process.stderr.write(`${line}\n`);
  process.exit(1);
}

function readInput(path: string): unknown {
  let text = '';
  try {
    text = readFileSync(path === '-' ? 0 : path, 'utf8');
  } catch {
    fail(`${path}: there is no such file to read`);
  }
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return fail(`${path}: is not JSON: ${(error as Error).message}`);
  }
}

function main(args: string[]): void {
  const files = args.filter((arg, i) => !arg.startsWith('--') && args[i - 1] !== '--samples');
  if (args.includes('--help')) {
    process.stdout.write(`${help}\n`);
    return;
  }
  if (files.length !== 1)
    fail(files.length === 0 ? 'no case file was named' : 'more than one case file was named', help);
  const asked = args.indexOf('--samples');
  const samplesPerStep = asked < 0 ? 6 : Number(args[asked + 1]);
  if (!(Number.isInteger(samplesPerStep) && samplesPerStep >= 1 && samplesPerStep <= 50))
    fail(`--samples is ${args[asked + 1]}; it must be a whole number from 1 to 50`);
  const parsed = parseScenario(readInput(files[0] as string));
  if (parsed.faults) fail(...parsed.faults.map(faultLine));
  process.stdout.write(`${JSON.stringify(report(predictWithDevice(parsed.scenario, { samplesPerStep })), null, 2)}\n`);
}

main(process.argv.slice(2));
