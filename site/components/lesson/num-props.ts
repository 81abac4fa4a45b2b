import * as v from 'valibot';
import {
  ageingMeasuredTo,
  burnThresholds,
  celsius,
  type LimitKind,
  type MetalId,
  metals,
  type PlasticId,
  plastics,
  type TouchedSurface,
} from '#engine';
import type { Practice } from '../../lib/practice.ts';
import { forPractice, isEach } from './by-practice.ts';
import { type DeviceBandNumber, deviceSchema } from './device-props.ts';
import { type FaultNumber, faultSchema } from './fault-props.ts';
import { amount, castKey, oneOf } from './prop-parts.ts';
import { type ProtectionNumber, protectionSchema } from './protection-props.ts';
import { type SuspectNumber, suspectSchema } from './suspect-props.ts';

// What <Num> accepts for one practice, by what the number is of. Each prop may be written by practice as well.

/** What can be read off a case that is run. */
export const caseNumbers = [
  'conductor',
  'surface',
  'rise',
  'settles',
  'settled surface',
  'time to share',
  'share of the rise',
  'peak',
  'time to rating',
  'time to',
  'rating',
  'rating current',
  'table rating',
  'current',
  'cold current',
  'heat',
  'cold heat',
  'total heat',
  'volts',
  'cold resistance',
  'resistance',
  'resistance per metre',
  'runaway current',
  'area',
  'copper area',
  'diameter',
] as const;

/** Numbers of a case that are fairly told as so many times another: they begin at nothing, as temperatures do not. */
const fromNothing = ['rise', 'heat', 'cold heat', 'total heat', 'volts'];

/** Numbers that can be told more roughly. */
const inAbout = ['time to rating', 'time to', 'time to share', 'rating current'];

/** What can be told of a metal. */
export const metalNumbers = ['resistivity', 'coefficient', 'conductivity'] as const;

/** What can be told of how insulation ages at a temperature. */
export const ageingNumbers = ['life', 'ageing', 'halving step'] as const;

/** What tables leave of a current in its place. */
export const factorNumbers = ['factor', 'rating in place', 'table needed'] as const;

const givenNumber = v.strictObject({
  value: v.number('is a number, in braces'),
  unit: v.pipe(v.string('unit is text'), v.minLength(1, 'unit is empty')),
});

/** The load and the lead of a case: amperes or volts, ambient in °C, times in seconds, length in metres. */
export const caseProps = {
  cast: castKey,
  amps: v.optional(amount(0, 1000, 'A')),
  volts: v.optional(amount(0, 1000, 'V')),
  ambient: amount(-60, 200, '°C'),
  on: v.optional(amount(1, 86_400, 's')),
  off: v.optional(amount(1, 86_400, 's')),
  rounds: v.optional(v.pipe(amount(1, 100, 'rounds'), v.integer('is a whole number'))),
  metal: v.optional(oneOf(Object.keys(metals) as MetalId[])),
  size: v.optional(amount(0.01, 1000, 'mm² or AWG, as the cord has it')),
  length: v.optional(amount(0.01, 5000, 'm')),
  surroundings: v.optional(v.record(v.string(), v.union([v.string(), v.number(), v.boolean()]))),
};

const caseNumber = v.pipe(
  v.strictObject({
    of: oneOf(caseNumbers),
    ...caseProps,
    at: v.optional(amount(0, 86_400, 's')),
    share: v.optional(amount(1, 99, '%')),
    to: v.optional(amount(-60, 1000, '°C')),
    /** Tells a time in whole minutes, or a current to two figures, where the model is an estimate. */
    about: v.optional(v.literal(true, 'stands alone, without a value')),
    /** Tells how many times as large the number is as in the same case at this current. */
    timesAt: v.optional(amount(0.1, 1000, 'A')),
  }),
  v.check(
    ({ amps, volts }) => (amps === undefined) !== (volts === undefined),
    'amps: is missing, or stands beside volts; a case has one of them',
  ),
  v.check(({ of, about }) => about === undefined || inAbout.includes(of), `about: is for ${inAbout.join(', ')}`),
  v.check(
    ({ of, timesAt }) => timesAt === undefined || fromNothing.includes(of),
    `timesAt: is for ${fromNothing.join(', ')}`,
  ),
);

const insulations = Object.keys(plastics) as PlasticId[];

const limitNumber = v.strictObject({
  of: v.literal('limit'),
  kind: oneOf(['touch', 'rating', 'softening', 'shortTime', 'fumes', 'ignition'] satisfies LimitKind[]),
  insulation: v.optional(oneOf(insulations)),
});

const metalNumber = v.strictObject({ of: oneOf(metalNumbers), metal: oneOf(Object.keys(metals) as MetalId[]) });

const gaugeNumber = v.strictObject({
  of: oneOf(['gauge area', 'gauge diameter']),
  gauge: amount(0, 40, 'AWG'),
});

/** Life at a temperature, how many times as fast it ages as at its rating, or the step that halves its life; `at` in °C. */
const ageingNumber = v.strictObject({
  of: oneOf(ageingNumbers),
  insulation: v.optional(oneOf(insulations)),
  at: amount(-60, celsius(ageingMeasuredTo), '°C'),
});

/** A temperature counted from absolute zero; `at` in °C. */
const absoluteNumber = v.strictObject({ of: v.literal('absolute'), at: amount(-273, 3000, '°C') });

/** How long a touch may last before it burns skin; `at` in °C. */
const burnNumber = v.strictObject({
  of: v.literal('time to burn'),
  surface: oneOf(Object.keys(burnThresholds) as TouchedSurface[]),
  at: amount(0, 500, '°C'),
});

/** Ambient, grouping and thermal insulation, as many as are given: their product, or what they leave of a table's current. */
const factorNumber = v.pipe(
  v.strictObject({
    of: oneOf(factorNumbers),
    /** The table's current. */
    table: v.optional(amount(0.1, 1000, 'A')),
    /** What the device is rated for, where the table's current is asked for. */
    device: v.optional(amount(0.1, 1000, 'A')),
    /** Conductor temperature that the table is for. */
    limit: v.optional(amount(60, 90, '°C')),
    ambient: v.optional(amount(-60, 85, '°C')),
    /** Circuits alike in one bunch, two loaded conductors each. */
    circuits: v.optional(v.pipe(amount(1, 20, 'circuits'), v.integer('is a whole number'))),
    /** Length in thermal insulation. */
    insulated: v.optional(amount(0, 10_000, 'mm')),
  }),
  v.check(({ limit, ambient }) => (limit === undefined) === (ambient === undefined), 'limit: goes with ambient'),
  v.check(({ of, table }) => (of === 'rating in place') === (table !== undefined), 'table: is for a rating in place'),
  v.check(({ of, device }) => (of === 'table needed') === (device !== undefined), 'device: is for a table needed'),
  v.check(
    ({ ambient, circuits, insulated }) => [ambient, circuits, insulated].some((one) => one !== undefined),
    'ambient: is missing, or circuits or insulated; a factor is for one of them',
  ),
);

/** A number of the prose for one practice. */
export type NumProps =
  | v.InferOutput<typeof givenNumber>
  | v.InferOutput<typeof caseNumber>
  | v.InferOutput<typeof limitNumber>
  | v.InferOutput<typeof metalNumber>
  | v.InferOutput<typeof ageingNumber>
  | v.InferOutput<typeof absoluteNumber>
  | v.InferOutput<typeof burnNumber>
  | v.InferOutput<typeof factorNumber>
  | v.InferOutput<typeof gaugeNumber>
  | ProtectionNumber
  | DeviceBandNumber
  | FaultNumber
  | SuspectNumber;

/** A number of how insulation ages. */
export type AgeingNumber = v.InferOutput<typeof ageingNumber>;
/** A factor on a table's current, or what factors leave of it. */
export type FactorNumber = v.InferOutput<typeof factorNumber>;
/** A number that is read off a case. */
export type CaseNumber = v.InferOutput<typeof caseNumber>;

function schemaOf(props: Record<string, unknown>): v.GenericSchema<NumProps> {
  const among = (list: readonly string[]) => list.includes(String(props.of));
  if ('value' in props) return givenNumber;
  if (props.of === 'limit') return limitNumber;
  if (props.of === 'absolute') return absoluteNumber;
  if (props.of === 'time to burn') return burnNumber;
  if (among(metalNumbers)) return metalNumber;
  if (among(ageingNumbers)) return ageingNumber;
  if (among(factorNumbers)) return factorNumber;
  if (among(['gauge area', 'gauge diameter'])) return gaugeNumber;
  const of = String(props.of);
  return protectionSchema(of) ?? deviceSchema(of) ?? faultSchema(of) ?? suspectSchema(of) ?? caseNumber;
}

/** A number's props: checked as each practice has them. */
export const numProps = v.pipe(
  v.record(v.string(), v.unknown(), 'has no props'),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const split = Object.values(dataset.value).some(isEach);
    for (const practice of (split ? ['iec', 'na'] : ['iec']) as Practice[]) {
      const props = forPractice(dataset.value, practice);
      for (const issue of v.safeParse(schemaOf(props), props).issues ?? [])
        addIssue({ message: `${split ? `(${practice}) ` : ''}${named(issue)}` });
    }
  }),
);

const named = (issue: v.BaseIssue<unknown>): string => {
  const path = v.getDotPath(issue);
  return path ? `${path}: ${faultWords(issue)}` : faultWords(issue);
};

/** A fault of a prop in plain words, without its name. */
export function faultWords({ type, expected, received, message }: v.BaseIssue<unknown>): string {
  if (type !== 'strict_object') return message;
  if (expected === 'never') return 'is no prop of it';
  return received === 'undefined' ? 'is missing' : message;
}

/** The number's props as one practice has them, to be asked for once they are checked. */
export function numFor(props: unknown, practice: Practice): NumProps {
  return forPractice(props, practice) as NumProps;
}
