// Facts of the trade (common practice, no source), run as leads and read off the runs.
import { expect } from 'vitest';
import { celsius, type Prediction, predict } from '#engine';
import { scenarioOf } from './cases.ts';
import { checkTable, num, type Row, text } from './table.ts';

const air = { kind: 'stillAir', ambient_degC: 20 };
const cord = { table: 'H05VV-F', cores: 3, size_mm2: 0.75 };

function run(cable: object, supply: object, more: object = {}): Prediction {
  return predict(scenarioOf({ cable, surroundings: air, supply: [supply], run: { duration_s: 3600 }, ...more }));
}

const last = (values: Float64Array) => values[values.length - 1];

/** Heat of a lead [W] that has carried the row's current for an hour and is as long as makes it read the row's volts. */
function heatOfLead(row: Row): number {
  const supply = { kind: 'current', I_A: num(row, 'I_A') };
  const oneMetre = run(cord, supply).lead.end.U;
  const length_m = num(row, 'U_V') / oneMetre;
  const { lead, run: lived, steady } = run(cord, supply, { lead: { length_m } });
  expect(lead.end.U).toBeCloseTo(num(row, 'U_V'), 9);
  // the same heat by two other ways: what the curve says is made in a metre, and what a metre sheds when it is steady
  expect(last(lived.curves.heat) * length_m).toBeCloseTo(lead.end.heat, 6);
  expect(steady.kind === 'steady' ? steady.chain.flow * length_m : Number.NaN).toBeCloseTo(lead.end.heat, 2);
  return lead.end.heat;
}

/** Heat made at 25 A over that at 20 A in the first moment of two runs from 45 °C. */
function heatRatio(): number {
  const heat = (I_A: number) => run(cord, { kind: 'current', I_A }, { start: { T_degC: 45 } }).run.curves.heat[0];
  return heat(25) / heat(20);
}

/** How far the current of a 10 m lead falls [%] while its conductor warms from 45 to 73 °C with the voltage held. */
function sag(row: Row): number {
  const cable = { table: 'H05VV-F', cores: 2, size_mm2: 1.5, conductor: { metal: text(row, 'metal') } };
  const supply = { kind: 'voltage', U_V: 10, until: { place: 'conductor', T_degC: 73 } };
  const { curves } = run(cable, supply, { lead: { length_m: 10 }, start: { T_degC: 45 } }).run;
  expect(celsius(last(curves.conductor))).toBeCloseTo(73, 3);
  return 100 * (1 - last(curves.I) / curves.I[0]);
}

/** Where the conductor ends [°C] when the current is held for ever, and no hotter on the way. */
function endsAt(cable: object, I_A: number): number {
  const { steady, run: lived } = run(cable, { kind: 'current', I_A });
  const end = steady.kind === 'steady' ? steady.chain.conductor : Number.NaN;
  expect(Math.max(...lived.curves.conductor)).toBeLessThan(end + 0.1);
  return celsius(end);
}

function oneWire(row: Row): number {
  const insulated = { table: 'H07V-K', cores: 1, size_mm2: 1.5 };
  const bare = { layout: 'single', conductor: { size_mm2: 1.5, class: 1 } };
  return endsAt(text(row, 'kind') === 'bare' ? bare : insulated, num(row, 'I_A'));
}

function cladCord(row: Row): number {
  const conductor = { metal: 'cca15', R20_ohmPerKm: num(row, 'R20_ohmPerKm') };
  return endsAt({ ...cord, loaded: 2, conductor }, num(row, 'I_A'));
}

checkTable('trade.csv', {
  'heat of a warm lead': heatOfLead,
  'heat at 25 A over heat at 20 A, equal temperature': heatRatio,
  'sag of the current from 45 to 73 °C, voltage held': sag,
  'conductor of one 1.5 mm² copper wire, free air': oneWire,
  'conductor of a clad three-core 0.75 mm² cord': cladCord,
});
