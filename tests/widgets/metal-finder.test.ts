import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { evidenceOf, type FoundOnLead, identify } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import MetalFinder from '#site/widgets/MetalFinder.svelte';
import { foundSoFar, takenAtFirst } from '#site/widgets/metal-finder/take.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const iec: FoundOnLead = {
  marking: { size_mm2: 1.5 },
  magnet: 'does not',
  skin: 'copper-red',
  resistance: { U_V: 0.576, I_A: 1, length_m: 8, T_degC: 20, cores: 2, method: 'four-terminal' },
  strands: { count: 24, diameter_mm: 0.2 },
  mass: { mass_g: 5, length_m: 2 },
  under: 'silvery',
};
const na: FoundOnLead = { ...iec, marking: { size_AWG: 16 }, mass: { mass_g: 7.62, length_m: 3.048 } };
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(
    MetalFinder,
    { id: 'finder', number: '5.2.1', title: 'Metals', leads: { iec, na }, bench: '/bench/identify/', ...props },
    width,
  );
const label = (frame: HTMLElement) => frame.querySelector('[role="img"]')?.getAttribute('aria-label') ?? '';
const percent = (found: FoundOnLead) => Math.round(100 * (identify(evidenceOf(found)).candidates[0]?.probability ?? 0));

beforeEach(asNew);

it('opens with the marking alone, and says that nothing is established', async () => {
  const { frame } = await shown();
  expect(label(frame)).toContain(`copper ${percent({ marking: { size_mm2: 1.5 } })}`);
  expect(frame.textContent).toMatch(/Not established/);
  expect(frame.textContent).toMatch(/What to measure next/);
  expect(frame.textContent).not.toContain('silvery.Type');
});

it('reveals a value when it is taken, by keyboard, keeps the keyboard there, and narrows the metals', async () => {
  const { frame, screen, press } = await shown();
  await press(screen.getByRole('button', { name: /^Take this measurement ?: The resistance/ }).element(), '{Enter}');
  await expect
    .poll(() => frame.querySelector('[data-piece="resistance"]')?.textContent)
    .toMatch(/0\.576\sV at 1\.00\sA/);
  expect(document.activeElement?.className).toContain('told');
  await userEvent.keyboard('{Tab}{Enter}'); // the strands are next
  await expect.poll(() => label(frame)).toMatch(/^Metals: copper-clad aluminium/);
  await expect.poll(() => frame.textContent).toMatch(/behaves as undersized/);
  await expect.poll(() => readFragment(location.hash, 'finder')).toBe('iec;resistance:true;strands:true');
});

it('tells ohms times grams once both are there, and the copper that it is equal to', async () => {
  const { frame, screen } = await shown();
  await screen.getByRole('button', { name: /: The resistance/ }).click();
  await screen.getByRole('button', { name: /^Photograph it, then take this ?: The mass/ }).click();
  const product = identify(evidenceOf({ ...iec })).massTimesResistance.measured?.value ?? 0;
  await expect.poll(() => frame.textContent).toContain(`${(product * 1e6).toFixed(1)}\u00A0mΩ·g/m²`);
  expect(frame.textContent).toMatch(/equal to 0\.4[78]\d?\s?mm² of copper/);
});

it('keeps what was taken when the practice turns, with that practice’s own lead', async () => {
  const { frame, screen } = await shown();
  await screen.getByRole('button', { name: /: The mass/ }).click();
  practice.value = 'na';
  await expect.poll(() => frame.querySelector('[data-piece="mass"]')?.textContent).toMatch(/7\.62\sg from 10\sft/);
  expect(frame.textContent).toMatch(/16\sAWG/);
});

it('goes back to what the lesson opens with', async () => {
  const { frame, screen } = await shown({ start: ['marking', 'magnet'] });
  await screen.getByRole('button', { name: /: The colour/ }).click();
  await screen.getByRole('button', { name: 'Back to the lesson’s case' }).click();
  await expect.poll(() => frame.querySelector('[data-piece="skin"]')?.getAttribute('data-taken')).toBe('false');
  expect(frame.querySelector('[data-piece="magnet"]')?.getAttribute('data-taken')).toBe('true');
});

it('takes only what is on the lead', () =>
  expect(foundSoFar({ marking: { size_mm2: 1.5 } }, takenAtFirst(['marking', 'mass']))).toEqual({
    marking: { size_mm2: 1.5 },
  }));

it('stands in 288 px, all of it taken, without a broken number', async () => {
  const all = ['marking', 'magnet', 'skin', 'resistance', 'strands', 'mass', 'under'];
  const { frame, broken } = await shown({ start: all }, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
  expect(broken()).toBeUndefined();
});
