import {
  type Judged,
  type Mend,
  type Prospective,
  type RuleStep,
  type RuleVerdict,
  type Scenario,
  sources,
  type TestStep,
} from '#engine';
import { quantity, significant, thin } from '../../lib/format.ts';
import { currentOf, withCurrent } from '../figure/edit.ts';

const outcomes: Readonly<Record<RuleVerdict['outcome'], string>> = {
  met: 'The rule is met',
  'not met': 'The rule is not met',
  'not shown': 'The rule is not shown to be met',
  'no rule': 'No rule allows this lead',
};

/** The verdict by rule, in a sentence with the rule's name and source. */
export function ruleWords({ outcome, rule }: RuleVerdict): string {
  return `${outcomes[outcome]}: ${rule.name} (${sources[rule.source].title}, ${rule.where}).`;
}

const side = ({ symbol, value }: TestStep['left'], unit: string): string =>
  `${symbol} ${Number.isNaN(value) ? 'not found' : `${Number(value.toPrecision(3))}${thin}${unit}`}`;

/** One test of a rule in words: 'the fuse carries the load: Ib 17.4 A ≤ In 13 A, fails'. */
export function testWords({ words, left, right, unit, holds, aside }: TestStep): string {
  const says = holds === null ? 'no answer' : holds ? 'holds' : 'fails';
  return `${words}${aside ? '' : ':'} ${side(left, unit)} ≤ ${side(right, unit)}, ${says}`;
}

/** The tests among a rule's steps. */
export const testsOf = (steps: readonly RuleStep[]): TestStep[] =>
  steps.filter((step): step is TestStep => step.kind === 'test');

/** What a lead may feed; a rule asks. */
export const feedWords = [
  { value: 'block', label: 'outlets' },
  { value: 'appliance', label: 'one appliance' },
] as const;

/** How an American cord came to be; a rule asks. */
export const makeWords = [
  { value: 'listed set', label: 'a listed set, as sold' },
  { value: 'listed appliance', label: 'the cord of a listed appliance' },
  { value: 'assembled on site', label: 'put together on site' },
] as const;

/** What the harm set leaves, in a sentence. */
export function leavesWords({ rule, leaves, accepted, sound, refused }: Judged): string {
  const lead = refused ? ' No cord standard allows this lead.' : '';
  if (leaves === 'nothing') return `${sound ? 'By rule and by temperature the device protects this lead.' : ''}${lead}`;
  if (leaves === 'accepted' && rule.outcome === 'met')
    return `What is left, the rules accept: ${accepted.map(({ what }) => what).join('; ')}.${lead}`;
  return rule.outcome === 'met'
    ? `The rule is met, and yet these currents harm the lead. Where the two differ, take the safer answer.${lead}`
    : `No rule accepts what is left: the lead is not protected.${lead}`;
}

/** The scenario of a way to mend a case; null where the load is not set in amperes and the way is a smaller load. */
export function mended(way: Mend, of: Scenario): Scenario | null {
  const { device, scenario, kind, Ib } = way;
  if (kind === 'load') return currentOf(of) === undefined ? null : withCurrent(of, Ib);
  if (kind === 'device')
    return device.family === 'own' ? null : { ...of, device: { family: device.family, rating_A: device.In } };
  return kind === 'size' ? { ...of, cable: scenario.cable } : { ...of, surroundings: scenario.surroundings };
}

/** How far harm was looked for, and why so far. */
export function upToWords({ I, from }: Prospective): string {
  const amps = `${significant(I, 3)}${thin}A`;
  return from === 'fault path'
    ? `Currents are looked at up to ${amps}: U0/Ze, the greatest that this fault path lets flow.`
    : `Currents are looked at up to ${amps}, our choice for a socket. Tell the fault path to use its own.`;
}

/** The load a verdict counts with, in words. */
export const loadWords = (Ib: number): string => `${quantity(Ib, 'A', 1)}, the greatest of the run`;
