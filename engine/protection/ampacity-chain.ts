import type { TradeSize } from '../conductor/area-scale.ts';
import type { Statement } from '../heating/validity.ts';
import { type AmpacityColumn, ampacity, ampacityMetal, smallConductorCap } from './ampacity.ts';
import { type CitedValue, cite } from './cited.ts';
import { type Factor, factorProduct, ratingInPlace } from './factors.ts';
import type { Guard } from './guard.ts';
import { noRule, type RuleStep, type RuleVerdict, testStep, valueStep, verdictOf } from './rule-steps.ts';
import { nextStandardRating } from './standard-ratings.ts';

/** A branch circuit, for the North American chain of caps. */
export interface BranchCircuit {
  /** Load [A], and whether it lasts three hours or more. */
  readonly Ib: number;
  readonly continuous: boolean;
  readonly device: Pick<Guard, 'In'>;
  readonly size: TradeSize;
  /** Id of the conductor's metal. */
  readonly metal: string;
  /** Column of the insulation. Factors act on its ampacity. */
  readonly insulation_degC: AmpacityColumn;
  /** What the terminals are marked for; 60 °C up to 100 A where nothing is marked. */
  readonly terminal_degC: 60 | 75;
  readonly factors: readonly Factor[];
  /** Whether to use the code's leave to take the next standard device above the ampacity, 240.4(B). Not used unless asked. */
  readonly nextSizeUp?: boolean;
}

/** The chain worked through. */
export interface AmpacityChain extends RuleVerdict {
  /** What the conductor may carry here: the least of its derated ampacity and the terminals' column [A]; 0 where no rule covers it. */
  readonly Iz: number;
  /** The greatest device that Iz and the small-conductor rule leave [A]. */
  readonly mostDevice: number;
  /** Which cap makes `mostDevice` what it is. */
  readonly bound: 'derated' | 'terminals' | 'small conductor' | 'next size up' | 'none';
}

const rule = {
  name: 'ampacity, terminals, small conductors, continuous load',
  ...cite('nfpa70', '210.19, 210.20, 240.4, 310.16', 'from memory'),
};
/** Clauses whose text was seen in copies; the others are from memory. */
const seen = ['110.14(C)', '210.20(A)', '240.4'];
const clause = (where: string) => cite('nfpa70', where, seen.includes(where) ? 'seen' : 'from memory');

/** A continuous load counts for so much [1]: NFPA 70 210.19(A) and 210.20(A). */
export const continuousShare = 1.25;

/**
 * A branch circuit worked through the North American caps, one step each [A]: the load (a continuous one at 125 %), ampacity of
 * the insulation's column, its factors, the terminals' column (110.14(C)), the small-conductor rule (240.4(D)), and whether the
 * device lies between load and caps. The leave of 240.4(B), the next standard device above, is shown and used only where asked.
 */
export function ampacityChain(circuit: BranchCircuit): AmpacityChain {
  const { size, metal, insulation_degC, terminal_degC } = circuit;
  const column = ampacityMetal(metal);
  const own = column && size.system === 'AWG' ? ampacity(size.size, column, insulation_degC) : null;
  const terminal = column && size.system === 'AWG' ? ampacity(size.size, column, terminal_degC) : null;
  if (!column || !own || !terminal)
    return { ...noRule(rule, [uncovered(circuit, column !== null)]), Iz: 0, mostDevice: 0, bound: 'none' };
  return worked(circuit, own, terminal, smallConductorCap(size.size, column));
}

/** The numbers of a chain, once they are found [A]. */
interface Found {
  readonly own: CitedValue;
  readonly terminal: CitedValue;
  readonly small: CitedValue | null;
  readonly derated: number;
  readonly Iz: number;
  /** The load as it counts for device and terminals. */
  readonly counted: number;
  /** The next standard device above Iz; null where Iz is one, or the list ends. */
  readonly above: number | null;
  /** Whether the leave to take it is used. */
  readonly leave: boolean;
}

function worked(c: BranchCircuit, own: CitedValue, terminal: CitedValue, small: CitedValue | null): AmpacityChain {
  const derated = ratingInPlace(own.value, c.factors);
  const Iz = Math.min(derated, terminal.value);
  const next = nextStandardRating('na', Iz);
  const above = next !== null && next > Iz * (1 + 1e-9) ? next : null;
  const leave = c.nextSizeUp === true && above !== null;
  const counted = c.Ib * (c.continuous ? continuousShare : 1);
  const found: Found = { own, terminal, small, derated, Iz, counted, above, leave };
  const byAmpacity = leave ? above : Iz;
  const mostDevice = Math.min(byAmpacity, small?.value ?? Number.POSITIVE_INFINITY);
  const steps = [...loadSteps(c, found), ...ampacitySteps(c, found), ...loadTests(c, found), ...deviceTests(c, found)];
  return { ...verdictOf(rule, steps, statements), Iz, mostDevice, bound: boundOf(found) };
}

function loadSteps({ Ib, continuous, device }: BranchCircuit, { counted }: Found): RuleStep[] {
  const twentyFive = clause('210.20(A)');
  return [
    valueStep('load', 'Ib', 'what the load takes', Ib, cite('user', 'the load', 'our choice')),
    ...(continuous
      ? [valueStep('continuous', '1.25 Ib', 'a load of three hours or more', counted, twentyFive, '1.25 · Ib')]
      : []),
    valueStep('device', 'In', 'what the device is rated for', device.In, cite('user', 'the device', 'our choice')),
    testStep('carries', 'the device carries the load', ['Ib counted', counted], ['In', device.In], twentyFive),
  ];
}

function ampacitySteps(c: BranchCircuit, { own, terminal, derated, Iz }: Found): RuleStep[] {
  const marked = { ...terminal, where: `110.14(C), ${terminal.where}` };
  const formula = `It · ${+factorProduct(c.factors).toFixed(3)}`;
  return [
    valueStep('table', 'It', `ampacity, ${c.insulation_degC}\u00A0°C insulation`, own.value, own),
    ...c.factors.map((f) => valueStep(f.symbol, f.symbol, f.words, f.value, f, '', '1')),
    valueStep('derated', 'It · C', 'ampacity in its place', derated, clause('310.15'), formula),
    valueStep('terminals', 'Iterm', `${c.terminal_degC}\u00A0°C terminals allow`, terminal.value, marked),
    valueStep('in place', 'Iz', 'the lesser of the two', Iz, clause('110.14(C)'), 'min(It · C, Iterm)'),
  ];
}

function loadTests({ Ib }: BranchCircuit, { counted, terminal, Iz }: Found): RuleStep[] {
  const conductors = clause('210.19(A)(1)');
  const before = 'before any factor it carries the load as counted';
  return [
    testStep('load carried', 'the conductor carries the load', ['Ib', Ib], ['Iz', Iz], conductors),
    testStep('before factors', before, ['Ib counted', counted], ['Iterm', terminal.value], conductors),
  ];
}

function deviceTests({ device: { In } }: BranchCircuit, { Iz, above, leave, small }: Found): RuleStep[] {
  const carried = 'the conductor carries what the device is rated for';
  const next = clause('240.4(B), next standard rating above');
  const left = ['In', In] as const;
  return [
    testStep('rating', carried, left, ['Iz', Iz], clause('240.4'), { aside: leave }),
    ...(above === null
      ? []
      : [
          testStep('next size up', 'the code’s leave: the next standard device above', left, ['In,next', above], next, {
            aside: !leave,
          }),
        ]),
    ...(small
      ? [testStep('small conductor', 'small conductors have a greatest device', left, ['cap', small.value], small)]
      : []),
  ];
}

function boundOf({ derated, terminal, small, Iz, above, leave }: Found): AmpacityChain['bound'] {
  if (small !== null && small.value <= (leave && above !== null ? above : Iz)) return 'small conductor';
  if (leave) return 'next size up';
  return derated <= terminal.value ? 'derated' : 'terminals';
}

const statements: readonly Statement[] = [
  {
    id: 'caps the device',
    text: 'The small-conductor rule caps the device. It does not change what the conductor may carry.',
  },
  {
    id: 'next size up',
    text: 'The code lets the next standard device stand above the ampacity, up to 800 A and not for several outlets. We show that, and use it only when asked.',
  },
  {
    id: 'edition',
    text: 'Editions differ. Check the edition in force where you work.',
  },
];

function uncovered({ size, metal }: BranchCircuit, known: boolean): Statement {
  if (!known) return { id: 'metal', text: `The ampacity table has no column for a conductor of ${metal}.` };
  return { id: 'size', text: `No value of the table was seen for ${size.name} in this column.` };
}
