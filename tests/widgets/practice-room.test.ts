import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  catalogueOf,
  emptyNotebook,
  type Memory,
  memoriesOf,
  type Notebook,
  type Review,
  reviewed,
  type TypedQuestion,
  templates,
  withReview,
} from '#engine';
import { keptNotebook, notebookKey } from '#site/store/notebook.ts';
import { today } from '#site/store/today.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import QuestionBlock from '#site/widgets/QuestionBlock.svelte';
import MyPractice from '#site/widgets/spaced/MyPractice.svelte';
import PracticeRoom from '#site/widgets/spaced/PracticeRoom.svelte';
import { Room } from '#site/widgets/spaced/room.svelte.ts';
import '#site/styles/base.css';

const catalogue = catalogueOf(Object.values(templates));
const lessons = [
  { number: '1.1', title: 'Double the amps', href: '/lessons/1.1/' },
  { number: '2.2', title: 'The warm-up curve', href: '/lessons/2.2/' },
];
const at = '2031-05-04T09:30:00.000Z';
const heat = '1.1 work out the heat of each metre'; // served by Q01 alone
const review = (day: number, more: Partial<Review> = {}): Review => ({
  day,
  template: 'Q01',
  seed: `s${day}`,
  difficulty: 1,
  grade: 3,
  tags: [],
  ...more,
});

const keep = (notebook: Notebook) => localStorage.setItem(notebookKey, JSON.stringify(notebook));
const memories = (): Memory[] => memoriesOf(keptNotebook() ?? emptyNotebook);
const inRoom = () => render(PracticeRoom, { props: { catalogue, lessons, bench: '/bench/', mine: '/practice/mine/' } });
const mine = () => render(MyPractice, { props: { catalogue, lessons, room: '/practice/' } });

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  history.replaceState(null, '', location.pathname + location.search);
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2031-05-04T10:00:00') });
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

it('has nothing to ask of one who has begun nothing, and lets any lesson be practised', async () => {
  const screen = await inRoom();
  await expect.element(screen.getByRole('heading', { name: 'Nothing to ask yet' })).toBeVisible();
  await screen.getByRole('link', { name: '2.2 The warm-up curve' }).click();
  await expect.element(screen.getByRole('heading', { name: 'Lesson 2.2: The warm-up curve' })).toBeVisible();
  await screen.getByRole('button', { name: 'Begin' }).click();
  await expect.element(screen.getByText('Question 1 of 8')).toBeVisible();
});

it('asks what is due, takes sureness first, and brings back at once what was sure and wrong', async () => {
  keep(withReview(emptyNotebook, [heat], review(today() - 9, { grade: 1 }), at));
  const screen = await inRoom();
  await expect.element(screen.getByRole('heading', { name: '1 question due today' })).toBeVisible();
  // lesson 1.1 counts as begun, so that its other aims are asked after it
  await screen.getByRole('button', { name: 'Begin' }).click();
  await expect.element(screen.getByText('Question 1 of 3')).toBeVisible();
  await screen.getByRole('radio', { name: 'Sure', exact: true }).click();
  await screen.getByRole('textbox', { name: /Your answer/ }).fill('999 W/m');
  await userEvent.keyboard('{Enter}');
  await expect.element(screen.getByText(/You were sure, and it is not so/)).toBeVisible();
  await expect.element(screen.getByText('Question 1 of 4')).toBeVisible();
  expect(memories()[0]?.reviews.at(-1)).toMatchObject({ day: today(), grade: 1, template: 'Q01' });
  await screen.getByRole('button', { name: 'Next question' }).click();
  await expect.element(screen.getByText('Question 2 of 4')).toBeVisible();
  expect(screen.container.contains(document.activeElement)).toBe(true);
});

it('keeps nothing of practice in the address, nor among the answers of a lesson', async () => {
  history.replaceState(null, '', '#lesson=1.1');
  const screen = await inRoom();
  await screen.getByRole('button', { name: 'Begin' }).click();
  await screen.getByRole('button', { name: 'New numbers' }).click();
  expect(location.hash).toBe('#lesson=1.1');
  expect(keptNotebook()?.entries.filter(({ kind }) => kind === 'question')).toEqual([]);
});

it('says so where the browser keeps nothing, and still practises', async () => {
  history.replaceState(null, '', '#lesson=1.1');
  vi.spyOn(Storage.prototype, 'getItem').mockImplementation(() => {
    throw new Error('blocked');
  });
  const screen = await inRoom();
  await expect.element(screen.getByText(/This browser keeps nothing/)).toBeVisible();
  await screen.getByRole('button', { name: 'Begin' }).click();
  await expect.element(screen.getByText('Question 1 of 8')).toBeVisible();
});

it('ends after ten minutes with the question that stands, and goes on when it is told to', async () => {
  const room = new Room(catalogue, () => 'iec');
  room.open();
  room.begin(room.planned('1.1'));
  room.next();
  expect(room.stage).toBe('asking');
  vi.setSystemTime(new Date('2031-05-04T10:11:00'));
  room.next();
  expect([room.stage, room.timeUp]).toEqual(['done', true]);
  room.goOn();
  expect([room.stage, room.at]).toEqual(['asking', 2]);
  room.next();
  expect(room.stage).toBe('asking');
});

it('grades by marks, tries and sureness, and not what was copied from the working', () => {
  const question = (seed: string) => templates.Q01?.question(seed, 'iec') as TypedQuestion;
  const room = new Room(catalogue, () => 'iec');
  room.open();
  room.begin(room.planned('1.1'));
  const answer = { marks: 1, hinted: false, tries: 1, tags: [], copied: false } as const;
  room.sure = 'sure';
  room.marked({ ...answer, question: question('a') });
  expect(room.grades.get(heat)).toBe(4);
  room.fresh();
  room.marked({ ...answer, question: question('b'), copied: true });
  expect(memories().map(({ reviews }) => reviews.map(({ seed, grade }) => [seed, grade]))).toEqual([[['a', 4]]]);
});

it('counts an answer in a lesson as a review: wrong, then right on the second try is one of grade 2', async () => {
  const question = templates.Q01?.question('lesson', 'iec') as TypedQuestion;
  const props = {
    id: 'q',
    template: 'Q01',
    seed: 'lesson',
    number: 1,
    of: 1,
    bench: '/',
    among: Object.values(templates),
  };
  const article = document.createElement('article');
  article.dataset.lesson = '1.1';
  document.body.append(article);
  const screen = await render(QuestionBlock, { props });
  const answer = async (text: string) => {
    await screen.getByRole('textbox', { name: /Your answer/ }).fill(text);
    await userEvent.keyboard('{Enter}');
  };
  await answer('999 W/m');
  await expect.poll(() => memories()[0]?.reviews.map(({ grade }) => grade)).toEqual([1]);
  await answer(question.answer.text.replace(/ \(.*/, ''));
  await expect.poll(() => memories()[0]?.reviews.map(({ grade }) => grade)).toEqual([2]);
  article.remove();
});

it('shows what is mastered and for how long it keeps, and mistakes that come back with their lesson', async () => {
  const now = today();
  const good = [90, 85, 70, 30].map((ago) => review(now - ago));
  const slips = [3, 2].map((ago) => review(now - ago, { template: 'Q28', difficulty: 2, grade: 1, tags: ['M21'] }));
  const objective = '2.2 read the time to 63 % of the rise';
  const mastered = good.reduce((notebook, one) => withReview(notebook, [heat], one, at), emptyNotebook);
  keep(slips.reduce((notebook, one) => withReview(notebook, [objective], one, at), mastered));
  const memory = good.reduce<Memory | undefined>((before, one) => reviewed(heat, before, one), undefined);
  const screen = await mine();
  const section = screen.getByRole('region', { name: 'Mastered' });
  await expect.element(section).toMatchTextContent(/heat of each metre/);
  await expect.element(section).toMatchTextContent(new RegExp(`keeps for about ${Math.round(memory?.S ?? 0)} days`));
  const mistakes = screen.getByRole('region', { name: 'Mistakes that keep coming back' });
  await expect.element(mistakes).toMatchTextContent(/The 63\s% is of the temperature/);
  expect(
    mistakes
      .getByRole('link', { name: /lesson 2\.2/ })
      .element()
      .getAttribute('href'),
  ).toBe('/lessons/2.2/');
  await expect.element(screen.getByRole('region', { name: 'Due today' })).toMatchTextContent(/63 % of the rise/);
});

it('keeps how often to ask and the day of an exam', async () => {
  const screen = await mine();
  await screen.getByRole('radio', { name: /^Often/ }).click();
  await screen.getByLabelText('Day of an exam, if there is one').fill('2031-06-12');
  await expect.poll(() => keptNotebook()?.settings).toEqual({ retention: 0.95, exam: '2031-06-12' });
  await screen.getByRole('button', { name: 'No exam' }).click();
  await expect.poll(() => keptNotebook()?.settings).toEqual({ retention: 0.95 });
});

it('says in words what is wrong with a file, and puts a sound one in place only when told to', async () => {
  keep(withReview(emptyNotebook, [heat], review(today()), at));
  const screen = await mine();
  const input = screen.getByLabelText('Open a notebook file');
  const give = (value: unknown) =>
    userEvent.upload(input, new File([typeof value === 'string' ? value : JSON.stringify(value)], 'notebook.json'));
  await give('half a fi');
  await expect.element(screen.getByRole('alert')).toMatchTextContent(/cut short, or of another program/);
  await give({ ...emptyNotebook, version: 99 });
  await expect.element(screen.getByRole('alert')).toMatchTextContent(/A later version of this site wrote it/);
  const broken = { kind: 'words', id: 'why', lesson: 'two', at, text: '' };
  await give({ ...emptyNotebook, entries: [broken] });
  await expect.element(screen.getByRole('alert')).toMatchTextContent(/Entry 1, lesson: is written like 2\.2\./);
  expect(memories()).toHaveLength(1);
  await give(emptyNotebook);
  await expect.element(screen.getByText(/takes the place of your notebook/)).toBeVisible();
  expect(memories()).toHaveLength(1);
  await screen.getByRole('button', { name: 'Put it in place' }).click();
  await expect.poll(memories).toEqual([]);
});

it('erases nothing before the second look, then everything', async () => {
  localStorage.setItem('ampere-and-ember:theme', 'lamp');
  keep(withReview(emptyNotebook, [heat], review(today()), at));
  const screen = await mine();
  await screen.getByRole('button', { name: 'Erase everything on this device' }).click();
  await expect.element(screen.getByRole('button', { name: 'Yes, erase it all' })).toHaveFocus();
  await screen.getByRole('button', { name: 'Keep it' }).click();
  expect(memories()).toHaveLength(1);
  await screen.getByRole('button', { name: 'Erase everything on this device' }).click();
  await screen.getByRole('button', { name: 'Yes, erase it all' }).click();
  await expect.element(screen.getByText('Everything is erased on this device.')).toBeVisible();
  expect(localStorage.length).toBe(0);
});
