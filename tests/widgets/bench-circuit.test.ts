// The bench's contacts and fault path: what their forms put into the case, and what is told of it.
import { beforeEach, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  benchCases,
  benchStart,
  castScenario,
  contactsAt,
  deviceOf,
  faultCleared,
  faultOf,
  hottestMoment,
  predictWithDevice,
  type Scenario,
  scenarioFromLink,
} from '#engine';
import Bench from '#site/widgets/bench/Bench.svelte';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

const suspect: Scenario = {
  ...castScenario('SUS', 10, 20),
  lead: { length_m: 30, contacts: [{ kind: 'pin', name: 'line pin', R_ohm: 0.02 }] },
  device: { family: 'B', rating_A: 16 },
  fault: { Ze_ohm: 0.35, line_ohm: 0.15, earth_ohm: 0.25 },
};
const bench = (scenario: Scenario) => render(Bench, { id: 'bench', scenarios: { iec: scenario, na: scenario } });
const contacts = () => page.getByRole('region', { name: 'Heat at the contacts' });
const fault = () => page.getByRole('region', { name: 'Fault verdict' });
const text = (locator: ReturnType<typeof contacts>) => locator.element().textContent?.replace(/\s+/g, ' ') ?? '';
const open = (name: string) => page.getByText(name, { exact: true }).click();
/** The case in the address, once it is there. */
async function kept(holds: (scenario: Scenario | undefined) => boolean): Promise<Scenario | undefined> {
  const read = () => scenarioFromLink(location.hash.replace(/^#bench=/, '')).scenario;
  await expect.poll(() => holds(read())).toBe(true);
  return read();
}
const broken = () => document.body.innerHTML.match(/.{40}(NaN|Infinity|undefined|∞)/)?.[0];

beforeEach(asNew);

it('tells each contact in mΩ, watts and metres of lead, as the engine has them', async () => {
  await bench(suspect);
  await expect.element(contacts()).toBeVisible();
  const { thermal, run } = predictWithDevice(suspect);
  const { I, conductor } = hottestMoment(run.curves);
  const one = contactsAt(thermal, I, conductor)?.contacts[0];
  const row = [...contacts().element().querySelectorAll('tbody tr')].map((tr) =>
    [...tr.children].map((cell) => cell.textContent?.trim()),
  );
  expect(row).toEqual([['line pin', '20.0', one?.W.toPrecision(3), one?.asMetres.toPrecision(2)]]);
  expect(text(contacts())).toMatch(/A poor contact can burn where the cable is cool.*No contact temperature/);
  expect(broken()).toBeUndefined();
});

it('tells the loop, its verdict and the allowed time, and whether the conductor outlasts the device', async () => {
  await bench(suspect);
  await expect.element(fault()).toBeVisible();
  const { thermal } = predictWithDevice(suspect);
  const loop = faultOf(thermal);
  const cleared = loop && faultCleared(loop, deviceOf(suspect.device as NonNullable<Scenario['device']>));
  expect(cleared?.clearing.outcome).toBe('not met');
  expect(text(fault())).toMatch(/Fails: the fault does not surely clear in time/);
  expect(text(fault())).toContain(`${cleared?.loop.least.toPrecision(3)}\u00A0A flow`.replace(/\u00A0/g, ' '));
  expect(text(fault())).toMatch(/0\.4 s are allowed/);
  expect(text(fault())).toMatch(/657 A at the near end/);
  await expect.element(page.getByRole('img', { name: /A fault at the far end: line, fixed 0\.179/ })).toBeVisible();
  // the harm set is looked for up to the current of this path
  const verdict = page.getByRole('region', { name: 'Verdict', exact: true });
  await expect.element(verdict).toBeVisible();
  expect(text(verdict)).toMatch(/up to 657 A: U0\/Ze/);
  expect(broken()).toBeUndefined();
});

it('has neither part, and no words of a fault path but how to tell it, for a case that has none', async () => {
  await bench({ ...castScenario('C150', 10, 20), device: { family: 'B', rating_A: 16 } });
  await expect.element(page.getByText(/Currents are looked at up to 1000\sA, our choice/)).toBeVisible();
  expect(contacts().query()).toBeNull();
  expect(fault().query()).toBeNull();
});

it('a contact is added, made poor, named and removed by the form', async () => {
  await render(Bench, { id: 'bench', scenarios: benchStart });
  await open('Contacts');
  await page.getByRole('button', { name: 'Add a contact' }).click();
  await expect.element(contacts()).toBeVisible();
  await page.getByLabelText('Kind', { exact: true }).selectOptions('terminal');
  await page.getByRole('radio', { name: /^poor, 50/ }).click();
  await page.getByLabelText('Name, if it has one').fill('neutral terminal');
  const scenario = await kept((now) => now?.lead?.contacts?.[0]?.name === 'neutral terminal');
  expect(scenario?.lead?.contacts).toEqual([{ kind: 'terminal', R_ohm: 0.05, name: 'neutral terminal' }]);
  expect(scenario?.lead?.length_m).toBe(benchStart.iec.lead?.length_m);
  await page.getByRole('button', { name: 'Remove the neutral terminal' }).click();
  await expect.poll(() => contacts().query()).toBeNull();
});

it('contacts not listed are told together, and count beside the list', async () => {
  await bench(suspect);
  await open('Contacts');
  await page.getByRole('textbox', { name: 'All other contacts together' }).fill('5');
  await expect.poll(() => text(contacts())).toMatch(/other contacts together.*together ?25\.0/);
});

it('a fault path is told and taken off by the form', async () => {
  await bench({ ...castScenario('C150', 10, 20), device: { family: 'B', rating_A: 16 } });
  await open('Fault path');
  await page.getByRole('switch', { name: 'A fault path is told' }).click();
  await expect.element(fault()).toBeVisible();
  await page.getByRole('textbox', { name: 'Fixed wiring, earth, at 20 °C' }).fill('1,5');
  await page.getByRole('textbox', { name: 'Conductors at' }).fill('60');
  const scenario = await kept((now) => now?.fault?.T_degC === 60);
  expect(scenario?.fault).toEqual({ Ze_ohm: 0.35, earth_ohm: 1.5, T_degC: 60 });
  await page.getByRole('switch', { name: 'A fault path is told' }).click();
  await expect.poll(() => fault().query()).toBeNull();
});

it.each<[string, Partial<Scenario>, RegExp]>([
  ['no device', { device: undefined }, /No device is told.*Without a device nothing ends the fault/],
  [
    'North American words',
    { practice: 'na', device: { family: 'ul489', rating_A: 20 } },
    /The code gives no ohms and no seconds/,
  ],
  ['current that never flows', { supply: [{ kind: 'off' }], run: { duration_s: 60 } }, /Passes|Fails/],
  ['ground too poor for any device', { fault: { Ze_ohm: 1000 } }, /Fails/],
  [
    'insulation without a short-circuit limit',
    {
      cable: {
        layout: 'round',
        cores: 3,
        loaded: 2,
        conductor: { size_mm2: 1 },
        insulation: { material: { rhoT_KmPerW: 5, heatCapacity_MJPerM3K: 2 }, thickness_mm: 1 },
      },
    },
    /no limit for a short circuit/,
  ],
])('stands without a broken number: %s', async (_name, change, says) => {
  const { device: _device, ...rest } = suspect;
  await bench('device' in change && change.device === undefined ? rest : { ...suspect, ...change });
  await expect.element(fault()).toBeVisible();
  expect(text(fault())).toMatch(says);
  expect(broken()).toBeUndefined();
});

it.each(benchCases.map(({ words, scenario }) => [words, scenario] as const))(
  'a case to start from is sound, and its link brings it back: %s',
  async (_words, scenario) => {
    await bench(scenario);
    await expect.element(page.getByRole('region', { name: 'Verdict', exact: true })).toBeVisible();
    expect(page.getByRole('alert').query()).toBeNull();
    expect(broken()).toBeUndefined();
  },
);
