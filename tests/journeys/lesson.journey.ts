import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { castScenario, celsius, momentAt, plainText, predict, templates } from '#engine';
import type { JourneyContext } from './support/journey.ts';
import type { Visit } from './support/visit.ts';

/** What this journey shows. */
export const name =
  'a lesson: predict, watch, hand the case over, answer, on a phone and on a desk, with and without script';

const lesson = 'lessons/2.2-warm-up-curve/';
const sizes = [
  { width: 360, height: 740 },
  { width: 1280, height: 800 },
];

/** Conductor of the lesson's lead at the end of half an hour, in whole degrees, as the engine has it. */
const atTheEnd = () => {
  const { curves } = predict(castScenario('C125', 20, 25)).run;
  return celsius(momentAt(curves, 1800).conductor).toFixed(0);
};
const question = () => {
  const made = templates.Q28?.question('lesson', 'iec');
  assert.ok(made?.kind === 'number', 'Q28 exists and asks for a number');
  const slip = made.wrong.find(({ id, onlyIn }) => id === 'M21' && onlyIn === undefined);
  assert.ok(slip, 'Q28 knows 63 % of the temperature');
  return {
    stem: plainText(made.stem[0] ?? []),
    wrong: `${celsius(slip.value).toFixed(0)} °C`,
    right: `${celsius(made.answer.value).toFixed(0)} °C`,
  };
};

/** Walks the lesson at both sizes, then reads it without script. */
export default async function walk({ open }: JourneyContext): Promise<void> {
  for (const size of sizes) {
    const visit = await open(lesson, size);
    await predictFirst(visit.page);
    const address = await moveTheCurrent(visit.page);
    await sameNumbersElsewhere(visit.page, await open(address, size));
    await answer(visit.page);
    assert.equal(await visit.scrollsSideways(), false, `the page scrolls sideways at ${size.width} px`);
  }
  await standsWithoutScript(await open(lesson, { scripts: false }));
}

/** Locks four facts in; until then the answer is folded away. */
async function predictFirst(page: Page): Promise<void> {
  assert.equal(await page.locator('#warm').isVisible(), false, 'the answer stands open before the prediction');
  const start = page.getByRole('textbox', { name: 'At the start' });
  await start.scrollIntoViewIfNeeded();
  await alive(page, 'PredictFirst');
  await start.focus();
  await page.keyboard.type('25');
  for (const fact of ['50', '90', '2:00']) {
    await page.keyboard.press('Tab');
    await page.keyboard.type(fact);
  }
  await page.keyboard.press('Enter');
  await page.getByText('Your prediction, locked in').waitFor();
  await page.locator('#warm').waitFor();
}

/** Waits until an island of this component runs. */
async function alive(page: Page, component: string): Promise<void> {
  await page.locator(`astro-island[component-url*="/${component}."]:not([ssr])`).first().waitFor({ state: 'attached' });
}

const readings = (page: Page): Promise<string[]> => page.locator('#warm .reading').allInnerTexts();

/** Moves the current by keyboard; returns the address that then holds the case. */
async function moveTheCurrent(page: Page): Promise<string> {
  const figure = page.locator('#warm');
  await figure.scrollIntoViewIfNeeded();
  await figure.getByText('Your prediction beside the computed curve').waitFor({ state: 'attached' });
  const before = await readings(page);
  assert.ok(before[0]?.includes(atTheEnd()), `the figure reads ${before[0]}, the engine ${atTheEnd()} °C`);
  const slider = figure.getByRole('slider', { name: 'Current, slider' });
  await slider.focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
  assert.equal(await slider.getAttribute('aria-valuetext'), '22.5 A');
  assert.notDeepEqual(await readings(page), before);
  await page.waitForFunction(() => location.hash.includes('warm='));
  return page.url();
}

/** A link opened where nothing is kept shows the figure at once, with the same numbers. */
async function sameNumbersElsewhere(page: Page, other: Visit): Promise<void> {
  const figure = other.page.locator('#warm');
  await figure.getByRole('button', { name: 'Back to the lesson’s case' }).waitFor();
  assert.deepEqual(await readings(other.page), await readings(page));
  await other.close();
}

/** Answers Q28 with 63 % of the temperature, reads why not, then answers it rightly. */
async function answer(page: Page): Promise<void> {
  const { stem, wrong, right } = question();
  const card = page.locator('#q28');
  await card.scrollIntoViewIfNeeded();
  await card.getByText(stem).waitFor();
  await page.locator('astro-island:not([ssr]):has(#q28)').waitFor({ state: 'attached' });
  const field = card.getByRole('textbox');
  await field.fill(wrong);
  await card.getByText(`read as ${wrong.replace(' ', '\u00A0')}`).waitFor();
  await page.keyboard.press('Enter');
  const said = card.locator('[role="status"] .answer');
  await said.getByText(/Not yet: .* started at zero degrees/).waitFor();
  await said.getByText(/The curve starts at ambient, not at zero/).waitFor();
  await field.fill(right);
  await page.keyboard.press('Enter');
  await said.getByText(/^Right/).waitFor();
}

/** Words, numbers and pictures are there before any script. */
async function standsWithoutScript({ page }: Visit): Promise<void> {
  const figure = page.locator('#warm');
  assert.ok(await figure.isVisible(), 'the figure stands without script');
  assert.ok(
    ((await figure.textContent()) ?? '').includes(`${atTheEnd()}`),
    'the figure tells its numbers without script',
  );
  assert.ok(
    (await figure.locator('svg path[data-curve="conductor"]:visible').count()) === 1,
    'the curve is drawn without script',
  );
  assert.ok(await page.getByText(question().stem).isVisible(), 'the question is asked without script');
  assert.ok(
    ((await page.locator('main').textContent()) ?? '').includes('Never load a lead above its marking'),
    'cautions stand',
  );
  assert.ok(
    ((await page.locator('footer').textContent()) ?? '').includes('This is for learning'),
    'the deferral stands at the foot',
  );
}
