// Short circuits as runs. A bare conductor that sheds nothing must reach its final temperature in t = k²S²/I² (IEC 60949 and
// IEC 60364-5-54, ICEA, Onderdonk, IEEE 80); with insulation it takes longer, and IEC 60949's own correction lies between.
import { heatLost, type Metal, metals, plastics, predict } from '#engine';
import { scenarioOf } from './cases.ts';
import { checkTable, num, type Row, text } from './table.ts';

const nothingShed = { kind: 'clipped', ambient_degC: 20, arrangement: { Z: 0, E: 0, g: 0 } };
const stillAir = { kind: 'stillAir', ambient_degC: 30 };

/** Time [s] at which the conductor passes the row's final temperature; the end of the run where the metal melts there. */
function time(row: Row, cable: object, surroundings: object): number {
  const scenario = scenarioOf({
    cable,
    surroundings,
    start: { T_degC: num(row, 'start_degC') },
    supply: [{ kind: 'current', I_A: num(row, 'I_A') }],
    run: { duration_s: 20 },
    limits: [{ name: 'final', T_degC: num(row, 'end_degC') }],
  });
  const { run } = predict(scenario);
  return run.events.find(({ limit }) => limit.name === 'final')?.t ?? Number.NaN;
}

function bare(row: Row): number {
  const conductor = { metal: text(row, 'metal'), class: 1, area_mm2: num(row, 'area_mm2') };
  return time(row, { layout: 'single', conductor }, nothingShed);
}

function insulated(row: Row): number {
  const conductor = { metal: text(row, 'metal'), class: 1, area_mm2: num(row, 'area_mm2') };
  const insulation = { material: 'pvc70', thickness_mm: 0.8 };
  return time(row, { layout: 'single', conductor, insulation }, stillAir);
}

const metalOf = (row: Row): Metal => metals[text(row, 'metal') as keyof typeof metals];

/** X and Y of IEC 60949 for the row's metal and insulation. */
const lost = (row: Row) => heatLost(metalOf(row), plastics[text(row, 'plastic') as keyof typeof plastics]);

/** K² ln 10 with the area in circular mils. */
function icea(row: Row): number {
  const { heatCapacity, alpha20, rho20 } = metalOf(row);
  const circularMil = (Math.PI / 4) * 2.54e-5 ** 2;
  return (heatCapacity.value / (alpha20.value * rho20.value)) * circularMil ** 2 * Math.log(10);
}

checkTable('short-circuit.csv', {
  'time to the final temperature, no heat lost': bare,
  'time to the final temperature, insulated': insulated,
  X: (row) => lost(row).X,
  Y: (row) => lost(row).Y,
  'c in (I/A)² t = c log10(…), A in cmil': icea,
});
