import * as v from 'valibot';
import { type PlasticId, plastics, type SourceId, sources } from '#engine';
import { askProps } from './ask-props.ts';
import { i2tScaleProps, loopTraceProps, sizeChooserProps } from './circuit-props.ts';
import { heatLedgerProps, wrapAndWindProps } from './heat-props.ts';
import { faultWords, numProps } from './num-props.ts';
import { firstToActProps, holdOrOpenProps, timeCurrentPlaneProps } from './plane-props.ts';
import { amount, castKey, castPair, either, figureNumber, named, oneOf, words } from './prop-parts.ts';
import { metalQuartetProps, sizeLadderProps, voltsAlongProps } from './run-props.ts';
import { sketchProps } from './sketch-props.ts';
import { fourWireProps, liveBenchProps, metalFinderProps } from './suspect-props.ts';

// Props in MDX are checked by no compiler, so each component of a lesson has its accepted values here. The component itself
// parses its props when the page is built, and a test parses every lesson.

/** Seconds of a run: the longest a lesson shows is a day. */
const seconds = amount(1, 86_400, 's');

/** The load of a case: amperes, ambient in °C, times in seconds. */
const load = {
  amps: amount(0, 1000, 'A'),
  ambient: amount(-60, 200, '°C'),
  on: v.optional(seconds),
  off: v.optional(seconds),
  rounds: v.optional(v.pipe(amount(1, 100, 'rounds'), v.integer('is a whole number'))),
};
/** Length of the run, and surroundings other than still air as a scenario has them, without the ambient. */
const place = {
  length: v.optional(either(amount(0.01, 5000, 'm'))),
  surroundings: v.optional(v.record(v.string(), v.union([v.string(), v.number(), v.boolean()]))),
};
const practice = oneOf(['iec', 'na']);

/** The accepted props of each component that a lesson may use, by its name in MDX. */
export const lessonProps = {
  /** A number of the prose: computed (`of` with a case) or one that the case is given by (`value` with `unit`). */
  Num: numProps,
  /** A word of the trade that differs by practice. */
  In: v.strictObject({ iec: words('iec'), na: words('na') }),
  /** A passage for one practice alone. */
  For: v.strictObject({ practice }),
  /** A standard by its designation, from the bibliography. */
  Cite: v.strictObject({ of: oneOf(Object.keys(sources) as SourceId[]) }),
  /** A prediction in four facts; `figure` is the id of the figure that answers it. */
  Predict: v.strictObject({ id: named, figure: named, cast: castPair, ...load }),
  /** What is folded away until the prediction `of` is locked in, or each of several. */
  AfterPrediction: v.strictObject({
    of: v.lazy((input) => (Array.isArray(input) ? v.array(named) : named)) as v.GenericSchema<string | string[]>,
  }),
  /** A pad to draw a prediction of a case on; the computed curve stands over it once it is locked in. */
  SketchPad: sketchProps,
  /** Numbers, choices and orders to commit to; their answers are computed when the page is built. */
  PredictAnswers: v.strictObject({
    id: named,
    figure: v.optional(named),
    asks: v.pipe(v.array(askProps), v.minLength(1, 'asks nothing'), v.maxLength(8, 'asks more than eight things')),
  }),
  /** A lead whose current goes on and off, over time. */
  EmberTrace: v.strictObject({
    id: named,
    number: figureNumber,
    title: words('title'),
    cast: castPair,
    ...load,
    ...place,
    /** Amperes of the case, or each practice's own. */
    amps: either(amount(0, 1000, 'A')),
    controls: v.optional(
      v.pipe(v.array(oneOf(['current', 'ambient', 'on-time'])), v.maxLength(3, 'names at most three controls')),
    ),
    prediction: v.optional(named),
    beside: v.optional(
      v.pipe(
        v.array(v.strictObject({ name: words('name'), cast: castKey, ...load })),
        v.maxLength(3, 'at most three cases stand beside it'),
      ),
    ),
  }),
  /** Cords of many sizes side by side: mm² and AWG on one scale of area. */
  SizeLadder: sizeLadderProps,
  /** Volts along a run, out and back. */
  VoltsAlong: voltsAlongProps,
  /** One cord in four metals, with amps or volts held. */
  MetalQuartet: metalQuartetProps,
  /** From a load to a size, one step a card. */
  SizeChooser: sizeChooserProps,
  /** The loop of a fault to earth, drawn round with every ohm. */
  LoopTrace: loopTraceProps,
  /** What a conductor stands in a short circuit, and what two devices let through. */
  I2tScale: i2tScaleProps,
  /** A known lead by two test leads and by four, and what each reading is worth. */
  FourWire: fourWireProps,
  /** What a suspect lead is, its measurements taken one by one. */
  MetalFinder: metalFinderProps,
  /** Words that lead to a page of the bench. */
  ToBench: v.strictObject({ page: oneOf(['plan', 'identify', 'live']) }),
  /** The live bench with a lead of the cast on it. */
  LiveBench: liveBenchProps,
  /** Heat made against heat lost, over conductor temperature. */
  HeatLedger: heatLedgerProps,
  /** A cord behind its device: current against time, hatched where nothing protects. */
  TimeCurrentPlane: timeCurrentPlaneProps,
  /** A cord and its device in time at a held current: who is first. */
  FirstToAct: firstToActProps,
  /** Devices on a line of current: must hold, may do either, must have opened. */
  HoldOrOpen: holdOrOpenProps,
  /** One lead in several surroundings, side by side. */
  WrapAndWind: wrapAndWindProps,
  /** A cord cut across, from conductor to air. */
  CoreSection: v.strictObject({
    id: named,
    number: figureNumber,
    title: words('title'),
    cast: castPair,
    ...load,
    at: v.optional(seconds),
    controls: v.optional(v.array(oneOf(['current', 'loaded', 'ambient', 'time', 'insulation']))),
  }),
  /** What an insulation stands: its limits, a temperature that is held in °C, and for how long in seconds. */
  LimitStrip: v.strictObject({
    id: named,
    number: figureNumber,
    title: words('title'),
    insulation: v.optional(oneOf(Object.keys(plastics) as PlasticId[])),
    held: v.optional(amount(20, 400, '°C')),
    time: v.optional(amount(1, 3.2e7, 's')),
    controls: v.optional(v.array(oneOf(['insulation', 'temperature', 'time', 'ageing']))),
  }),
  /** The suspect lead's facts, a verdict to write on them, and two to mend. */
  VerdictSheet: v.strictObject({ id: named, number: figureNumber, title: words('title') }),
  /** A place for the learner's own words. */
  OwnWords: v.strictObject({ id: named, question: words('question') }),
  /** A formula and how it is spoken. */
  Formula: v.strictObject({ spoken: words('spoken'), note: v.optional(words('note')) }),
  /** A template's question worked through, all its steps shown. */
  Worked: v.strictObject({
    template: v.pipe(v.string(), v.regex(/^[QD]\d\d[a-z]?$/, 'is written like Q28')),
    seed: words('seed'),
  }),
  /** A question to answer. `given` steps of its solution are shown from the start. */
  Question: v.strictObject({
    id: named,
    template: v.pipe(v.string(), v.regex(/^[QD]\d\d[a-z]?$/, 'is written like Q28')),
    seed: words('seed'),
    number: v.pipe(v.number(), v.integer(), v.minValue(1)),
    of: v.pipe(v.number(), v.integer(), v.minValue(1)),
    given: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(6))),
  }),
  /** A caution at the step it belongs to. */
  Caution: v.strictObject({ line: v.optional(v.boolean()), title: v.optional(words('title')) }),
};

/** A component of lessons. */
export type LessonComponent = keyof typeof lessonProps;

/** What the component's props are once they are parsed. */
export type LessonProps<Name extends LessonComponent> = v.InferOutput<(typeof lessonProps)[Name]>;

/** Faults of a component's props in plain words, one line each; empty when there are none. */
export function propFaults(name: LessonComponent, props: unknown): string[] {
  const { issues } = v.safeParse(lessonProps[name], props);
  return (issues ?? []).map((issue) => {
    const path = v.getDotPath(issue);
    const says = faultWords(issue);
    // a number's own check names the prop itself
    return path || name !== 'Num' ? `<${name}>${path ? ` ${path}` : ''}: ${says}` : `<${name}> ${says}`;
  });
}

/** The props of a component, or a fault that stops the build and says in plain words what is not accepted. */
export function checkedProps<Name extends LessonComponent>(name: Name, props: unknown): LessonProps<Name> {
  const faults = propFaults(name, props);
  if (faults.length > 0) throw new Error(faults.join('\n'));
  return props as LessonProps<Name>;
}
