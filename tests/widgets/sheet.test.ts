import { createRawSnippet } from 'svelte';
import { expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Sheet from '#site/charts/Sheet.svelte';
import '#site/styles/base.css';

const children = createRawSnippet(() => ({ render: () => '<p>a picture</p>' }));
const table = {
  caption: 'Temperatures over time',
  columns: ['Time, min:s', 'Conductor, °C', 'Surface, °C'],
  rows: [
    ['0:00', '20', '20'],
    ['1:00', '50', '25'],
  ],
};
const sheet = { number: '2.2.1', title: 'A lead warming', sentence: 'The conductor leads.', table, children };

it('is a figure named by its number and title', async () => {
  const screen = await render(Sheet, sheet);
  await expect.element(screen.getByRole('figure', { name: 'Fig. 2.2.1 A lead warming' })).toBeVisible();
  await expect.element(screen.getByText('The conductor leads.')).toBeVisible();
});

it('folds out a table that says what the picture says, with its units in the heads', async () => {
  const screen = await render(Sheet, { ...sheet, cells: [{ name: 'Supply', value: '20 A, held' }] });
  const summary = screen.getByText('Table', { exact: false }).first();
  expect(screen.container.querySelector('details')?.open).toBe(false);
  await userEvent.click(summary);
  const shown = screen.getByRole('table', { name: 'Temperatures over time' });
  await expect.element(shown).toBeVisible();
  const cells = [...shown.element().querySelectorAll('tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
  expect(cells).toEqual([table.columns, ...table.rows]);
  expect(shown.element().querySelectorAll('th[scope="col"]')).toHaveLength(3);
  expect(shown.element().querySelectorAll('th[scope="row"]')).toHaveLength(2);
});

it('keeps the way to the table 44 px tall and inside the title block, on a wide and on a narrow sheet', async () => {
  for (const width of [320, 800]) {
    const screen = await render(Sheet, { ...sheet, cells: [{ name: 'Supply', value: '20 A, held' }] });
    screen.container.style.width = `${width}px`;
    const summary = (screen.container.querySelector('summary') as HTMLElement).getBoundingClientRect();
    const block = (screen.container.querySelector('.block') as HTMLElement).getBoundingClientRect();
    expect(summary.height).toBeGreaterThanOrEqual(44);
    expect(summary.top).toBeGreaterThanOrEqual(block.top - 1);
    expect(summary.bottom).toBeLessThanOrEqual(block.bottom + 1);
    screen.unmount();
  }
});
