// The live bench under a clock that the test moves by hand.
import { flushSync } from 'svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  benchStart,
  guessMapping,
  momentAt,
  predict,
  readLog,
  type Scenario,
  type SupplyStep,
  scenarioToLink,
} from '#engine';
import LiveBench from '#site/widgets/live/LiveBench.svelte';
import { logCsv } from '#site/widgets/live/log.ts';
import { refusalOf } from '#site/widgets/live/rules.ts';
import { LiveSession } from '#site/widgets/live/session.svelte.ts';
import '#site/styles/base.css';

const wall = () => new Date('2026-03-02T09:30:00.000Z');
const held = (I_A: number): Scenario => ({ ...benchStart.iec, supply: [{ kind: 'current', I_A, duration_s: 3600 }] });

/** A bench whose time is moved by `pass`, in frames of a sixtieth of a second unless told. */
async function shown(scenario: Scenario = benchStart.iec) {
  let tick: (seconds: number) => void = () => undefined;
  const clock = {
    start(next: (seconds: number) => void) {
      tick = next;
      return () => undefined;
    },
  };
  const screen = await render(LiveBench, { id: 'bench', scenarios: { iec: scenario, na: scenario }, clock, wall });
  const pass = (seconds: number, frame = 1 / 60) => {
    for (let i = 0; i < Math.round(seconds / frame); i++) flushSync(() => tick(frame));
  };
  const text = (selector: string) => document.querySelector(selector)?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
  const press = (name: string) => screen.getByRole('button', { name, exact: true }).click();
  return { screen, pass, press, text, knob: () => screen.getByRole('slider', { name: 'Supply current' }) };
}

beforeEach(async () => {
  await page.viewport(1280, 900);
  document.body.style.paddingInline = 'var(--gutter)'; // the page's own margin
  history.replaceState(null, '', location.pathname + location.search);
});

afterEach(() => {
  document.body.replaceChildren();
});

describe('the live bench', () => {
  it('opens with the case on it, nothing run', async () => {
    const { text, knob } = await shown();
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '18');
    expect(text('.time')).toMatch(/0:00 not begun/);
    expect(text('dl')).toMatch(/18\.00A/);
    expect(document.querySelector('[data-contact]')?.getAttribute('data-contact')).toBe('closed');
  });

  it('turns its knob by keyboard: arrows one ampere, page keys five, Home and End', async () => {
    const { knob, text } = await shown();
    (knob().element() as HTMLElement).focus();
    const now = () => Number(knob().element().getAttribute('aria-valuenow'));
    for (const [keys, A] of [
      ['{ArrowUp}', 19],
      ['{ArrowRight}', 20],
      ['{ArrowDown}{ArrowLeft}', 18],
      ['{PageUp}', 23],
      ['{PageDown}{PageDown}', 13],
      ['{Home}', 0],
      ['{ArrowDown}', 0],
      ['{End}', 50],
      ['{ArrowUp}', 50],
    ] as const) {
      await userEvent.keyboard(keys);
      expect(now(), keys).toBe(A);
    }
    // 15 V drive less than 50 A through ten metres out and back, and the page says so
    expect(text('.circuit')).toMatch(/at its 15\.0 V/);
    await expect.element(page.getByText(/gives less than is set/)).toBeVisible();
  });

  it('takes a typed figure and the buttons beside it', async () => {
    const { screen, press, knob } = await shown();
    const field = screen.getByRole('textbox', { name: 'Current set' });
    await field.fill('12,5');
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '12.5');
    await userEvent.keyboard('{Enter}');
    await press('One ampere more');
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '13');
    await press('One ampere less');
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '12');
  });

  it('stands while paused and runs at the pace that was chosen', async () => {
    const { pass, press, screen, text } = await shown();
    pass(5);
    expect(text('.time')).toMatch(/0:00/);
    await screen.getByRole('radio', { name: '60×' }).click();
    await press('Run');
    pass(2);
    expect(text('.time')).toMatch(/2:00 running, 60×/);
    await press('Pause');
    pass(3);
    expect(text('.time')).toMatch(/2:00 paused/);
    await screen.getByRole('radio', { name: '1×', exact: true }).click();
    await press('Run');
    pass(3);
    expect(text('.time')).toMatch(/2:03 running, 1×/);
  });

  it('opens the contact at the abort limit, holds the knob, and closes it only when the lead has cooled', async () => {
    const { pass, press, screen, text, knob } = await shown(held(18));
    await screen.getByRole('radio', { name: '60×' }).click();
    await press('Run');
    pass(3.6);
    await expect.element(page.getByText('Abort limit passed at 3:35', { exact: true })).toBeVisible();
    expect(document.querySelector('[data-contact]')?.getAttribute('data-contact')).toBe('open');
    await expect.element(knob()).toHaveAttribute('aria-disabled', 'true');
    await userEvent.keyboard('{Tab}');
    (knob().element() as HTMLElement).focus();
    await userEvent.keyboard('{PageUp}');
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '0');
    expect(text('dl')).toMatch(/0\.00A/);
    expect(text('.log tbody tr')).toMatch(/^3:35.*70\.0.*abort limit passed: conductor 70 °C/);
    pass(2);
    await press('Reset the contact');
    expect(document.querySelector('[data-contact]')?.getAttribute('data-contact')).toBe('closed');
    (knob().element() as HTMLElement).focus();
    await userEvent.keyboard('{PageUp}');
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '5');
  });

  it('lets the abort limit be lowered and never raised', async () => {
    const { screen, pass, press } = await shown(held(18));
    const field = screen.getByRole('textbox', { name: 'Conductor passes' });
    await field.fill('90');
    await userEvent.keyboard('{Enter}');
    await expect.element(field).toHaveValue('70');
    await field.fill('50');
    await userEvent.keyboard('{Enter}');
    await screen.getByRole('radio', { name: '60×' }).click();
    await press('Run');
    pass(2);
    await expect.element(page.getByText(/conductor at 50.°C/)).toBeVisible();
  });

  it('switches the supply off and lets the lead cool', async () => {
    const { pass, press, text, knob } = await shown();
    await press('Run');
    pass(6);
    await press('Supply off');
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '0');
    const sheath = () => Number(/sheath ?([\d.]+)/.exec(text('dl'))?.[1]);
    pass(2);
    const warm = sheath();
    pass(6);
    expect(sheath()).toBeLessThan(warm);
    expect(text('.log tbody')).toMatch(/supply off/);
  });

  it('keeps a log, newest first, with notes', async () => {
    const { pass, press, screen, text } = await shown();
    await press('Run');
    pass(3);
    await press('Record reading');
    pass(3);
    await press('Record reading');
    expect([...document.querySelectorAll('.log tbody th')].map((th) => th.textContent)).toEqual(['1:00', '0:30']);
    await screen.getByRole('textbox', { name: 'Note at 0:30' }).fill('plug end still cool');
    await expect.element(screen.getByRole('textbox', { name: 'Note at 0:30' })).toHaveValue('plug end still cool');
    expect(document.querySelectorAll('circle.taken')).toHaveLength(4);
    await press('Start again');
    expect(text('.log tbody')).toMatch(/0:30/);
    await press('Clear the log and start again');
    expect(text('.log')).toMatch(/Nothing written down yet/);
    expect(text('.time')).toMatch(/0:00 not begun/);
  });

  it('speaks at events, and between them not more than every five seconds', async () => {
    const { pass, press, screen, text } = await shown(held(18));
    const said: string[] = [];
    const hear = () => {
      const words = text('[role=status].unseen');
      if (words !== said.at(-1)) said.push(words);
    };
    await screen.getByRole('radio', { name: '10×' }).click();
    await press('Run');
    for (let i = 0; i < 20; i++) {
      pass(1);
      hear();
    }
    expect(said[0]).toBe('Running.');
    expect(said.length).toBeLessThanOrEqual(5);
    pass(3);
    hear();
    expect(said.at(-1)).toMatch(/Abort limit passed at 3.min 35.s/);
  });

  it('refuses a plan from the mains in words, and offers its own supply', async () => {
    const mains: Scenario = { ...benchStart.iec, supply: [{ kind: 'mains', U_V: 230, load_W: 2000, duration_s: 600 }] };
    const { press, screen, knob } = await shown(mains);
    await expect.element(screen.getByText(/nothing above 25 V AC or 60 V ripple-free DC/)).toBeVisible();
    await expect.element(screen.getByRole('button', { name: 'Run', exact: true })).toBeDisabled();
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '0');
    await press('Use the bench’s own supply');
    await expect.element(screen.getByRole('button', { name: 'Run', exact: true })).toBeEnabled();
  });

  it('takes its case from the link and hands it back to the bench', async () => {
    const other: Scenario = { ...held(11), lead: { length_m: 4 } };
    history.replaceState(null, '', `#bench=${scenarioToLink(other)}`);
    const { screen, knob } = await shown();
    await expect.element(knob()).toHaveAttribute('aria-valuenow', '11');
    const link = screen.getByRole('link', { name: 'Change the case' }).element().getAttribute('href') ?? '';
    expect(link).toMatch(/\/bench\/#bench=/);
    expect(link.endsWith(scenarioToLink(other))).toBe(true);
  });

  it('ends in words when the metal melts', async () => {
    const hot: Scenario = { ...held(18), start: { T_degC: 1100 } };
    const { text } = await shown(hot);
    expect(text('p.words')).toMatch(/copper begins to melt\. The run ends here/);
    expect(text('.time')).not.toMatch(/running/);
  });

  it.each([320, 360, 768, 1440])('fits a window %i px wide', async (width) => {
    await page.viewport(width, 900);
    await shown();
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  });
});

describe('a session at the bench', () => {
  /** Lets `seconds` of simulated time pass at ×60, a frame a simulated second. */
  function run(session: LiveSession, seconds: number): void {
    for (let i = 0; i < Math.round(seconds); i++) session.tick(1 / 60);
  }

  it.each([18, 25, 28])('opens the contact when the prediction passes the limit, at %i A', (I_A) => {
    const plan = { ...held(I_A), supply: [{ kind: 'current', I_A, compliance_V: 30, duration_s: 3600 } as const] };
    const session = new LiveSession(plan, wall);
    session.speed = 60;
    session.run(true);
    run(session, 600);
    const event = predict(plan).run.events.find(({ limit }) => limit.id === 'rating');
    expect(Math.abs((session.trip?.t ?? 0) - (event?.t ?? -1))).toBeLessThan(0.1);
    expect(session.now.t).toBeCloseTo(600, 6);
  });

  it('follows the prediction of the same hour within 0.05 K, the supply turned by hand', () => {
    const byHand: readonly (readonly [number, number])[] = [
      [0, 13],
      [600, 15],
      [900, 0],
      [1500, 8],
      [2400, 14],
    ];
    const steps = byHand.map(([from, I_A], i): SupplyStep => {
      const duration_s = (byHand[i + 1]?.[0] ?? 3600) - from;
      return I_A > 0 ? { kind: 'current', I_A, compliance_V: 15, duration_s } : { kind: 'off', duration_s };
    });
    const { curves } = predict({ ...benchStart.iec, supply: steps }, { samplesPerStep: 40 }).run;
    const session = new LiveSession(held(13), wall);
    session.speed = 60;
    session.run(true);
    let worst = 0;
    for (let second = 0; second < 3600; second++) {
      const change = byHand.find(([from]) => from === second);
      if (change) session.setCurrent(change[1]);
      session.tick(1 / 60);
      const whole = momentAt(curves, session.now.t);
      for (const place of ['conductor', 'surface'] as const)
        worst = Math.max(worst, Math.abs(session.now[place] - whole[place]));
    }
    expect(session.now.t).toBeCloseTo(3600, 6);
    expect(session.trip).toBeNull();
    expect(worst).toBeLessThan(0.05);
  });

  it('opens the contact for the sheath, too', () => {
    const session = new LiveSession(held(16), wall);
    session.sheathLimit_degC = 35;
    session.speed = 60;
    session.run(true);
    run(session, 600);
    expect(session.trip).toMatchObject({ place: 'surface', T_degC: 35 });
  });

  it('will not close the contact while the conductor is past its limit', () => {
    const session = new LiveSession({ ...held(10), start: { T_degC: 90 } }, wall);
    session.run(true);
    session.tick(0.01);
    expect(session.trip).toMatchObject({ T_degC: 70 });
    expect(session.reset()).toBe(false);
    session.speed = 60;
    run(session, 900);
    expect(session.reset()).toBe(true);
  });

  it('writes its log as CSV, oldest first, with units in the header and the remark kept from being a formula', async () => {
    const session = new LiveSession(held(18), wall);
    session.run(true);
    session.tick(3);
    session.record();
    session.tick(3);
    session.record();
    session.note(2, '=1+1');
    const text = await logCsv(session.log);
    const rows = text.split('\r\n');
    expect(rows[0]).toBe(
      'time_ISO,elapsed_s,step,I_set_A,I_A,U_lead_V,R_ohm,theta_from_R_degC,theta_probe_1_degC,theta_ambient_1_degC,predicted_theta_degC,difference_K,event_remark,origin',
    );
    expect(rows).toHaveLength(3);
    expect(rows[1]).toMatch(
      /^2026-03-02T09:30:00\.000Z,30,1,18,18,9\.\d+,0\.5\d+,3\d\.\d+,2\d\.\d,20,3\d\.\d+,-?0(\.0\d)?,,simulated$/,
    );
    expect(rows[2]).toMatch(/,'=1\+1,simulated$/);
    const { log } = readLog(text, guessMapping(text));
    expect([...log.t]).toEqual([0, 30]);
    expect(log).toMatchObject({ simulated: true, remarks: [{ t: 30, text: '=1+1' }], probes: [{ place: 'surface' }] });
  });

  it('refuses nothing below the bounds of extra-low voltage', () => {
    const plan = (step: SupplyStep) => refusalOf({ ...benchStart.iec, supply: [step] });
    expect(plan({ kind: 'voltage', U_V: 60 })).toBeUndefined();
    expect(plan({ kind: 'voltage', U_V: 60.1 })).toMatch(/refused/);
    expect(plan({ kind: 'power', U_V: 25, load_W: 100 })).toBeUndefined();
    expect(plan({ kind: 'power', U_V: 26, load_W: 100 })).toMatch(/refused/);
    expect(plan({ kind: 'current', I_A: 10, compliance_V: 61 })).toMatch(/refused/);
  });
});
