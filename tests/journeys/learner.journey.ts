import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import {
  type MisconceptionId,
  mark,
  memoriesOf,
  misconceptions,
  readNotebook,
  type TypedQuestion,
  templates,
} from '#engine';
import { accessibilityFaults } from './support/accessibility.ts';
import { openGates } from './support/course.ts';
import type { JourneyContext } from './support/journey.ts';

/** What this journey shows. */
export const name =
  'a learner: three mistakes told apart in a lesson, back for practice the next day, saved, erased and opened again';

const phone = { width: 360, height: 740 };
const lesson = 'lessons/1.1-double-the-amps/';
/** Questions of the lesson by their ids on its page, and the wrong idea that each is answered by. */
const mistakes: readonly [id: string, template: string, seed: string, idea: MisconceptionId][] = [
  ['faded-one', 'Q01', 'faded-one', 'M02'],
  ['q02', 'Q02', 'lesson', 'M01'],
  ['q03', 'Q03', 'lesson', 'M03'],
];

/** Served by one template, which asks for a number. */
const ofHeat = '1.1 work out the heat of each metre';

export default async function walk({ open }: JourneyContext): Promise<void> {
  const visit = await open('', phone);
  const { page } = visit;
  await page.clock.setFixedTime('2031-05-04T18:00:00');
  const { origin } = new URL(page.url());
  const home = page.url();
  await page.goto(new URL(lesson, home).href, { waitUntil: 'networkidle' });
  await threeMistakes(page);
  await page.clock.setFixedTime('2031-05-05T07:30:00');
  await page.goto(new URL('practice/', home).href, { waitUntil: 'networkidle' });
  await theyComeBack(page);
  assert.equal(await visit.scrollsSideways(), false, 'practice scrolls sideways on a phone');
  await page.getByRole('link', { name: 'Where you stand' }).first().click();
  const file = await savedAndErased(page);
  await openedAgain(page, file);
  assert.equal(await visit.scrollsSideways(), false, 'the learner’s page scrolls sideways on a phone');
  assert.equal(new URL(page.url()).origin, origin);
}

function asked(template: string, seed: string): TypedQuestion {
  return templates[template]?.question(seed, 'iec') as TypedQuestion;
}

/** What a learner with that idea types. */
function slipOf(question: TypedQuestion, idea: MisconceptionId): string {
  const { answer, wrong } = question;
  const slip = wrong.find(({ id, onlyIn }) => id === idea && onlyIn === undefined);
  assert.ok(slip, `${question.ref.id} knows ${idea}`);
  const unit = answer.text.replace(/ \(.*/, '').replace(/^[\d.\s]+/, '');
  const typed = `${slip.value.toPrecision(3)} ${unit}`; // W/m, times and K are asked for: as SI has them
  assert.equal(mark(question, typed).misconception?.id, idea, `${question.ref.id}: ${typed}`);
  return typed;
}

/** Each mistake gets the explanation that is its own, and none of the others’. */
async function threeMistakes(page: Page): Promise<void> {
  await openGates(page);
  for (const [id, template, seed, idea] of mistakes) {
    const block = page.locator(`#${id}`);
    await block.scrollIntoViewIfNeeded();
    await page.locator(`astro-island:not([ssr]) #${id}`).waitFor();
    await block.getByRole('textbox').fill(slipOf(asked(template, seed), idea));
    await block.getByRole('button', { name: 'Check' }).click();
    await block.getByText(misconceptions[idea].whyNot).waitFor();
    const said = await block.locator('.feedback').textContent();
    for (const [, , , other] of mistakes)
      assert.equal(said?.includes(misconceptions[other].thinks), other === idea, `${id} is told ${other}`);
  }
  await page.waitForFunction(() => localStorage.getItem('ampere-and-ember:notebook')?.split('"memory":').length === 4);
  await page.getByRole('link', { name: 'Practise this lesson' }).waitFor();
}

/** The day after, practice asks these three; one that is answered wrongly by somebody sure comes back in the session. */
async function theyComeBack(page: Page): Promise<void> {
  await page.getByRole('heading', { name: '3 questions due today' }).waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.getByRole('button', { name: 'Begin' }).click();
  const wanted = mistakes.flatMap(([, template]) => templates[template]?.objectives ?? []).map(wordsOf);
  const met: string[] = [];
  let total = 3;
  for (let turn = 1; turn <= total; turn++) {
    await page.getByText(`Question ${turn} of ${total}`).waitFor();
    const aim = wordsOf(((await page.locator('.what').textContent()) ?? '').replace(/^\s*Again[^:]*:/, ''));
    if (aim === wordsOf(ofHeat) && total === 3) {
      await sureAndWrong(page);
      total = 4;
    }
    met.push(aim);
    await page.getByRole('button', { name: /^(Next question|Leave this one|Finish)/ }).click();
  }
  assert.deepEqual(met.toSorted(), [...wanted, wordsOf(ofHeat)].toSorted(), 'what practice asks');
  await page.getByRole('heading', { name: 'That is it for now' }).waitFor();
  await page.getByText('≠ not yet').waitFor();
}

const wordsOf = (objective: string): string => objective.replace(/\s+/g, ' ').trim().toLowerCase();

async function sureAndWrong(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'Sure', exact: true }).check();
  await page.getByRole('textbox', { name: /Your answer/ }).fill('999 W/m');
  await page.getByRole('button', { name: 'Check' }).click();
  await page.getByText('You were sure, and it is not so.').waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
}

/** The notebook goes into a file, and then from the device, after a second look. */
async function savedAndErased(page: Page): Promise<string> {
  await page.getByRole('heading', { name: 'Not yet' }).waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save my notebook as a file' }).click(),
  ]);
  assert.equal(download.suggestedFilename(), 'notebook-2031-05-05.json');
  const file = await download.path();
  const { notebook, faults } = readNotebook(JSON.parse(await readFile(file, 'utf8')));
  assert.equal(faults, undefined, 'the saved notebook is not whole');
  assert.equal(notebook && memoriesOf(notebook).length, 3);
  await page.getByRole('button', { name: 'Erase everything on this device' }).click();
  await page.getByRole('button', { name: 'Keep it' }).click();
  assert.notDeepEqual(await kept(page), [], 'nothing is erased before the second look');
  await page.getByRole('button', { name: 'Erase everything on this device' }).click();
  await page.getByRole('button', { name: 'Yes, erase it all' }).click();
  await page.getByText('Everything is erased on this device.').waitFor();
  assert.deepEqual(await kept(page), []);
  await page.getByText('Answer questions in a lesson').waitFor();
  return file;
}

const kept = (page: Page): Promise<string[]> =>
  page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('ampere-and-ember')));

async function openedAgain(page: Page, file: string): Promise<void> {
  const input = page.locator('input[type="file"]');
  await input.setInputFiles({
    name: 'shopping.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"milk": 2}'),
  });
  await page.getByText('This file cannot be opened as a notebook. Nothing was changed.').waitFor();
  await page.getByText('It is no notebook of this site: its format must be “ampere-and-ember notebook”.').waitFor();
  await input.setInputFiles(file);
  await page.getByText(/^Opened: \d+ entries/).waitFor();
  await page.getByText('Work out the heat of each metre').first().waitFor();
}
