// Uncertainty by the law of propagation and by Monte Carlo against the worked examples of the guides, and the tables they
// rest on: Student's t, divisors, tolerance classes.
import {
  correlationOf,
  expanded,
  fromInterval,
  fromLimit,
  kelvin,
  type Limited,
  type Model,
  monteCarlo,
  type Propagated,
  propagate,
  repeated,
  studentQuantile,
  tapeLimit,
  tapeMeasure,
  thermocoupleClass,
  thermocoupleTolerance,
} from '#engine';
import { checkTable, num, type Row, text } from './table.ts';
import { readingsOf, uncertaintyCases } from './uncertainty-cases.ts';

function modelOf(row: Row): Model {
  const model = uncertaintyCases[text(row, 'case')];
  if (!model) throw new Error(`${row.id}: no case '${text(row, 'case')}'`);
  return model;
}

const law = (row: Row) => propagate(modelOf(row));
const wide = (row: Row) => expanded(law(row), num(row, 'share'));
const readings = (row: Row) => repeated(readingsOf(text(row, 'readings'))[0]);

const runs = new Map<string, Propagated>();

/** A million trials of a row's case, run once. */
function trials(row: Row): Propagated {
  const name = text(row, 'case');
  const run = runs.get(name) ?? monteCarlo(modelOf(row), { seed: name, part: 1e-9 });
  runs.set(name, run);
  return run;
}

function contribution(row: Row): number {
  const line = law(row).budget.find(({ name }) => name === text(row, 'input'));
  if (!line) throw new Error(`${row.id}: no input '${text(row, 'input')}'`);
  return line.contribution;
}

const dofOf = (row: Row) => (text(row, 'dof') === 'Infinity' ? Number.POSITIVE_INFINITY : num(row, 'dof'));

function tolerance(row: Row): number {
  const [type, number] = text(row, 'case');
  const couple = thermocoupleClass(type as 'K' | 'T', Number(number) as 1 | 2);
  return thermocoupleTolerance(couple, kelvin(num(row, 'T_degC')));
}

checkTable('uncertainty.csv', {
  'mean of readings': (row) => readings(row).value,
  'standard deviation of readings': (row) => readings(row).s,
  'standard uncertainty of the mean': (row) => readings(row).u,
  'correlation of means': (row) => {
    const [x, y] = readingsOf(text(row, 'readings'));
    return correlationOf(x, y);
  },
  result: (row) => law(row).value,
  'combined standard uncertainty': (row) => law(row).u,
  contribution,
  'effective degrees of freedom': (row) => law(row).dof,
  'coverage factor': (row) => wide(row).k,
  'expanded uncertainty': (row) => wide(row).U,
  'uncertainty with the second order': (row) => law(row).secondOrder?.u ?? Number.NaN,
  'lower end by the law': (row) => law(row).value - wide(row).U,
  'upper end by the law': (row) => law(row).value + wide(row).U,
  'result by trials': (row) => trials(row).value,
  'standard uncertainty by trials': (row) => trials(row).u,
  'lower end by trials': (row) => trials(row).symmetric.low,
  'upper end by trials': (row) => trials(row).symmetric.high,
  'lower end by trials, shortest': (row) => trials(row).shortest.low,
  'upper end by trials, shortest': (row) => trials(row).shortest.high,
  'expanded uncertainty by trials': (row) => (trials(row).symmetric.high - trials(row).symmetric.low) / 2,
  "Student's t": (row) => studentQuantile(num(row, 'share'), dofOf(row)),
  'standard uncertainty within limits': (row) => fromLimit(num(row, 'half'), text(row, 'shape') as Limited),
  'standard uncertainty of an interval': (row) => fromInterval(num(row, 'half'), num(row, 'share')),
  'thermocouple tolerance': tolerance,
  'limit of a class II tape': (row) => 1e3 * tapeLimit(tapeMeasure, num(row, 'length_m')),
});
