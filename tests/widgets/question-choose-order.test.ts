import { beforeEach, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { type ChooseQuestion, type OrderQuestion, type Question, templates } from '#engine';
import { practice } from '#site/widgets/practice.svelte.ts';
import QuestionBlock from '#site/widgets/QuestionBlock.svelte';
import '#site/styles/base.css';

const asked = <Kind extends Question>(template: string) => templates[template]?.question('trial', 'iec') as Kind;
const q04 = asked<ChooseQuestion>('Q04');
const q09 = asked<ChooseQuestion>('Q09');
const q07 = asked<OrderQuestion>('Q07');

async function shown(template: string) {
  const among = Object.values(templates);
  const props = { id: 'q', template, seed: 'trial', number: 1, of: 3, bench: '/bench/', among };
  const screen = await render(QuestionBlock, { props });
  const check = screen.getByRole('button', { name: 'Check' });
  const verdict = () => screen.container.querySelector('.verdict')?.textContent?.trim();
  const said = () => [...screen.container.querySelectorAll('[role="status"]')].at(-1)?.textContent ?? '';
  const names = () => [...screen.container.querySelectorAll('ol li .name')].map((one) => one.textContent ?? '');
  return { screen, check, verdict, said, names };
}

const optionOf = (question: ChooseQuestion, part: number, wanted: (id: string) => boolean) => {
  const one = question.parts[part];
  return one?.options.find(({ id }) => wanted(id) === true);
};

const tabTo = async (reached: () => boolean) => {
  for (let i = 0; i < 40 && !reached(); i++) await userEvent.keyboard('{Tab}');
  expect(reached()).toBe(true);
};

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  history.replaceState(null, '', location.pathname + location.search);
});

it('asks for a choice with native radio buttons in a named group, each row large enough to touch', async () => {
  const { screen } = await shown('Q04');
  const group = screen.getByRole('group', { name: q04.parts[0]?.label });
  await expect.element(group).toBeVisible();
  const radios = group.getByRole('radio').all();
  expect(radios).toHaveLength(4);
  for (const row of screen.container.querySelectorAll('fieldset label'))
    expect(row.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
});

it('hands a choice back when nothing is chosen, without a try', async () => {
  const { screen, check, verdict } = await shown('Q04');
  await check.click();
  await expect.element(screen.getByText('Choose one of the answers first.').first()).toBeVisible();
  expect(verdict()).toBeUndefined();
  expect(document.activeElement?.getAttribute('type')).toBe('radio');
});

it('is answered by keyboard alone: an idea is named, then the right choice', async () => {
  const { screen, verdict } = await shown('Q04');
  const right = q04.parts[0]?.right;
  const wrong = optionOf(q04, 0, (id) => id === 'half the current');
  const chosen = () => screen.container.querySelector<HTMLInputElement>('input:checked');
  const choose = async (id: string | undefined) => {
    await tabTo(() => document.activeElement?.matches('input[type=radio]') === true);
    await userEvent.keyboard(' ');
    for (let i = 0; i < 5 && chosen()?.value !== id; i++) await userEvent.keyboard('{ArrowDown}');
    expect(chosen()?.value).toBe(id);
    await userEvent.keyboard('{Enter}');
  };
  await choose(wrong?.id);
  await expect.poll(verdict).toBe(`Not yet: ${wrong?.said?.trueOf}`);
  await expect.element(screen.getByText(/One thought leads there: “Double the amps/)).toBeVisible();
  await expect.element(screen.getByRole('button', { name: 'Show the working' })).toBeVisible();
  (document.activeElement as HTMLElement).blur();
  await choose(right);
  await expect.poll(verdict).toBe(`Right: ${q04.answer.text}`);
});

it('paints what is chosen in the colour of the one who chose', async () => {
  const { screen } = await shown('Q04');
  await screen.getByRole('radio').first().click();
  const row = screen.container.querySelector('label.chosen') as HTMLElement;
  const yours = document.createElement('span');
  yours.style.color = 'var(--yours)';
  document.body.append(yours);
  expect(getComputedStyle(row).color).toBe(getComputedStyle(yours).color);
  yours.remove();
});

it('takes a choice in parts, says which stand, and takes that back when one is changed', async () => {
  const { screen, check, verdict } = await shown('Q09');
  const groups = screen.getByRole('group').all();
  expect(groups).toHaveLength(3);
  const pick = async (part: number, id: string) => {
    const text = q09.parts[part]?.options.find((option) => option.id === id)?.text as string;
    // once marked, the group's name says how it stands as well
    const name = new RegExp(`^${q09.parts[part]?.label}`);
    await screen.getByRole('group', { name }).getByRole('radio', { name: text }).click();
  };
  await pick(0, 'same');
  await check.click();
  await expect
    .element(screen.getByText(/Choose in every part. Still open: ‘Heat of the whole lead’/).first())
    .toBeVisible();
  await pick(1, q09.parts[1]?.right ?? '');
  await pick(2, q09.parts[1]?.right ?? '');
  await check.click();
  await expect.poll(verdict).toMatch(/^Not yet/);
  await expect.element(screen.getByText(/The longer the lead, the hotter it gets/)).toBeVisible();
  expect([...screen.container.querySelectorAll('legend small')].map((one) => one.textContent)).toEqual([
    '✓ right',
    '✓ right',
    '≠ not yet',
  ]);
  await pick(2, 'same');
  await expect.poll(verdict).toBeUndefined();
  await check.click();
  await expect.poll(verdict).toMatch(/^Right/);
});

it('puts in order by keyboard alone, says each move, and keeps the focus with the item', async () => {
  const { screen, verdict, said, names } = await shown('Q07');
  const dealtNames = q07.items.map(({ name }) => name);
  expect(names()).toEqual(dealtNames);
  const wanted = q07.answer.order.map((id) => q07.items.find((item) => item.id === id)?.name as string);
  for (const [place, name] of wanted.entries()) {
    const label = `Move ${name} up`;
    (document.activeElement as HTMLElement | null)?.blur();
    await tabTo(() => document.activeElement?.getAttribute('aria-label') === label);
    for (let at = names().indexOf(name); at > place; at--) {
      await userEvent.keyboard('{Enter}');
      await expect.poll(said).toBe(`${name} is now ${at} of ${wanted.length}.`);
      await expect.poll(() => document.activeElement?.getAttribute('aria-label')).toBe(label);
    }
  }
  expect(names()).toEqual(wanted);
  expect(verdict()).toBeUndefined();
  await tabTo(() => document.activeElement?.textContent === 'Check');
  await userEvent.keyboard('{Enter}');
  await expect.poll(verdict).toBe(`Right: ${q07.answer.text}`);
  expect(screen.container.querySelector('ol.touched')).not.toBeNull();
});

it('names the idea behind an order, and gives buttons large enough to touch that stay when they can do nothing', async () => {
  const { screen, check, verdict, names } = await shown('Q07');
  const slip = q07.wrong[0];
  const wanted = slip?.order.map((id) => q07.items.find((item) => item.id === id)?.name as string) ?? [];
  for (const [place, name] of wanted.entries())
    for (let at = names().indexOf(name); at > place; at--)
      await screen.getByRole('button', { name: `Move ${name} up` }).click();
  await check.click();
  await expect.poll(verdict).toBe(`Not yet: ${slip?.trueOf}`);
  await expect.element(screen.getByText(/A bigger AWG number is a bigger wire/)).toBeVisible();
  for (const button of screen.container.querySelectorAll('ol button')) {
    const { width, height } = button.getBoundingClientRect();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  }
  const top = screen.getByRole('button', { name: `Move ${names()[0]} up` });
  expect(top.element().getAttribute('aria-disabled')).toBe('true');
  (top.element() as HTMLElement).click();
  expect(names()).toEqual(wanted);
});

it('hands back an order that was not moved', async () => {
  const { screen, check, verdict } = await shown('Q07');
  await check.click();
  await expect.element(screen.getByText(/Move them first/).first()).toBeVisible();
  expect(verdict()).toBeUndefined();
});

it('asks anew with new numbers, nothing chosen, and the focus in the new question', async () => {
  const { screen, check, verdict } = await shown('Q04');
  await screen.getByRole('radio').first().click();
  await check.click();
  await expect.poll(verdict).toBeDefined();
  await screen.getByRole('button', { name: 'New numbers' }).click();
  await expect.poll(verdict).toBeUndefined();
  expect(screen.container.querySelector('input:checked')).toBeNull();
  await expect.poll(() => document.activeElement?.matches('input[type=radio]')).toBe(true);
});

it('stays inside a phone of 360 px', async () => {
  await page.viewport(360, 700);
  for (const template of ['Q04', 'Q09', 'Q07']) {
    const { screen } = await shown(template);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
    screen.unmount();
  }
});
