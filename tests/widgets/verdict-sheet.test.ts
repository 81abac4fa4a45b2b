import { beforeEach, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { suspectVerdict } from '#engine';
import VerdictSheet from '#site/widgets/VerdictSheet.svelte';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

const told = { iec: suspectVerdict('iec'), na: suspectVerdict('na') };
const open = () => page.getByRole('button', { name: 'Open our verdict' });

beforeEach(asNew);

async function shown(): Promise<void> {
  await render(VerdictSheet, { id: 'verdict', number: '5.4.1', title: 'The verdict on the suspect lead', told });
}

async function written(): Promise<void> {
  await shown();
  await page.getByRole('textbox').fill('It behaves as clad aluminium. The fuse does not protect it above its rating.');
  await open().click();
}

it('shows the facts, and keeps our verdict closed until one’s own is written', async () => {
  await shown();
  for (const { text } of told.iec.facts) await expect.element(page.getByText(text, { exact: true })).toBeVisible();
  await expect.element(open()).toBeDisabled();
  await expect.element(page.getByText(told.iec.ours[0]!.text)).not.toBeInTheDocument();
  await page.getByRole('textbox').fill('It is bad.');
  await expect.element(open()).toBeDisabled();
});

it('then lays ours beside it, each sentence with where its numbers come from', async () => {
  await written();
  for (const { text, from } of told.iec.ours) {
    await expect.element(page.getByRole('group', { name: 'Our verdict' }).getByText(text)).toBeVisible();
    await expect.element(page.getByText(from, { exact: true })).toBeVisible();
  }
});

it('judges each sentence of the bad verdicts as the engine has it, in words and by a sign', async () => {
  await written();
  const bold = page.getByRole('region', { name: 'A verdict that is too bold' });
  const first = bold.getByRole('listitem').nth(0);
  await first.getByText('rightly claimed').click();
  await expect.element(first).toHaveTextContent(/≠ Not yet/);
  await first.getByText('claims too much').click();
  await expect.element(first).toHaveTextContent(/✓ Right\. One sample was measured/);
  await expect.element(bold).toHaveTextContent(/1 of 5 sentences/);
});
