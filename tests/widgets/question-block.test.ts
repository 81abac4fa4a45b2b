import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { celsius, plainText, questionFrom, refFromText, type TypedQuestion, templates } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import QuestionBlock from '#site/widgets/QuestionBlock.svelte';
import ReadFigure from '#site/widgets/question/ReadFigure.svelte';
import { texHtml } from '#site/widgets/question/tex.ts';
import '#site/styles/base.css';

const asked = (template: string, seed = 'trial', usage: 'iec' | 'na' = 'iec') =>
  (templates[template] as NonNullable<(typeof templates)[string]>).question(seed, usage) as TypedQuestion;

async function shown(template: string, props: Record<string, unknown> = {}) {
  const among = Object.values(templates);
  const all = {
    id: 'q',
    template,
    seed: 'trial',
    number: 1,
    of: 3,
    bench: '/bench/',
    among,
    Figure: ReadFigure,
    ...props,
  };
  const screen = await render(QuestionBlock, { props: all });
  const field = screen.getByRole('textbox', { name: /Your answer/ });
  const answer = async (text: string) => {
    await field.fill(text);
    await userEvent.keyboard('{Enter}');
  };
  const verdict = () => screen.container.querySelector('.verdict')?.textContent?.trim();
  return { screen, field, answer, verdict };
}

/** The value of a slip in °C, to whole degrees. */
const slip = (question: TypedQuestion, id: string): string => {
  const found = question.wrong.find((one) => one.id === id && one.onlyIn === undefined);
  return `${celsius(found?.value ?? Number.NaN).toFixed(0)} °C`;
};

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  history.replaceState(null, '', location.pathname + location.search);
});

it('asks the question of its seed', async () => {
  const { screen } = await shown('Q28');
  for (const paragraph of asked('Q28').stem) await expect.element(screen.getByText(plainText(paragraph))).toBeVisible();
});

it('reads the answer back while it is typed', async () => {
  const { screen, field } = await shown('Q29');
  await field.fill('0.0208 kA');
  await expect.element(screen.getByText('read as 0.0208\u00A0kA')).toBeVisible();
});

it('asks for a missing unit, and does not count that as a try', async () => {
  const { screen, field, answer, verdict } = await shown('Q29');
  await answer('9.4');
  await expect.element(screen.getByText('9.4 of what?')).toBeVisible();
  await expect.element(screen.getByText(/The number needs its unit/).first()).toBeVisible();
  await expect.element(field).toHaveFocus();
  expect(verdict()).toBeUndefined();
  expect(screen.container.textContent).not.toContain('Show the working');
});

it('names the likely thought, the question to notice and where to look: 63 % of the temperature', async () => {
  const question = asked('Q28');
  const { screen, answer, verdict } = await shown('Q28');
  await answer(slip(question, 'M21'));
  await expect.poll(verdict).toMatch(/^Not yet:.*started at zero degrees/);
  await expect.element(screen.getByText(/The 63\s% is of the temperature/)).toBeVisible();
  await expect.element(screen.getByText(/how hot is the cord before the current is switched on/)).toBeVisible();
  await expect.element(screen.getByText(question.look)).toBeVisible();
  expect(screen.container.querySelector('[role="status"] .answer')).not.toBeNull();
});

it('takes back what it said as soon as the answer changes, then says right', async () => {
  const question = asked('Q28');
  const { screen, field, answer, verdict } = await shown('Q28');
  await answer(slip(question, 'M20'));
  await expect.poll(verdict).toMatch(/^Not yet/);
  await field.fill('6');
  await expect.poll(verdict).toBeUndefined();
  await answer(`${celsius(question.answer.value).toFixed(0)} °C`);
  await expect.poll(verdict).toMatch(/^Right/);
  await expect.element(screen.getByRole('button', { name: 'Show a step' })).not.toBeInTheDocument();
});

it('shows steps one by one, none of which is the answer', async () => {
  const question = asked('Q28');
  const { screen } = await shown('Q28');
  await screen.getByRole('button', { name: 'Show a step' }).click();
  const items = () => [...screen.container.querySelectorAll('.steps li')].length;
  expect(items()).toBe(1);
  for (let i = 1; i < question.hints.length; i++)
    await screen.getByRole('button', { name: 'Show another step' }).click();
  expect(items()).toBe(question.hints.length);
  await expect.element(screen.getByRole('button', { name: /Show .* step/ })).not.toBeInTheDocument();
});

it('opens the working and the cases after an honest try', async () => {
  const question = asked('Q29');
  const { screen, answer } = await shown('Q29');
  await answer('999 A');
  await screen.getByRole('button', { name: 'Show the working' }).click();
  expect(screen.container.querySelectorAll('.feedback .steps li')).toHaveLength(question.solution.length);
  const links = screen.getByRole('link', { name: /Open on the bench/ }).all();
  expect(links).toHaveLength(question.scenarios.length);
  expect(links[0]?.element().getAttribute('href')).toMatch(/^\/bench\/#bench=./);
});

it.each([1, 2, 3])('gives %i steps from the start: all but the last worked, the last one told', async (given) => {
  const { hints, solution } = asked('Q28');
  const { screen } = await shown('Q28', { given });
  const items = [...screen.container.querySelectorAll('.steps li')];
  const expected = [...solution.slice(0, given - 1), ...hints.slice(given - 1, given)];
  expect(items).toHaveLength(expected.length);
  expect(items.at(-1)?.textContent).toContain(plainText(expected.at(-1) ?? []).slice(0, 30));
});

it('draws new numbers, keeps their seed in the address, and opens them again from there', async () => {
  const first = await shown('Q29');
  await first.screen.getByRole('button', { name: 'New numbers' }).click();
  const ref = refFromText(readFragment(location.hash, 'q') ?? '');
  expect(ref?.seed).toBe('trial-2');
  const question = ref && questionFrom(ref);
  const stem = question && 'stem' in question ? plainText(question.stem[0] ?? []) : '';
  await expect.element(first.screen.getByText(stem)).toBeVisible();
  await expect.element(first.field).toHaveFocus();
  first.screen.unmount();
  const second = await shown('Q29');
  await expect.element(second.screen.getByText(stem)).toBeVisible();
});

it('says in words when a link’s numbers cannot be read', async () => {
  history.replaceState(null, '', '#q=Q29.99.iec.a');
  const { screen } = await shown('Q29');
  await expect.element(screen.getByRole('alert')).toMatchTextContent(/has changed since this link was made/);
  await expect.element(screen.getByText(plainText(asked('Q29').stem[0] ?? []))).toBeVisible();
});

it('turns with a choice of practice made elsewhere on the page, but keeps the numbers of a link', async () => {
  history.replaceState(null, '', '#q=Q28.1.na.sent');
  const { screen } = await shown('Q28');
  const sent = plainText(asked('Q28', 'sent', 'na').stem[0] ?? []);
  await expect.element(screen.getByText(sent)).toBeVisible();
  practice.value = 'na';
  await expect.element(screen.getByText(sent)).toBeVisible();
  practice.value = 'iec';
  await expect.element(screen.getByText(plainText(asked('Q28', 'sent').stem[0] ?? []))).toBeVisible();
});

it('gives a trace a reading line that the arrow keys move, and hides what is asked', async () => {
  const question = asked('Q30');
  const { screen, answer, verdict } = await shown('Q30');
  const line = screen.getByRole('slider', { name: /Trace to read/ });
  await expect.element(line).toBeVisible();
  (line.element() as HTMLElement).focus();
  await userEvent.keyboard('{Home}{ArrowRight}');
  expect(line.element().getAttribute('aria-valuetext')).toMatch(/conductor \d+\s°C/);
  expect(screen.container.textContent).not.toContain(question.answer.text);
  await answer('0 s');
  await expect.poll(verdict).toMatch(/^Not yet/);
  await answer(`${question.answer.value.toPrecision(2)} s`);
  await expect.poll(verdict).toMatch(/^Right/);
});

it('can set every formula of every template', () => {
  for (const template of Object.values(templates)) {
    for (const usage of template.practices) {
      for (let i = 0; i < 12; i++) {
        const { stem, hints, solution } = template.question(`seed ${i}`, usage);
        for (const piece of [...stem, ...hints, ...solution].flat()) {
          if (piece.kind === 'formula') expect(texHtml(piece.tex), piece.tex).not.toMatch(/\\|undefined/);
        }
      }
    }
  }
});

it('sets roots, fractions and indices', () => {
  expect(texHtml('I_\\mathrm{eq} = I\\sqrt{D}')).toBe(
    '<i>I</i><sub>eq</sub><span class="sign">=</span><i>I</i><span class="root">√<span class="under"><i>D</i></span></span>',
  );
  expect(texHtml('e^{-t/\\tau}')).toBe('<i>e</i><sup><span class="sign">−</span><i>t</i>/<i>τ</i></sup>');
  expect(() => texHtml('\\integral x')).toThrow('cannot set');
});
