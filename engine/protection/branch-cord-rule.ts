import type { Statement } from '../heating/validity.ts';
import { cite } from './cited.ts';
import { cordStep, outsideCordRules, overloadAside, type RuledCord, whyTheyDiffer } from './cord-rule.ts';
import type { Guard } from './guard.ts';
import { noRule, type RuleStep, type RuleVerdict, testStep, valueStep, verdictOf } from './rule-steps.ts';

/** How a cord came to be: with a listed appliance, as a listed cord set, or put together where it is used. */
export type CordMake = 'listed appliance' | 'listed set' | 'assembled on site';

const rule = { name: 'cord on a branch circuit', ...cite('nfpa70', '240.5(B)', 'seen') };
const ampacity = cite('nfpa70', '400.5(A)', 'from memory');
const overcurrent = cite('nfpa70', '240.5(A)', 'from memory');
const onSite = cite('nfpa70', '240.5(B)(4)', 'seen');

/** On a circuit of this rating at most [A], a set of this gauge or thicker may be put together on site: NFPA 70 240.5(B)(4). */
const siteCircuit = 20;
const siteGauge = 16;

/**
 * Whether a cord may stand behind a branch device. NFPA 70 240.5(B) takes the cord of a listed appliance, and a listed set, as
 * protected when used as listed. A set put together on site needs 16 AWG or thicker on a circuit of 20 A; else its own ampacity
 * (240.5(A)). The load must lie within the cord's ampacity (400.5(A)) and the device. Currents in A. I2 ≤ 1.45 Iz stands beside
 * it as information. No rule for metals other than copper, or for gauges that the table lacks.
 */
export function branchCordRule(cord: RuledCord, device: Guard, make: CordMake): RuleVerdict {
  const outside = outsideCordRules(cord);
  if (outside) return noRule(rule, [outside]);
  const rated = cord.size.system === 'AWG' ? cordStep(cord.size) : undefined;
  if (!rated) return noRule(rule, [noGauge]);
  const { In } = device;
  const steps: RuleStep[] = [
    valueStep('load', 'Ib', 'what the load takes', cord.Ib, cite('user', 'the load', 'our choice')),
    valueStep('device', 'In', 'what the branch device is rated for', In, cite('user', 'the device', 'our choice')),
    testStep('carries', 'the device carries the load', ['Ib', cord.Ib], ['In', In], ampacity),
    rated,
    testStep('load fits', 'the cord carries the load', ['Ib', cord.Ib], ['Icord', rated.value], ampacity),
    ...(make === 'assembled on site' ? [siteStep(cord.size.size, In, rated.value)] : []),
    overloadAside(device, rated),
  ];
  return verdictOf(rule, steps, [
    make === 'assembled on site' ? assembled : listed,
    ...(cord.feeds === 'block' ? [grows] : []),
    whyTheyDiffer,
  ]);
}

function siteStep(gauge: number, In: number, Icord: number): RuleStep {
  const by = gauge <= siteGauge;
  const most = by ? Math.max(siteCircuit, Icord) : Icord;
  const words = by
    ? 'a set of 16 AWG or thicker may stand behind 20 A'
    : 'the device protects the cord at its ampacity';
  return testStep('device fits', words, ['In', In], [by ? 'In,max' : 'Icord', most], by ? onSite : overcurrent);
}

const noGauge: Statement = { id: 'size', text: 'No ampacity of a cord of this size was seen.' };
const listed: Statement = {
  id: 'listed',
  text: 'The code takes this cord as protected while it is used as listed. It names no greatest device.',
};
const assembled: Statement = {
  id: 'assembled',
  text: 'A set put together on site has no listing to lean on. Its gauge decides.',
};
const grows: Statement = {
  id: 'load can grow',
  text: 'A lead with outlets carries whatever is plugged in. The breaker need not open below 135 % of its rating.',
};
