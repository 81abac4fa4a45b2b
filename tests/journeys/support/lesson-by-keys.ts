import assert from 'node:assert/strict';
import type { Locator, Page } from 'playwright-core';
import { plainText, type Question, templates } from '#engine';
import { rightAnswer, wrongAnswer } from './answers.ts';
import type { Hands, Stop } from './keyboard.ts';

/** What was done in a lesson, so that the list of lessons can be asked for it. */
export interface Done {
  /** Ids of predictions, words and questions that the notebook should now hold. */
  items: string[];
  /** How many of them the lesson has. */
  of: number;
  right: number;
  wrong: number;
  /** What was moved: a slider of a figure, a measurement that was taken, a reading line. */
  moved: string[];
}

/** What is known while a lesson is walked through. */
interface Walk {
  hands: Hands;
  done: Set<string>;
  questions: string[];
  pads: string[];
  right: number;
  wrong: number;
  moved: Map<'slider' | 'taken' | 'line' | 'back', string>;
  stepped: boolean;
  /** What is left alone, so that the list shows a lesson under way. */
  leave: string | undefined;
}

const guesses: Record<string, string> = { 'min:s': '2:00', '°C': '60', '%': '50', '×': '4' };
/** What a figure tells: all of its body but its controls. */
const told = '.body > :not(.controls, .actions)';
const most = 900; // stops of one lesson

/**
 * Goes through the lesson on the page by keyboard alone, from its head to its last way on: commits to every prediction, moves
 * the first slider and the first reading line, writes its own words, answers the questions rightly and wrongly by turns (but
 * not the last one). Ends with the focus on the way to the next lesson, or on the way back where there is no next.
 */
export async function throughLesson(hands: Hands): Promise<Done> {
  const { page } = hands;
  const all = await itemsOf(page);
  const leave = all.findLast((item) => item.startsWith('question:'));
  const walk: Walk = {
    hands,
    done: new Set(),
    questions: [],
    pads: [],
    right: 0,
    wrong: 0,
    moved: new Map(),
    stepped: false,
    leave,
  };
  const last = (await page.locator('a[rel="next"]').count()) > 0 ? 'next' : 'prev';
  let reached = false;
  for (let i = 0; i < most && !reached; i++) {
    let stop = await hands.tab();
    if (stop.kind === 'nothing') throw new Error(`${page.url()}: Tab leaves the page before its ways on`);
    if (stop.waiting) {
      stop = await alive(hands);
      await before(walk, stop);
    }
    await actOn(walk, stop);
    reached = (await hands.stop()).way === last;
  }
  assert.ok(reached, `${page.url()}: its last way on is not reached by ${most} stops`);
  assert.equal(await page.locator('.gate:not([hidden])').count(), 0, 'an answer is still folded away');
  const left = all.filter((item) => !walk.done.has(item) && item !== leave);
  assert.deepEqual(left, [], 'not reached by keyboard');
  const changed = walk.moved.has('slider') || walk.moved.has('taken');
  const movable = await page.locator('figure input[type="range"], figure [data-piece]').count();
  assert.ok(changed || movable === 0, `${page.url()}: no figure was moved by its slider, nor by a measurement`);
  return {
    items: [...walk.done],
    of: all.length,
    right: walk.right,
    wrong: walk.wrong,
    moved: [...walk.moved].map(([what, where]) => `${what} of ${where}`),
  };
}

/** What a lesson asks of its reader, each once, in the order of the page. */
const itemsOf = (page: Page): Promise<string[]> =>
  page
    .locator('[data-item]')
    .evaluateAll((found) => [...new Set(found.map((one) => (one as HTMLElement).dataset.item ?? ''))]);

/** An island that comes alive under the focus must not lose it. */
async function alive({ page, stop }: Hands): Promise<Stop> {
  const before = await stop();
  await page.waitForFunction(() => !document.activeElement?.closest('astro-island[ssr]'));
  const after = await stop();
  assert.equal(after.label, before.label, 'the focus moved while a figure came alive');
  return after;
}

/** A reading line can be reached once its figure is alive: it stands before the control by which the figure was entered. */
async function before(walk: Walk, entered: Stop): Promise<void> {
  if (entered.figure === undefined || entered.item !== undefined) return;
  const stop = await walk.hands.tab(true);
  if (stop.figure === entered.figure) await actOn(walk, stop);
  await walk.hands.tab();
}

/** Does what there is to do at a stop. The focus may end elsewhere in the same part of the page. */
async function actOn(walk: Walk, stop: Stop): Promise<void> {
  const { item = '' } = stop;
  if (item.startsWith('prediction:')) await predict(walk, stop, item);
  else if (item.startsWith('words:')) await sayWhy(walk, stop, item);
  else if (item.startsWith('question:')) await answer(walk, stop, item);
  else if (stop.figure !== undefined) await move(walk, stop, stop.figure);
}

async function sayWhy({ hands, done }: Walk, stop: Stop, item: string): Promise<void> {
  if (stop.kind !== 'lines' || done.has(item)) return;
  await hands.type('More amps, far more heat.');
  done.add(item);
}

async function predict(walk: Walk, stop: Stop, item: string): Promise<void> {
  const { hands, done } = walk;
  if (done.has(item)) return;
  if (stop.kind === 'text' && stop.value === '') await hands.type(await guess(hands.page));
  else if (stop.kind === 'radio' && !stop.chosen) {
    const { chosen } = await hands.press('ArrowDown');
    assert.ok(chosen, `${item}: nothing is chosen by an arrow`);
  } else if (stop.moves?.endsWith(' 1') && !done.has(`${item} in order`)) {
    const thing = stop.moves.replace(/ -?1$/, '');
    const { moves = '' } = await hands.press('Enter');
    assert.equal(moves.replace(/ -?1$/, ''), thing, `${item}: the focus did not go along with what was moved`);
    done.add(`${item} in order`);
  } else if (stop.label === 'Place points by keyboard') await sketch(walk, item);
  else if (stop.label === 'Lock it in') await lockIn(walk, item);
}

/** Something to say in the unit of the field that has the focus. */
async function guess(page: Page): Promise<string> {
  const unit = await page.evaluate(() => {
    const ids = document.activeElement?.getAttribute('aria-describedby')?.split(' ') ?? [];
    return document.getElementById(ids.find((id) => id.endsWith('-unit')) ?? '')?.textContent?.trim() ?? '';
  });
  return guesses[unit] ?? '10';
}

/** The first pad of a lesson is drawn on point by point, the second by its facts. */
async function sketch(walk: Walk, item: string): Promise<void> {
  const { hands, pads } = walk;
  pads.push(item);
  if (pads.length > 1) {
    await hands.tabTo('the facts of a pad', ({ label }) => label.startsWith('Give facts'));
    await hands.press('Enter');
    await hands.page.getByRole('button', { name: 'Draw it from these' }).waitFor();
    let stop = await hands.tab();
    for (; stop.kind === 'text'; stop = await hands.tab()) await hands.type(await guess(hands.page));
    await hands.press('Enter');
    return;
  }
  const first = await hands.press('Enter');
  assert.equal(first.kind, 'range', `${item}: the focus goes to the first point`);
  const before = await toldBy(hands.page);
  await hands.press('ArrowUp', 3);
  await hands.press('ArrowRight');
  await hands.press('PageUp');
  await hands.press('End');
  await hands.press('ArrowUp');
  await hands.press('Home');
  assert.notEqual(await toldBy(hands.page), before, `${item}: a point is moved by arrows`);
}

const toldBy = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('aria-valuetext'));

/** Locks in; the answer opens, and the focus goes to the heading that says so. */
async function lockIn({ hands, done }: Walk, item: string): Promise<void> {
  const gates = hands.page.locator('.gate:not([hidden])');
  const before = await gates.allTextContents();
  await hands.page.keyboard.press('Enter');
  await hands.page.waitForFunction(() => /locked in/.test(document.activeElement?.textContent ?? ''));
  const stop = await hands.stop();
  assert.ok(stop.inWindow && stop.outlined, `${item}: the heading of what is locked in is seen to have the focus`);
  done.delete(`${item} in order`);
  done.add(item);
  const after = await gates.count();
  if (!before.some((words) => words.includes('all your predictions')))
    assert.ok(after < before.length, `${item}: locked in, but no answer opened`);
}

/** Moves the first slider and the first reading line of the lesson, and goes back to the lesson's case. */
async function move({ hands, moved }: Walk, stop: Stop, figure: string): Promise<void> {
  const { page } = hands;
  if (stop.kind === 'range' && !moved.has('slider')) {
    const readings = page.locator(`figure[id="${figure}"]`).locator(told);
    const before = await readings.allTextContents();
    await hands.press('ArrowRight', 4);
    if (!(await changes(readings, before))) await hands.press('ArrowLeft', 8);
    assert.ok(await changes(readings, before), `${figure}: nothing follows “${stop.label}”`);
    moved.set('slider', figure);
  } else if (stop.label.startsWith('Take this measurement') && !moved.has('taken')) {
    const readings = page.locator(`figure[id="${figure}"]`).locator(told);
    const before = await readings.allTextContents();
    await hands.press('Enter');
    assert.ok(await changes(readings, before), `${figure}: nothing follows “${stop.label}”`);
    moved.set('taken', figure);
  } else if (stop.kind === 'reading line' && !moved.has('line')) {
    const before = await toldBy(page);
    await hands.press('ArrowRight', 2);
    assert.notEqual(await toldBy(page), before, `${figure}: the reading line does not move`);
    moved.set('line', figure);
  } else if (stop.label.startsWith('Back to the lesson') && !moved.has('back')) {
    await hands.press('Enter');
    moved.set('back', figure);
  }
}

/** Whether texts become others within half a second: some follow only once a slider rests. */
async function changes(texts: Locator, from: readonly string[]): Promise<boolean> {
  for (let i = 0; i < 5; i++) {
    if ((await texts.allTextContents()).join('\n') !== from.join('\n')) return true;
    await texts.page().waitForTimeout(100);
  }
  return false;
}

/** Answers a question, rightly and wrongly by turns, and reads what is said. */
async function answer(walk: Walk, stop: Stop, item: string): Promise<void> {
  const { hands, done, questions } = walk;
  if (item === walk.leave || questions.includes(item)) return;
  if (!['text', 'radio'].includes(stop.kind) && stop.moves === undefined) return;
  questions.push(item);
  const question = await questionHere(hands.page);
  const rightly = questions.length % 2 === 1;
  const { given, said } = rightly ? rightAnswer(question) : wrongAnswer(question);
  if (typeof given === 'string') await hands.type(given);
  else if (given.kind === 'choice') await choose(walk, question, given.chosen);
  else await putInOrder(hands, given.ids);
  if (typeof given !== 'string') await hands.tabTo('Check', ({ kind }) => kind === 'submit');
  await hands.press('Enter');
  const card = hands.page.locator(`[data-item="${item}"] [role="status"] .answer`);
  await card.waitFor();
  await reads(card.locator('.verdict'), said.headline, item);
  if (said.whyNot !== undefined) await reads(card, said.whyNot, item);
  if (said.notice !== undefined) await reads(card, said.notice, item);
  walk[rightly ? 'right' : 'wrong'] += 1;
  done.add(item);
  if (!rightly && !walk.stepped) await askOn(walk, item);
}

async function reads(where: { innerText(): Promise<string> }, words: string, item: string): Promise<void> {
  const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
  const there = plain(await where.innerText());
  assert.ok(there.includes(plain(words)), `${item}: “${words}” is not said, but “${there}”`);
}

/** After a wrong answer: asks for every step there is, then for the working. */
async function askOn(walk: Walk, item: string): Promise<void> {
  const { hands } = walk;
  walk.stepped = true;
  const isStep = ({ label }: Stop) => /^Show (a|another) step$/.test(label);
  const step = hands.page.locator(`[data-item="${item}"] button.step`);
  if ((await step.count()) > 0) {
    await hands.tabTo('Show a step', isStep);
    for (let i = 0; i < 9 && (await step.count()) > 0; i++) await hands.press('Enter');
  }
  await hands.tabTo('the working', ({ label }) => label === 'Show the working');
  const { label } = await hands.press('Enter');
  assert.equal(label, 'Fold the working away', `${item}: the working does not unfold`);
}

/** The question that the focus is in, drawn by the engine from what its island was given. */
async function questionHere(page: Page): Promise<Question> {
  const [props, stem] = await page.evaluate(() => {
    const island = document.activeElement?.closest('astro-island');
    return [island?.getAttribute('props') ?? '{}', island?.querySelector('.stem')?.textContent ?? ''];
  });
  const { template, seed } = JSON.parse(props) as Record<'template' | 'seed', [0, string]>;
  const question = templates[template[1]]?.question(seed[1], 'iec');
  assert.ok(question, `the engine has no question ${template[1]}`);
  const plain = (text: string) => text.replace(/\s+/g, '');
  const opening = plain(plainText(question.stem[0]?.slice(0, 1) ?? []));
  assert.ok(plain(stem).includes(opening), `${template[1]} asks “${stem}”, the engine “${opening}”`);
  return question;
}

async function choose({ hands }: Walk, question: Question, chosen: Readonly<Record<string, string>>): Promise<void> {
  assert.equal(question.kind, 'choose');
  for (const [i, part] of (question.kind === 'choose' ? question.parts : []).entries()) {
    if (i > 0) await hands.tab();
    let stop = await hands.stop();
    if (stop.value === chosen[part.id]) stop = await hands.press('Space');
    for (let k = 0; k < part.options.length && stop.value !== chosen[part.id]; k++)
      stop = await hands.press('ArrowDown');
    assert.ok(stop.value === chosen[part.id] && stop.chosen, `${part.label}: ${chosen[part.id]} is not chosen by keys`);
  }
}

/** Sorts a list by its buttons: what belongs first is moved up until it is there, then what belongs second. */
async function putInOrder(hands: Hands, wanted: readonly string[]): Promise<void> {
  for (const [place, id] of wanted.entries()) {
    const shown = await orderHere(hands.page);
    const up = shown.indexOf(id) - place;
    if (up === 0) continue;
    const here = shown.indexOf((await hands.stop()).moves?.replace(/ -?1$/, '') ?? '');
    const wants = `${id} -1`;
    if ((await hands.stop()).moves !== wants)
      await hands.tabTo(wants, ({ moves }) => moves === wants, here > place + up);
    const { moves } = await hands.press('Enter', up);
    assert.ok(moves?.startsWith(`${id} `), `the focus did not stay with ${id}`);
  }
  assert.deepEqual(await orderHere(hands.page), wanted);
}

/** The ids of the list that has the focus, as they stand. */
const orderHere = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...new Set(
      [...(document.activeElement?.closest('ol')?.querySelectorAll<HTMLElement>('[data-move]') ?? [])].map(
        (button) => button.dataset.move?.replace(/ -?1$/, '') ?? '',
      ),
    ),
  ]);
