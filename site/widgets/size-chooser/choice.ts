import {
  adjustmentFactor,
  ambientFactor,
  branchSizes,
  buildCase,
  chooseSize,
  type Device,
  type Factor,
  fixedCable,
  fixedSizes,
  flatTwinRatings,
  groupingFactor,
  loadAs,
  methodRatings,
  type RuleStep,
  type RuleVerdict,
  type SizesAndRule,
  type SizeTrial,
  type SurroundingsSpec,
  type TradeSize,
  type TwoAnswers,
  thermalInsulationFactor,
  twoAnswers,
  usualSurroundings,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import { deviceAt } from '../figure/devices.ts';
import { type ChooserAsk, warmest } from './ask.ts';

/** One size tried, with what the rule and the heat say of it. */
export interface TriedSize extends SizeTrial {
  /** Table current, and what is left of it in its place [A]; null where no table has the size. */
  readonly It: number | null;
  readonly Iz: number | null;
  /** The rule's current beside the engine's; null where the engine holds no walls of such a cable. */
  readonly answers: TwoAnswers | null;
}

/** A choice of size, all of it computed by the engine. */
export interface Choice {
  /** Load current [A]. */
  readonly Ib: number;
  readonly device: Device;
  readonly factors: readonly Factor[];
  /** Thin to thick. */
  readonly sizes: readonly TriedSize[];
  /** The smallest that meets the rule; null where none does. */
  readonly chosen: TriedSize | null;
  /** The smallest that would stay within its insulation's rating at the device's, by heat alone. */
  readonly byHeat: TriedSize | null;
  /** Where the engine has its one cable. */
  readonly place: SurroundingsSpec;
  readonly metal: 'copper' | 'aluminium';
}

const long = 500; // mm: from here on a table takes the whole cable for covered

/** Metal of the cable: in UK and IEC practice only method C has aluminium in the tables we hold. */
export const metalOfAsk = ({ laid, metal }: ChooserAsk, practice: Practice): ChooserAsk['metal'] =>
  practice === 'na' || laid === 'C' ? metal : 'copper';

/** The choice of size for an ask. */
export function choiceOf(ask: ChooserAsk, practice: Practice): Choice {
  const Ib = loadAs('amps', { kind: ask.told, value: ask.load }, ask.volts).value;
  const device = deviceAt(ask.family, ask.rating);
  const factors = factorsOf(ask, practice);
  const metal = metalOfAsk(ask, practice);
  const place = placeOf(ask, practice);
  const basis = practice === 'na' ? 'raceway' : 'fixed';
  const { trials, chosen } = chooseSize(sizesOf({ ask, practice, Ib, device, factors, metal }));
  const sizes = trials.map((trial): TriedSize => {
    const Iz = stepValue(trial.rule, 'in place');
    const of = thermalOf(trial.size, metal, place, Ib, practice);
    return { ...trial, It: stepValue(trial.rule, 'table'), Iz, answers: of && twoAnswers(of, basis, Iz, Ib, device) };
  });
  return {
    ...{ Ib, device, factors, sizes, place, metal },
    chosen: sizes.find(({ size }) => size === chosen) ?? null,
    byHeat: sizes.find(({ answers }) => answers?.byTemperature.outcome === 'within') ?? null,
  };
}

interface Found {
  ask: ChooserAsk;
  practice: Practice;
  Ib: number;
  device: Device;
  factors: readonly Factor[];
  metal: ChooserAsk['metal'];
}

function sizesOf({ ask, practice, Ib, device, factors, metal }: Found): SizesAndRule {
  const { continuous, column, terminals, leave, laid } = ask;
  if (practice === 'na')
    return branchSizes({
      ...{ Ib, continuous, device, metal, factors, nextSizeUp: leave },
      insulation_degC: column,
      terminal_degC: terminals,
    });
  const ratings = laid === 'flat twin' ? flatTwinRatings() : methodRatings(laid, metal);
  return fixedSizes(ratings, { Ib, device, factors });
}

function factorsOf({ ambient, together, lagged, column }: ChooserAsk, practice: Practice): Factor[] {
  const limit = practice === 'na' ? column : 70;
  const air = ambientFactor(practice, limit, Math.min(ambient, warmest(practice, column)));
  if (practice === 'na') return [air, adjustmentFactor(together)];
  return [air, groupingFactor(together), ...(lagged > 0 ? [thermalInsulationFactor(lagged)] : [])];
}

/** Where the engine's cable lies: by itself, as near to the table's place as the engine has one. */
function placeOf({ laid, ambient, lagged }: ChooserAsk, practice: Practice): SurroundingsSpec {
  if (practice === 'iec' && lagged >= long) return usualSurroundings('lagged', ambient, 1);
  const clipped = practice === 'iec' && (laid === 'flat twin' || laid === 'C');
  return usualSurroundings(clipped ? 'clipped' : 'stillAir', ambient, 1);
}

function thermalOf(
  size: TradeSize,
  metal: Choice['metal'],
  surroundings: SurroundingsSpec,
  I_A: number,
  practice: Practice,
) {
  const cable = fixedCable(size, metal);
  return cable && buildCase({ cable, practice, surroundings, supply: [{ kind: 'current', I_A }] });
}

/** The value of a rule's step; null where it has no such step. */
export function stepValue({ steps }: RuleVerdict, id: string): number | null {
  const step = steps.find((one): one is Extract<RuleStep, { kind: 'value' }> => one.id === id && one.kind === 'value');
  return step?.value ?? null;
}
