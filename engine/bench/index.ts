// The bench: what a lead is, a plan, readings, a fit, a report. Sorted by file.

export { type AgainstLimit, againstGreatest, type Conformity } from './conformity.ts';
export {
  type ColdReading,
  conductorTemperature,
  conductorTemperatureByRise,
  type DerivedColumn,
  energy as logEnergy,
  type LogEnergy,
  power as logPower,
  resistance as logResistance,
  usualInterval,
} from './derived.ts';
export { evidenceOf, usualReadings } from './evidence-of.ts';
export type { CaseUncertainty } from './fit/band.ts';
export {
  besideLog,
  differenceAtLastPlateau,
  type LogBeside,
  type PlateauMeans,
  plateauMeans,
  type ThermometerBeside,
} from './fit/beside.ts';
export { type Agreement, type CompareQuestion, compareWithLog, type PlateauAgreement } from './fit/compare.ts';
export {
  type Difference,
  type DifferenceCause,
  type DifferenceQuestion,
  explainDifference,
} from './fit/difference.ts';
export type { ColumnUncertainty } from './fit/drive.ts';
export { type FitProblem, fitLog, fitting } from './fit/fit.ts';
export {
  fitAndJudge,
  type HeldBack,
  type JudgedObservable,
  modelAllowance,
  type NotJudged,
} from './fit/judge.ts';
export { fitOne, type OneChange, singleChangeIds, singleChanges } from './fit/one-change.ts';
export {
  type FitParameter,
  type FitParameterId,
  type FitValues,
  fitParameterIds,
  fitParametersOf,
} from './fit/parameters.ts';
export type { Residuals } from './fit/residuals.ts';
export type { FitEnd, FitProgress, Fitted, FitWords, LogFit, Untold } from './fit/result.ts';
export { type StepSpan, stepsOfLog } from './fit/steps.ts';
export {
  type Connection,
  type LoopMeasurement,
  loopModel,
  type PerMetre,
  resistancePerMetre,
} from './four-wire.ts';
export { handHeld, type Instruments, uncertaintyBy } from './hand-held.ts';
export { identifiedCable } from './identified-cable.ts';
export {
  type CandidateId as IdentifiedMetal,
  type ClaimedMaterial,
  type Colour,
  type ColourSeen,
  colours,
  type Evidence,
  type MagnetSeen,
  type Marking,
  type MassEvidence,
  magnetOutcomes,
  type PieceId,
  type ResistanceEvidence,
  type StrandEvidence,
} from './identify/evidence.ts';
export type { Clash, Fit } from './identify/fit.ts';
export { type Candidate, type Identification, identify, type Mark } from './identify/identify.ts';
export type { MeasurementId, NextMeasurement } from './identify/next.ts';
export type { Leaning, OutcomeMeaning, ReadQuantity } from './identify/outcomes.ts';
export { type Prior, type Priors, usualPriors } from './identify/priors.ts';
export { type MassTimesResistance, type MetalProduct, straightProduct } from './identify/product.ts';
export {
  type AgainstMarking,
  type EqualCopper,
  type Interval,
  type Reference as MarkedReference,
  referenceOf,
  type SizeStanding,
} from './identify/size.ts';
export { type IdentifySentence, type IdentifySentenceId, identifyText, identifyWords } from './identify/words.ts';
export {
  limitOfError,
  type Meter,
  type MeterRange,
  type Reading,
  rangeFor,
  readingFrom,
  readMeter,
} from './instruments/meter.ts';
export {
  calliper,
  clampMeter,
  clampMeterDc,
  jawPlace,
  meters,
  milliohmMeter,
  multimeterAmps,
  multimeterOhms,
  multimeterVolts,
  multimeterVoltsAc,
  needleMeter,
  panelMeter,
  pocketScale,
  tapeMeasure,
  thermometerReader,
} from './instruments/records.ts';
export { handHeldSet, panelSet, type SetLimits, setByLimits, type TestSet } from './instruments/sets.ts';
export { readTape, type TapeMeasure, tapeLimit } from './instruments/tape.ts';
export {
  readThermocouple,
  type ThermocoupleClass,
  type ThermometerReader,
  thermocoupleClass,
  thermocoupleTolerance,
} from './instruments/thermocouple.ts';
export { jobFileName, jobFromFile, jobToFile, longestJobFile } from './job-file.ts';
export { type BenchJob, emptyJob, type FoundOnLead, type ParsedJob, parseJob } from './job-schema.ts';
export {
  abortStops,
  leastSample,
  mostBenchVolts,
  mostConductor,
  mostSheath,
  mostSheathPractised,
  overBenchVolts,
  usualBenchVolts,
} from './limits.ts';
export { type Locked, lockPlan, lockState } from './lock.ts';
export type { BenchLog, Probe, ProbePlace, Remark } from './log.ts';
export type { Measured } from './measured.ts';
export {
  abortOf,
  checksOf,
  type PlannedStep,
  type PlanPrediction,
  type Precaution,
  precautions,
  predictPlan,
  type Refusal,
  refusals,
} from './plan.ts';
export { emptyPlan, type ParsedPlan, parsePlan, type TestPlan } from './plan-schema.ts';
export {
  type CheckId,
  type CheckLimit,
  type CheckRecord,
  checkOutcome,
  type PowerCheck,
} from './power-checks.ts';
export {
  type CaseDoubt,
  caseDoubt,
  type DoubtId,
  type PredictedBand,
  type PredictedEvent,
  type PredictedMoment,
  predictedBand,
} from './predicted-band.ts';
export {
  type Decoder,
  decoderOf,
  type Encoding,
  type EncodingSniffer,
  encodingSniffer,
} from './readings/encoding.ts';
export { type Correction, correctColumn, type GuessOptions, guessMapping } from './readings/guess.ts';
export { probeHeader } from './readings/own-log.ts';
export { type LogReader, logReader, type ReadOptions, readLog } from './readings/reader.ts';
export type {
  ColumnQuantity,
  DateOrder,
  GapKind,
  LogColumn,
  LogDialect,
  LogMapping,
  ReadCounts,
  ReadLog,
  RowFault,
  RowFaultKind,
  TimeForm,
} from './readings/types.ts';
export { type LogHeads, type LogLine, linesToCsv, writeLog } from './readings/write.ts';
export { energyOf, powerOf, resistanceOf, sameInstrument } from './readings-together.ts';
export type { DeviceCheck } from './report/device-check.ts';
export type { ReportLock } from './report/lock-of.ts';
export { type Missing, type MissingBySection, type ReportSectionId, reportSections } from './report/sections.ts';
export { type BenchReport, caseOfJob, type ReportQuestion, reportOf } from './report.ts';
export { type RiseOfResistance, riseModel, temperatureByRise } from './rise-by-resistance.ts';
export { type PlateauOptions, plateaus, type SupplyPlateau } from './steps.ts';
export { type ThinLog, thinned } from './thin.ts';
export { type KnownLead, type ShownBy, type TwoAndFour, twoAndFour } from './two-and-four.ts';
export {
  type Distribution,
  fromInterval,
  fromLimit,
  fromStep,
  type Limited,
} from './uncertainty/distributions.ts';
export { toleranceOf, type Written, written } from './uncertainty/figures.ts';
export { type Input, type Model, pairCorrelated } from './uncertainty/model.ts';
export {
  type Checked,
  type CoverageInterval,
  checkByTrials,
  monteCarlo,
  type Propagated,
  type Trials,
} from './uncertainty/monte-carlo.ts';
export {
  type BudgetLine,
  type Expanded,
  effectiveDof,
  expanded,
  propagate,
  type Uncertainty,
} from './uncertainty/propagate.ts';
export type { SecondOrder } from './uncertainty/second-order.ts';
export { sensitivityOf } from './uncertainty/sensitivity.ts';
export { belowStudent, studentQuantile, withinStudent } from './uncertainty/student.ts';
export { correlationOf, type Repeated, repeated } from './uncertainty/type-a.ts';
export {
  type ClaimStanding,
  type FaultyVerdict,
  faultyVerdicts,
  type JudgedClaim,
  type WholeFacts,
} from './verdict-faults.ts';
export { verdictOrigin } from './verdict-origins.ts';
export {
  copperOfSameResistance,
  type VerdictFacts,
  type VerdictSentence,
  verdictWords,
} from './verdict-words.ts';
