import { expect, it } from 'vitest';
import { root } from '../run/tool.ts';
import { hygieneFaults, lengthWarning } from './hygiene.ts';
import { faultLine, findings } from './tree.ts';

it('no file of the project is untidy', async () => {
  expect((await findings(root)).hygiene.map(faultLine)).toEqual([]);
});

it.each([
  ['home', 'someone'],
  ['Users', 'someone'],
  ['tmp', 'case.json'],
])('a path of one machine is found: /%s/%s', (top, name) => {
  const text = `first\nread ${['', top, name].join('/')} now`;
  expect(hygieneFaults({ path: 'README.md', text }).map(({ line }) => line)).toEqual([2]);
  expect(hygieneFaults({ path: 'README.md', text: `see site/${top}/${name}` })).toEqual([]);
});

it('an unfinished mark and a merge mark are found', () => {
  expect(hygieneFaults({ path: 'a.md', text: `${'TO'}${'DO'}: more` })).toHaveLength(1);
  expect(hygieneFaults({ path: 'a.md', text: `${'<'.repeat(7)} ours` })).toHaveLength(1);
});

it('a file named against the custom is found', () => {
  expect(hygieneFaults({ path: 'site/widgets/warmUp.svelte', text: '' })).toHaveLength(1);
  expect(hygieneFaults({ path: 'engine/heating/RunAway.ts', text: '' })).toHaveLength(1);
  expect(hygieneFaults({ path: 'engine/heating/run-away.ts', text: '' })).toEqual([]);
});

it('a file too long to read in one go is warned of', () => {
  const file = (lines: number) => ({ path: 'engine/a.ts', text: 'x;\n'.repeat(lines) });
  expect(lengthWarning(file(400))).toBeUndefined();
  expect(lengthWarning(file(401))?.message).toMatch(/401 lines/);
});
