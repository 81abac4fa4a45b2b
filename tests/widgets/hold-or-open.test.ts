import { beforeEach, describe, expect, it } from 'vitest';
import { type Device, type DeviceFamily, device, deviceFamilies, otherSenses } from '#engine';
import HoldOrOpen from '#site/widgets/HoldOrOpen.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const asks = {
  iec: { family: 'bs1362', rating: 13, amps: 20 },
  na: { family: 'ul489', rating: 20, amps: 25 },
} as const;
const shown = (props: Record<string, unknown> = {}, width = 752) =>
  figureOnScreen(HoldOrOpen, { id: 'hold', number: '4.1.1', title: 'Hold, may, must', asks, ...props }, width);
type Shown = Awaited<ReturnType<typeof shown>>;
const line = ({ screen }: Shown) => screen.getByRole('slider', { name: /Operating point/ }).element() as HTMLElement;
const says = (figure: Shown) => line(figure).getAttribute('aria-valuetext') ?? '';

beforeEach(() => {
  asNew();
  delete document.documentElement.dataset.theme;
  document.body.replaceChildren();
});

it('says hold, may, must at the standard’s own currents, from the keyboard', async () => {
  const figure = await shown();
  expect(says(figure)).toContain('must hold');
  await figure.press(line(figure), '{ArrowRight}{ArrowRight}'); // 21 A, past 20.8
  expect(says(figure)).toContain('may open after 1\u00A0s, or hold for ever');
  await figure.press(line(figure), '{PageUp}'); // 26 A, past 24.7
  expect(says(figure)).toContain('must open between 1\u00A0s and 30\u00A0min');
  await figure.press(line(figure), '{Home}');
  expect(says(figure)).toContain('must hold');
});

it('writes each point of the standard at its current', async () => {
  const { frame } = await shown();
  const picture = frame.querySelector('svg')?.textContent ?? '';
  const fuse = device('bs1362', 13) as Device;
  for (const { I } of [fuse.hold, ...fuse.by]) expect(picture).toContain(`${I}\u00A0A`);
  expect(picture).toContain('24.7\u00A0A: by 30\u00A0min');
  expect(picture).toContain('30\u00A0A: 1\u00A0s to 400\u00A0s');
  for (const words of ['must hold', 'may do either', 'must have opened']) expect(picture).toContain(words);
});

it('changes the device, keeps it in the link, and turns with the practice', async () => {
  const { screen, frame } = await shown();
  await screen.getByLabelText('Device', { exact: true }).selectOptions('C');
  await screen.getByLabelText('Its rating').selectOptions('16');
  await expect.poll(() => location.hash).toContain('family:C');
  expect(frame.querySelector('svg')?.textContent).toContain('16\u00A0A type C breaker');
  practice.value = 'na';
  await expect.poll(() => frame.querySelector('svg')?.textContent).toContain('20\u00A0A breaker (UL 489)');
});

it('has rows for other ratings, and for devices that see other things', async () => {
  const figure = await shown({
    beside: { iec: [{ family: 'bs1362', rating: 3 }], na: [] },
    others: { iec: ['rcd', 'afci'], na: ['gfci', 'afci'] },
  });
  expect(figure.frame.querySelectorAll('[data-zone="hold"]')).toHaveLength(4);
  expect(figure.frame.querySelectorAll('[data-zone="may"]')).toHaveLength(2);
  expect(says(figure)).toContain('looks at something else');
  const rcd = otherSenses.find(({ id }) => id === 'rcd');
  expect(figure.frame.querySelector('dl')?.textContent).toContain(rcd?.blindTo);
});

it('has a table with source and confidence of every point', async () => {
  const { frame } = await shown({ others: { iec: ['rcd'], na: [] } });
  const table = frame.querySelector('table')?.textContent ?? '';
  expect(table).toContain('20.80');
  expect(table).toContain('seen');
  expect(table).toContain('from memory');
});

it('tells its zones by outline and fill, in both themes', async () => {
  const { frame } = await shown();
  const fills = () =>
    ['hold', 'may'].map((zone) => getComputedStyle(frame.querySelector(`[data-zone="${zone}"]`) as Element).fill);
  const [hold, may] = fills();
  expect(hold).not.toBe(may);
  document.documentElement.dataset.theme = 'lamp';
  expect(fills()[1]).not.toBe(may);
});

const families = deviceFamilies.flatMap(({ id, ratings }): [DeviceFamily, number][] => [
  [id, ratings[0] as number],
  [id, ratings.at(-1) as number],
]);
describe.each([752, 288])('at %i px', (width) => {
  it('draws the least and greatest of every family', async () => {
    for (const [family, rating] of families) {
      const one = { ...asks.iec, family, rating };
      document.body.replaceChildren();
      const { frame, broken } = await shown({ asks: { iec: one, na: one } }, width);
      expect(broken(), `${family} ${rating}`).toBeUndefined();
      expect(frame.scrollWidth, `${family} ${rating}`).toBeLessThanOrEqual(width + 5);
    }
  });
});
