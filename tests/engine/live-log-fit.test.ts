// What the live bench records comes back in and fits within its own noise.
import { expect, it } from 'vitest';
import { buildCase, cast, fitLog, guessMapping, liveRun, readLog, type Scenario } from '#engine';
import { type LogRow, logCsv, places, shownBy } from '#site/widgets/live/log.ts';

const scenario: Scenario = {
  cable: cast.SUS,
  lead: { length_m: 8 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [{ kind: 'current', I_A: 6 }],
};

/** Three steps of ten minutes on the live bench, a reading every 20 s. */
function recorded(): LogRow[] {
  const of = buildCase(scenario);
  const live = liveRun(of, 12);
  const rows: LogRow[] = [];
  const steps = [6, 9, 12];
  for (const [step, set_A] of steps.entries()) {
    live.setSupply({ kind: 'current', I_A: set_A });
    // the bench writes a line of its own when the supply is set, then one every 20 s
    for (let k = 0; k <= 30; k++) {
      const state = live.advance(k === 0 ? 0 : 20);
      const at = new Date(Date.UTC(2026, 2, 3, 10) + 1000 * state.t).toISOString();
      const computed_degC = state.conductor - 273.15;
      const base = { id: rows.length, at, t: state.t, step: step + 1, set_A, ambient_degC: 20, computed_degC };
      rows.push({ ...base, ...shownBy(of, state), event: '', note: '' });
    }
  }
  return rows;
}

it('the live bench’s own recording re-imports without a correction, says it is simulated, and fits within its noise', async () => {
  const csv = await logCsv(recorded());
  const mapping = guessMapping(csv);
  expect(mapping.own).toBe(true);
  const { log, counts } = readLog(csv, mapping);
  expect(counts.read).toBe(93);
  expect(log.simulated).toBe(true);
  // digits of the instruments, rectangular
  const digit = (decimals: number) => 10 ** -decimals / Math.sqrt(12);
  const u = { I: digit(places.A), U: digit(places.V), probe: digit(places.degC), ambient: digit(1) };
  const fit = fitLog({ scenario, log, u, free: ['R20', 'surface'] });
  const found = (id: string) => fit.parameters.find((one) => one.id === id);
  const R20 = buildCase(scenario).cable.conductor.R20;
  expect(Math.abs((found('R20')?.value ?? 0) / R20 - 1)).toBeLessThan(0.002);
  expect(Math.abs((found('surface')?.value ?? 0) - 1)).toBeLessThan(0.01);
  expect(fit.widened).toBeLessThan(1.5);
});
