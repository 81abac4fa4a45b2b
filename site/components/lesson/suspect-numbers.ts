import {
  copperOfSameResistance,
  evidenceOf,
  identify,
  kelvin,
  type Measured,
  metals,
  type PerMetre,
  referenceOf,
  resistancePerMetre,
  setByLimits,
  straightProduct,
} from '#engine';
import { type Practice, significant, thin, three } from '../../lib/format.ts';
import { ohms, perMetreToo } from '../../widgets/four-wire/words.ts';
import type { MarkingNumber, ProductNumber, ReadingNumber, SuspectNumber } from './suspect-props.ts';

/** A number of a suspect lead: its value in SI, its kind, and how it is told. */
export interface SuspectValue {
  readonly kind: 'resistance' | 'resistance per metre' | 'area' | 'ratio' | 'mass per metre' | 'product';
  readonly value: number;
  readonly told: string;
}

const area = (value: number): SuspectValue => ({ kind: 'area', value, told: three(value * 1e6, 'mm²') });
const ratio = (value: number, told: string): SuspectValue => ({ kind: 'ratio', value, told });
const product = (value: number): SuspectValue => ({ kind: 'product', value, told: three(value * 1e6, 'mΩ·g/m²') });

/** The number asked for, in words of the practice. */
export function suspectValue(spec: SuspectNumber, practice: Practice): SuspectValue {
  switch (spec.of) {
    case 'mass per metre':
    case 'measured product':
    case 'metal product':
      return productValue(spec);
    case 'marked limit':
    case 'least area':
      return markingValue(spec, practice);
    default:
      return readingValue(spec, practice);
  }
}

const exact = (value: number): Measured => ({ value, u: 0 });

/** The reading as the engine takes it: out and back on copper. Without limits nothing is in doubt. */
function measured({ volts, amps, length, at, leads, limits }: ReadingNumber): PerMetre {
  const set =
    limits && setByLimits({ U: limits.volts / 100, I: limits.amps / 100, L: limits.length / 100, T: limits.kelvin });
  return resistancePerMetre({
    U: set ? set.volts(volts) : exact(volts),
    I: set ? set.amps(amps) : exact(amps),
    length: set ? set.length(length) : exact(length),
    T: set ? set.temperature(kelvin(at)) : exact(kelvin(at)),
    inSeries: 2,
    alpha20: metals.copper.alpha20,
    beta20: metals.copper.beta20.value,
    connection:
      leads === undefined
        ? { kind: 'four-terminal' }
        : { kind: 'two-terminal', leads: exact(leads), treated: 'left in' },
  });
}

/** What the practice's marking asks; throws where it is no size of that practice. */
function asked(size: number, practice: Practice) {
  const found = referenceOf(practice === 'na' ? { size_AWG: size } : { size_mm2: size });
  if (!found) throw new Error(`nothing is asked of the size ${size}`);
  return found;
}

function readingValue(spec: ReadingNumber, practice: Practice): SuspectValue {
  const { R20, asFound, leadsInIt } = measured(spec);
  const each = (value: number): SuspectValue => ({
    kind: 'resistance per metre',
    value,
    told: perMetreToo(value, practice),
  });
  switch (spec.of) {
    case 'measured loop':
      return { kind: 'resistance', value: spec.volts / spec.amps, told: ohms(spec.volts / spec.amps) };
    case 'measured as found':
      return each(asFound.value);
    case 'measured per metre':
      return each(R20.value);
    case 'measured doubt':
      return ratio(2 * R20.relative, `${significant(200 * R20.relative, 2)}${thin}%`);
    case 'doubt per metre':
      return { kind: 'resistance per metre', value: 2 * R20.u, told: `${significant(2e3 * R20.u, 2)}${thin}mΩ/m` };
    case 'leads per metre':
      return each(leadsInIt ?? 0);
    case 'equal copper':
      return area(copperOfSameResistance(R20).value);
    case 'times the marking': {
      const times = R20.value / asked(spec.size ?? 0, practice).R20;
      return ratio(times, `${significant(times, 2)}${thin}times`);
    }
  }
}

function productValue(spec: ProductNumber): SuspectValue {
  if (spec.of === 'metal product') return product(straightProduct(metals[spec.metal]));
  const each = spec.grams / spec.stripped / 1e3;
  if (spec.of === 'mass per metre') return { kind: 'mass per metre', value: each, told: three(each * 1e3, 'g/m') };
  const { volts: U_V, amps: I_A, length: length_m, at: T_degC, grams: mass_g, stripped } = spec;
  const found = identify(
    evidenceOf({
      resistance: { U_V, I_A, length_m, T_degC, cores: 2, method: 'four-terminal' },
      mass: { mass_g, length_m: stripped },
    }),
  ).massTimesResistance.measured;
  if (!found) throw new Error('there is no product without ohms and grams');
  return product(found.value);
}

function markingValue({ of, size }: MarkingNumber, practice: Practice): SuspectValue {
  const { R20, leastArea } = asked(size, practice);
  return of === 'least area'
    ? area(leastArea)
    : { kind: 'resistance per metre', value: R20, told: perMetreToo(R20, practice) };
}
