import { celsius, factorProduct, methodWords, type RuleStep } from '#engine';
import { fixed, type Practice, quantity, significant, temperature, thin } from '../../lib/format.ts';
import { sourceWords } from '../../lib/source-words.ts';
import { shortName } from '../figure/devices.ts';
import type { ChooserAsk } from './ask.ts';
import type { Choice, TriedSize } from './choice.ts';

/** One card of the figure. */
export interface Card {
  id: string;
  /** What is found or asked, as a sentence without its stop. */
  title: string;
  kind: 'value' | 'test' | 'sizes' | 'answers';
  /** 'Iz = 24.3 A', or 'In 20 A ≤ Iz 24.3 A'. */
  says: string;
  /** How it comes about: in symbols, then with numbers. */
  how: readonly string[];
  source: string;
  /** Of a test: whether it holds; null where no standard tells. */
  holds?: boolean | null;
  /** True where the test is shown for information. */
  aside?: boolean;
}

const capital = (text: string): string => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;

/** A current as the trade tells it: '19.1 A', '20 A'. */
export const amps = (I: number): string => `${significant(I, 3).replace(/\.0+$/, '')}${thin}A`;

const valueWords = (value: number, unit: string): string =>
  unit === '1' ? fixed(value, 3).replace(/0$/, '') : amps(value);

/** The load as it was given: '4400 W at 230 V', '19 A'. */
export function loadWords({ told, load, volts }: ChooserAsk): string {
  return told === 'amps' ? amps(load) : `${fixed(load, 0)}${thin}W at ${quantity(volts, 'V', 0)}`;
}

/** The cable and how it lies: 'copper flat twin and earth, clipped to a surface'. */
export function laidWords({ laid, column, terminals }: ChooserAsk, metal: string, practice: Practice): string {
  if (practice === 'na')
    return `${metal}, ${quantity(column, '°C', 0)} insulation, ${quantity(terminals, '°C', 0)} terminals`;
  if (laid === 'flat twin') return `${metal} flat twin and earth, clipped`;
  return `${metal}, PVC, ${methodWords[laid]}`;
}

/** A formula with the steps' own numbers in place of their symbols. */
function withNumbers(formula: string, steps: readonly RuleStep[]): string {
  const known = steps
    .flatMap((step) => (step.kind === 'value' && step.symbol !== 'C' ? [step] : []))
    .sort((a, b) => b.symbol.length - a.symbol.length);
  let text = formula;
  const held: string[] = [];
  for (const { symbol, value, unit } of known) {
    if (!text.includes(symbol)) continue;
    held.push(valueWords(value, unit));
    text = text.replaceAll(symbol, `{${held.length - 1}}`);
  }
  return text.replace(/\{(\d+)\}/g, (_, i) => held[Number(i)] ?? '');
}

const spoken = (formula: string): string => formula.replaceAll('/', ' ÷ ').replaceAll('·', '×');

function cardOf(step: RuleStep, steps: readonly RuleStep[], ask: ChooserAsk): Card {
  const shared = { id: step.id, title: capital(step.words), source: sourceWords(step) };
  if (step.kind === 'test') {
    const side = ({ symbol, value }: { symbol: string; value: number }) =>
      Number.isNaN(value) ? `${symbol}, not stated` : `${symbol} ${amps(value)}`;
    return {
      ...shared,
      kind: 'test',
      says: `${side(step.left)} ≤ ${side(step.right)}`,
      how: [],
      holds: step.holds,
      aside: step.aside,
    };
  }
  const says = `${step.symbol} = ${valueWords(step.value, step.unit)}`;
  if (step.id === 'load')
    return {
      ...shared,
      kind: 'value',
      says,
      how: ask.told === 'watts' ? [`${fixed(ask.load, 0)}${thin}W ÷ ${quantity(ask.volts, 'V', 0)}`] : [],
    };
  const numbers = withNumbers(step.formula, steps);
  const how = step.formula === '' ? [] : [spoken(step.formula), ...(numbers === step.formula ? [] : [spoken(numbers)])];
  return { ...shared, kind: 'value', says, how };
}

/** Steps that are the same whatever the size; the sizes are tried after the last of them. */
const beforeSizes = ['load', 'continuous', 'device', 'carries', 'Ca', 'Cg', 'Ci', 'factors', 'needed'];

/** The cards of one size: what is the same for all, the sizes tried, its own steps, then both answers. */
export function cardsOf({ sizes, chosen }: Choice, shown: TriedSize, ask: ChooserAsk): Card[] {
  const steps = shown.rule.steps;
  const common = steps.filter(({ id }) => beforeSizes.includes(id));
  const own = steps.filter(({ id }) => !beforeSizes.includes(id));
  const card = (step: RuleStep) => cardOf(step, steps, ask);
  const found = chosen ? `${chosen.size.name} is the smallest that holds` : 'none of them holds';
  return [
    ...common.map(card),
    {
      id: 'sizes',
      title: 'The sizes, tried one by one',
      kind: 'sizes',
      says: found,
      how: [],
      source: `${sizes.length} sizes tried`,
    },
    ...own.map(card),
    { id: 'answers', title: 'The table’s answer, and the heat’s', kind: 'answers', says: '', how: [], source: '' },
  ];
}

/** How a verdict on a size is told in the list: what it fails by, or that it holds. */
export function trialWords({ rejections, size }: TriedSize, chosen: TriedSize | null): string {
  if (rejections.length > 0) return rejections.map(({ text }) => text).join(' ');
  return size === chosen?.size ? 'holds, and is the smallest' : 'holds';
}

/** The answer by the table in one or two sentences; it is the verdict. */
export function tableSentence({ chosen, sizes, device, Ib, factors }: Choice, ask: ChooserAsk): string {
  const name = shortName(device);
  if (!chosen) {
    const last = sizes.at(-1);
    return `None of these sizes will do. ${last ? `Even ${last.size.name} fails: ${last.rejections[0]?.text ?? ''}` : 'The tables we hold have no cable of this kind.'}`;
  }
  const share = factorProduct(factors);
  const left = share === 1 ? '' : ` The factors leave ${quantity(100 * share, '%', 0)} of the table’s current.`;
  return `The table’s answer is ${chosen.size.name}, and it is the verdict. The load takes ${amps(Ib)}${ask.told === 'watts' ? ` (${loadWords(ask)})` : ''}, and the ${name} carries it.${left} In its place ${chosen.size.name} may carry ${amps(chosen.Iz ?? 0)}.`;
}

/** What heat alone says of the size the table chose, one cable by itself. */
export function heatSentence(
  { answers, size }: TriedSize,
  place: string,
  Ib: number,
  In: number,
  practice: Practice,
): string {
  if (!answers) return 'We hold no walls of this cable, so the engine has no answer.';
  const { atLoad, atRating, limit, rating } = answers.byTemperature;
  const at = (T: number | null) => (T === null ? 'no steady temperature' : temperature(celsius(T), practice));
  const most = rating === null || limit === null ? '' : ` It would reach its ${at(limit)} at ${amps(rating)}.`;
  return `One such cable of ${size.name} by itself, ${place}, settles at ${at(atLoad)} with ${amps(Ib)} and at ${at(atRating)} with ${amps(In)}.${most}`;
}

/** The smallest size by heat alone, told so that nobody takes it for leave. */
export function smallestSentence({ byHeat, chosen, device }: Choice): string {
  const at = amps(device.In);
  if (!byHeat) return `By heat alone, none of these sizes stays within its rating at ${at}.`;
  if (!chosen || byHeat.size.area < chosen.size.area)
    return `By heat alone ${byHeat.size.name} would stay within its rating at ${at}. That is no leave to use it: the table’s answer holds.`;
  if (byHeat.size.area > chosen.size.area)
    return `By heat alone it would take ${byHeat.size.name} at ${at}. Here heat is the stricter: ask why before you choose.`;
  return `By heat alone ${byHeat.size.name} is the smallest at ${at} too.`;
}

/** Where the engine has its cable: 'clipped to a wall, 35 °C'. */
export function placeWords(choice: Choice, practice: Practice): string {
  const { kind, ambient_degC } = choice.place;
  const air = `air of ${temperature(ambient_degC, practice)}`;
  if (kind === 'clipped') return `clipped to a wall in ${air}`;
  return kind === 'lagged' ? `under 25${thin}mm of loose cloth in ${air}` : `in still ${air}`;
}

/** What of the ask the engine's one cable leaves out, as a reason why the answers differ; '' where nothing. */
export function leftOut(ask: ChooserAsk, practice: Practice): string {
  const alone = practice === 'na' ? ask.together > 3 : ask.together > 1;
  const covered = practice === 'iec' && ask.lagged > 0;
  const parts = [
    ...(alone ? ['Cables side by side warm each other. The engine’s cable lies alone.'] : []),
    ...(covered
      ? ['A piece in thermal insulation is hotter than the rest. The engine has one place for the whole cable.']
      : []),
    ...(practice === 'iec' && (ask.laid === 'A2' || ask.laid === 'B2')
      ? ['The engine has no conduit. Its cable hangs in open air.']
      : []),
  ];
  return parts.join(' ');
}
