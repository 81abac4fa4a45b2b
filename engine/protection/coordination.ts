import type { Statement } from '../heating/validity.ts';
import { cite } from './cited.ts';
import { type Factor, factorProduct, ratingInPlace, tableCurrentNeeded } from './factors.ts';
import type { Guard } from './guard.ts';
import { type RuleStep, type RuleVerdict, testStep, valueStep, verdictOf } from './rule-steps.ts';
import type { TableRating } from './table-rating.ts';

/** What a circuit is made of, for the rule of coordination. */
export interface Circuit {
  /** Design current Ib [A]. */
  readonly Ib: number;
  readonly device: Guard;
  /** The table's current of the cable. */
  readonly table: TableRating;
  readonly factors: readonly Factor[];
}

const rule = { name: 'Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz', ...cite('iec60364-4-43', '433.1', 'seen') };
const cable = cite('iec60364-4-43', '433.1', 'seen');
const inPlace = cite('bs7671', 'Appendix 4, It = In/(Ca·Cg·Ci)', 'seen');

/** The greatest acting current over Iz [1]: IEC 60364-4-43 433.1. */
export const actingShare = 1.45;

/** Share of Iz that a rewirable fuse may be rated at, 1.45/2 [1]: BS 7671 433.1.202. */
export const rewirableShare = 0.725;

/** What the factors are called together: 'Ca · Cg', or '1' where there are none. */
const product = (factors: readonly Factor[]) => factors.map(({ symbol }) => symbol).join(' · ') || '1';

/**
 * Coordination of a cable and its device, step by step: the load, the device, the factors, the table current needed
 * It ≥ In/(Ca·Cg·Ci), the cable's Iz in its place, then the tests Ib ≤ In, In ≤ Iz and I2 ≤ 1.45 Iz, and In ≤ 0.725 Iz for a
 * rewirable fuse. All in A. IEC 60364-4-43 433.1, BS 7671 433.1.
 */
export function coordination(circuit: Circuit): RuleVerdict {
  const { Ib, device, table, factors } = circuit;
  const { In, I2 } = device;
  const Iz = ratingInPlace(table.I, factors);
  const most = actingShare * Iz;
  const steps: RuleStep[] = [
    valueStep('load', 'Ib', 'what the load takes', Ib, cite('user', 'the load', 'our choice')),
    valueStep('device', 'In', 'what the device is rated for', In, cite('user', 'the device', 'our choice')),
    testStep('carries', 'the device carries the load', ['Ib', Ib], ['In', In], cable),
    ...tableSteps(circuit, Iz),
    testStep('rating', 'the cable carries what the device is rated for', ['In', In], ['Iz', Iz], cable),
    ...(device.family === 'bs3036' ? [rewirableTest(In, Iz)] : []),
    testStep(
      'acting',
      'the device acts before 1.45 times what the cable may carry',
      ['I2', I2],
      ['1.45 Iz', most],
      cable,
    ),
  ];
  return verdictOf(rule, steps, statementsOf(device));
}

/** From the factors to Iz, with the table current that the device needs on the way. */
function tableSteps({ device, table, factors }: Circuit, Iz: number): RuleStep[] {
  const rewirable = device.family === 'bs3036';
  const needed = tableCurrentNeeded(device.In, factors) / (rewirable ? rewirableShare : 1);
  const C = product(factors);
  const formula = rewirable ? `In/(0.725 · ${C})` : `In/(${C})`;
  return [
    ...factors.map((factor) => valueStep(factor.symbol, factor.symbol, factor.words, factor.value, factor, '', '1')),
    valueStep('factors', 'C', 'all factors together', factorProduct(factors), inPlace, C, '1'),
    valueStep('needed', 'It,min', 'what the table must give', needed, inPlace, formula),
    valueStep('table', 'It', `what the table gives, ${table.words}`, table.I, table),
    valueStep('in place', 'Iz', 'what the cable may carry here', Iz, inPlace, `It · ${C}`),
  ];
}

const rewirableTest = (In: number, Iz: number) =>
  testStep(
    'rewirable',
    'a rewirable fuse acts only at twice its rating',
    ['In', In],
    ['0.725 Iz', rewirableShare * Iz],
    cite('bs7671', '433.1.202', 'seen'),
  );

function statementsOf(device: Guard): Statement[] {
  const all: Statement[] = [
    {
      id: 'allows overload',
      text: 'The rule lets up to 45 % more than Iz flow for an hour or more. It is meant for rare overloads, never for a steady load.',
    },
    {
      id: 'one cable',
      text: 'Iz holds for the table’s cable laid as the table says. Any other place has its own factor.',
    },
  ];
  if (device.I2 === null)
    all.push({
      id: 'silent',
      text: 'No standard states the acting current of this device. The last test has no answer.',
    });
  if (device.family === 'gG')
    all.push({
      id: 'deemed',
      text: 'British rules take a gG fuse with In ≤ Iz as meeting the last test (from memory). Here the test is worked out.',
    });
  return all;
}
