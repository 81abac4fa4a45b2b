// The engine's public face. SI inside: metres, kilograms, seconds, amperes, kelvin; names say so where they differ.
// Sorted by file; the folders are the topics.

export { type AgainstLimit, againstGreatest, type Conformity } from './bench/conformity.ts';
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
} from './bench/derived.ts';
export { evidenceOf, usualReadings } from './bench/evidence-of.ts';
export type { CaseUncertainty } from './bench/fit/band.ts';
export {
  besideLog,
  differenceAtLastPlateau,
  type LogBeside,
  type PlateauMeans,
  plateauMeans,
  type ThermometerBeside,
} from './bench/fit/beside.ts';
export { type Agreement, type CompareQuestion, compareWithLog, type PlateauAgreement } from './bench/fit/compare.ts';
export {
  type Difference,
  type DifferenceCause,
  type DifferenceQuestion,
  explainDifference,
} from './bench/fit/difference.ts';
export type { ColumnUncertainty } from './bench/fit/drive.ts';
export { type FitProblem, fitLog, fitting } from './bench/fit/fit.ts';
export {
  fitAndJudge,
  type HeldBack,
  type JudgedObservable,
  modelAllowance,
  type NotJudged,
} from './bench/fit/judge.ts';
export { fitOne, type OneChange, singleChangeIds, singleChanges } from './bench/fit/one-change.ts';
export {
  type FitParameter,
  type FitParameterId,
  type FitValues,
  fitParameterIds,
  fitParametersOf,
} from './bench/fit/parameters.ts';
export type { Residuals } from './bench/fit/residuals.ts';
export type { FitEnd, FitProgress, Fitted, FitWords, LogFit, Untold } from './bench/fit/result.ts';
export { type StepSpan, stepsOfLog } from './bench/fit/steps.ts';
export {
  type Connection,
  type LoopMeasurement,
  loopModel,
  type PerMetre,
  resistancePerMetre,
} from './bench/four-wire.ts';
export { handHeld, type Instruments, uncertaintyBy } from './bench/hand-held.ts';
export { identifiedCable } from './bench/identified-cable.ts';
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
} from './bench/identify/evidence.ts';
export type { Clash, Fit } from './bench/identify/fit.ts';
export { type Candidate, type Identification, identify, type Mark } from './bench/identify/identify.ts';
export type { MeasurementId, NextMeasurement } from './bench/identify/next.ts';
export type { Leaning, OutcomeMeaning, ReadQuantity } from './bench/identify/outcomes.ts';
export { type Prior, type Priors, usualPriors } from './bench/identify/priors.ts';
export { type MassTimesResistance, type MetalProduct, straightProduct } from './bench/identify/product.ts';
export {
  type AgainstMarking,
  type EqualCopper,
  type Interval,
  type Reference as MarkedReference,
  referenceOf,
  type SizeStanding,
} from './bench/identify/size.ts';
export { type IdentifySentence, type IdentifySentenceId, identifyText, identifyWords } from './bench/identify/words.ts';
export {
  limitOfError,
  type Meter,
  type MeterRange,
  type Reading,
  rangeFor,
  readingFrom,
  readMeter,
} from './bench/instruments/meter.ts';
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
} from './bench/instruments/records.ts';
export { handHeldSet, panelSet, type SetLimits, setByLimits, type TestSet } from './bench/instruments/sets.ts';
export { readTape, type TapeMeasure, tapeLimit } from './bench/instruments/tape.ts';
export {
  readThermocouple,
  type ThermocoupleClass,
  type ThermometerReader,
  thermocoupleClass,
  thermocoupleTolerance,
} from './bench/instruments/thermocouple.ts';
export { jobFileName, jobFromFile, jobToFile, longestJobFile } from './bench/job-file.ts';
export { type BenchJob, emptyJob, type FoundOnLead, type ParsedJob, parseJob } from './bench/job-schema.ts';
export {
  abortStops,
  leastSample,
  mostBenchVolts,
  mostConductor,
  mostSheath,
  mostSheathPractised,
  overBenchVolts,
  usualBenchVolts,
} from './bench/limits.ts';
export { type Locked, lockPlan, lockState } from './bench/lock.ts';
export type { BenchLog, Probe, ProbePlace, Remark } from './bench/log.ts';
export type { Measured } from './bench/measured.ts';
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
} from './bench/plan.ts';
export { emptyPlan, type ParsedPlan, parsePlan, type TestPlan } from './bench/plan-schema.ts';
export {
  type CheckId,
  type CheckLimit,
  type CheckRecord,
  checkOutcome,
  type PowerCheck,
} from './bench/power-checks.ts';
export {
  type CaseDoubt,
  caseDoubt,
  type DoubtId,
  type PredictedBand,
  type PredictedEvent,
  type PredictedMoment,
  predictedBand,
} from './bench/predicted-band.ts';
export {
  type Decoder,
  decoderOf,
  type Encoding,
  type EncodingSniffer,
  encodingSniffer,
} from './bench/readings/encoding.ts';
export { type Correction, correctColumn, type GuessOptions, guessMapping } from './bench/readings/guess.ts';
export { probeHeader } from './bench/readings/own-log.ts';
export { type LogReader, logReader, type ReadOptions, readLog } from './bench/readings/reader.ts';
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
} from './bench/readings/types.ts';
export { type LogHeads, type LogLine, linesToCsv, writeLog } from './bench/readings/write.ts';
export { energyOf, powerOf, resistanceOf, sameInstrument } from './bench/readings-together.ts';
export type { DeviceCheck } from './bench/report/device-check.ts';
export type { ReportLock } from './bench/report/lock-of.ts';
export { type Missing, type MissingBySection, type ReportSectionId, reportSections } from './bench/report/sections.ts';
export { type BenchReport, caseOfJob, type ReportQuestion, reportOf } from './bench/report.ts';
export { type RiseOfResistance, riseModel, temperatureByRise } from './bench/rise-by-resistance.ts';
export { type PlateauOptions, plateaus, type SupplyPlateau } from './bench/steps.ts';
export { type ThinLog, thinned } from './bench/thin.ts';
export { type KnownLead, type ShownBy, type TwoAndFour, twoAndFour } from './bench/two-and-four.ts';
export {
  type Distribution,
  fromInterval,
  fromLimit,
  fromStep,
  type Limited,
} from './bench/uncertainty/distributions.ts';
export { toleranceOf, type Written, written } from './bench/uncertainty/figures.ts';
export { type Input, type Model, pairCorrelated } from './bench/uncertainty/model.ts';
export {
  type Checked,
  type CoverageInterval,
  checkByTrials,
  monteCarlo,
  type Propagated,
  type Trials,
} from './bench/uncertainty/monte-carlo.ts';
export {
  type BudgetLine,
  type Expanded,
  effectiveDof,
  expanded,
  propagate,
  type Uncertainty,
} from './bench/uncertainty/propagate.ts';
export type { SecondOrder } from './bench/uncertainty/second-order.ts';
export { sensitivityOf } from './bench/uncertainty/sensitivity.ts';
export { belowStudent, studentQuantile, withinStudent } from './bench/uncertainty/student.ts';
export { correlationOf, type Repeated, repeated } from './bench/uncertainty/type-a.ts';
export {
  type ClaimStanding,
  type FaultyVerdict,
  faultyVerdicts,
  type JudgedClaim,
  type WholeFacts,
} from './bench/verdict-faults.ts';
export { verdictOrigin } from './bench/verdict-origins.ts';
export {
  copperOfSameResistance,
  type VerdictFacts,
  type VerdictSentence,
  verdictWords,
} from './bench/verdict-words.ts';
export { type Cable, cableOf } from './cable/cable.ts';
export { type Construction, construction, constructions } from './cable/constructions.ts';
export { type CordRating, cordRating } from './cable/cord-ratings.ts';
export { fixedCable } from './cable/fixed-cable.ts';
export { inMetal } from './cable/in-metal.ts';
export { inSize, markedSize } from './cable/in-size.ts';
export { type SectionPart, type SectionShape, type ShareGrid, sectionShape, shareGrid } from './cable/picture.ts';
export type { SectionField } from './cable/section-field.ts';
export { type ShapeLevels, sectionField } from './cable/section-of.ts';
export {
  type AreaNeighbours,
  areaNeighbours,
  type SizeSystem,
  type TradeSize,
  tradeSize,
  tradeSizes,
} from './conductor/area-scale.ts';
export { awgArea, awgDiameter, awgSizes } from './conductor/awg.ts';
export { type Conductor, conductorOf, metalOf } from './conductor/conductor.ts';
export {
  type ConductorClass,
  type StandardSize,
  standardSize,
  standardSizes,
  tableResistance,
} from './conductor/iec60228.ts';
export { OutOfRange, within } from './errors.ts';
export { type BenchCase, benchCases } from './examples/bench-cases.ts';
export { type CaseFile, caseFiles, caseScenario, jobOfCase } from './examples/case-files.ts';
export { benchStart, type CastKey, cast, castScenario, planStart } from './examples/cast.ts';
export { type SuspectVerdict, suspectFacts, suspectVerdict } from './examples/suspect-verdict.ts';
export { adiabaticTime } from './heating/adiabatic.ts';
export {
  ageingMeasuredTo,
  ageingRate,
  halvingStep,
  lifeAt,
  lifeShare,
  lifeUsed,
  temperatureForLife,
} from './heating/ageing.ts';
export {
  type AlongRun,
  alongRun,
  alongRunHolds,
  type NoSuchLoad,
  type SettledRun,
  type VoltsAt,
  voltsAt,
} from './heating/along-run.ts';
export {
  conductorByRatio,
  conductorByResistance,
  type ResistanceReading,
  readByResistance,
} from './heating/by-resistance.ts';
export { type DropGuide, dropGuides } from './heating/drop-guides.ts';
export type { HeatEvent } from './heating/events.ts';
export { faultTemperature, faultTemperatureOf, usualFaultTemperature } from './heating/fault-temperature.ts';
export { type HeldAt, heldAt, type LimitStanding, ratingColumns, shortTime } from './heating/insulation-at.ts';
export {
  type Crossing,
  type HeatLedger,
  heatLedger,
  type LedgerCurves,
  type LedgerLine,
  type LedgerOptions,
  ledgerAt,
  ledgerCurves,
  madeCurve,
} from './heating/ledger.ts';
export { ratingOf } from './heating/limits-of.ts';
export { type Live, type LiveState, type LiveStop, liveRun } from './heating/live.ts';
export {
  type ComparedMetal,
  comparedMetals,
  copperShareOf,
  copperShares,
  type MetalCase,
  type MetalTimes,
  metalsCompared,
  metalTimes,
  withCopperShare,
} from './heating/metals-compared.ts';
export { modelEnd } from './heating/model-end.ts';
export {
  type Load,
  type LoadKind,
  loadAs,
  loadOf,
  nominalVolts,
  sourceVolts,
  stepOfLoad,
} from './heating/nominal-load.ts';
export { type LeadReading, leadReading, type Prediction, predict, type Rating } from './heating/predict.ts';
export { profileAt, type RadialProfile, temperatureAt } from './heating/profile.ts';
export { heatRatio, ratingAt, straightLineThreshold, type Threshold, threshold } from './heating/rating.ts';
export { hottestMoment, type Moment, momentAt, timeToShare } from './heating/read-run.ts';
export { type Curves, type EnergyAccount, type Run, type RunOptions, runCase } from './heating/run.ts';
export { type SettledSize, type SizeCase, sizesCompared } from './heating/sizes-compared.ts';
export {
  balancingCurrent,
  type Chain,
  heatMade,
  type Steady,
  steadyChain,
  steadyFlow,
  steadyState,
} from './heating/steady.ts';
export { type Supply, supplyOf, supplyWords } from './heating/supply.ts';
export {
  type PlaceCase,
  type PlaceKind,
  placeKindOf,
  placeKinds,
  surroundingsCompared,
  timeToRating,
  usualSurroundings,
} from './heating/surroundings-compared.ts';
export { buildCase, conductorResistance, leadResistance, type ThermalCase } from './heating/thermal-case.ts';
export type { Statement, Validity } from './heating/validity.ts';
export { durationOf, type Outcome } from './heating/walk.ts';
export { type Air, air, airConductivity, airDensity, airViscosity } from './material/air.ts';
export { type Limit, type LimitKind, type Place, touchLimit } from './material/limits.ts';
export { clad, type Metal, type MetalId, metals, tin, tinnedCopper } from './material/metals.ts';
export { type Ageing, type Plastic, type PlasticId, plastics } from './material/plastics.ts';
export type { Confidence, Property } from './material/property.ts';
export { resistanceRatio, resistivity } from './material/resistivity.ts';
export {
  type BurnThreshold,
  burnSource,
  burnThresholds,
  type TimeToBurn,
  type TouchedSurface,
  timeToBurn,
} from './material/skin-burn.ts';
export { type SlowHarm, slowHarms } from './material/slow-harm.ts';
export {
  emptyNotebook,
  type KnownEntry,
  type MemoryEntry,
  type Notebook,
  type NotebookSettings,
  notebookFormat,
  notebookVersion,
  type OtherEntry,
  type Place as ReadingPlace,
  type PredictionEntry,
  type QuestionEntry,
  usualSettings,
  type WordsEntry,
} from './notebook/document.ts';
export { doneIn, entryOf, withEntry, withoutEntry, withPlace } from './notebook/edit.ts';
export { lessonsBegun, memoriesOf, practiceSettings, withReview } from './notebook/memories.ts';
export { fromOldKeys, oldKeys, present } from './notebook/migrate.ts';
export { type ReadNotebook, readNotebook } from './notebook/schema.ts';
export { type AdiabaticK, adiabaticConstant, kOf, metalConstant, zeroResistance } from './protection/adiabatic-k.ts';
export { ambientCorrection, ambientFactor } from './protection/ambient-factor.ts';
export {
  type AmpacityColumn,
  type AmpacityMetal,
  ampacity,
  ampacityMetal,
  ampacitySizes,
  smallConductorCap,
} from './protection/ampacity.ts';
export { type AmpacityChain, ampacityChain, type BranchCircuit, continuousShare } from './protection/ampacity-chain.ts';
export { type BandAt, bandAt, type EdgeForm, fastest, slowest } from './protection/band.ts';
export { branchCordRule, type CordMake } from './protection/branch-cord-rule.ts';
export {
  chooseSize,
  type DropAsk,
  type Rejection,
  type ShortAsk,
  type SizeAsk,
  type SizeChoice,
  type SizeTrial,
} from './protection/choose-size.ts';
export type { Cited, CitedValue } from './protection/cited.ts';
export { actingCurrent, type Clearing, clearsInTime, effectivePath } from './protection/clearing.ts';
export {
  type Contact,
  type ContactHeat,
  type ContactKind,
  type ContactsBeside,
  contactsAt,
  contactsBeside,
  contactsOf,
  type UsualContact,
  usualContacts,
} from './protection/contact-watts.ts';
export { actingShare, type Circuit, coordination, rewirableShare } from './protection/coordination.ts';
export type { RuledCord } from './protection/cord-rule.ts';
export { cordRatings } from './protection/cord-table.ts';
export { type Device, type DeviceFamily, deviceConfidence, type Gate, lastGate } from './protection/device.ts';
export {
  type DeviceEnergy,
  deviceEnergy,
  type Energy,
  energyOver,
  type MakerEnergy,
  outlasts,
  usualCapacity,
} from './protection/device-energy.ts';
export { device, deviceFamilies, deviceOf, type FamilyEntry, standardRatings } from './protection/devices.ts';
export { disconnectionTime, type Earthing, type TimeLimit } from './protection/disconnection.ts';
export { type DropTable, printedDrop } from './protection/drop-table.ts';
export { type Factor, factorProduct, ratingInPlace, tableCurrentNeeded } from './protection/factors.ts';
export {
  type FaultCleared,
  type FaultLoop,
  type FaultPath,
  type FixedWiring,
  faultCleared,
  faultLoop,
  faultOf,
  faultPathOf,
  faultStatements,
} from './protection/fault-loop.ts';
export { type FaultWithstand, faultWithstand, type WithstandAt } from './protection/fault-withstand.ts';
export { adjustmentFactor, groupingFactor } from './protection/grouping-factor.ts';
export type { Guard, Slowest } from './protection/guard.ts';
export { harmMatrix, type MatrixCell, type MatrixRow, type RuleStanding } from './protection/harm-matrix.ts';
export {
  type HarmFrom,
  type HarmQuestion,
  type HarmSet,
  type HarmStart,
  harmSet,
  harmStart,
  spanKind,
} from './protection/harm-set.ts';
export { harmSets } from './protection/harm-sets.ts';
export type { EdgeEvidence, HarmEdge, HarmSpan } from './protection/harm-spans.ts';
export {
  type HarmSentence,
  type HarmSentenceId,
  harmText,
  harmWords,
  type ToldSpan,
  toldSpans,
} from './protection/harm-words.ts';
export { thermalInsulationFactor } from './protection/insulation-factor.ts';
export { classThreeEnergy, type MeltingEnergy, meltingEnergy } from './protection/let-through.ts';
export {
  coldReadingShare,
  conventionalRho,
  greatestLoop,
  type LongestRun,
  type Loop,
  type LoopPart,
  type LoopSpec,
  leastVoltageFactor,
  longestRun,
  loopOf,
  partOf,
} from './protection/loop.ts';
export { type MatrixAsk, type MatrixLead, matrixCases, matrixScenario, usualMatrix } from './protection/matrix-ask.ts';
export { type Judged, judge, type Mend, type MendAnswer, type MendQuestion, mend } from './protection/mend.ts';
export type { Change, ChangeKind } from './protection/mend-changes.ts';
export {
  type HeatLost,
  heatLost,
  nonAdiabaticCurrent,
  nonAdiabaticFactor,
  nonAdiabaticTime,
  usualContact,
} from './protection/non-adiabatic.ts';
export { type InSeries, inSeries, type Operation } from './protection/operation.ts';
export { type OtherSense, otherSenses } from './protection/other-senses.ts';
export { plugFuseRule, plugRow } from './protection/plug-fuse-rule.ts';
export { type Promised, promised } from './protection/promised.ts';
export { faultVolts, type Prospective, prospectiveOf, socketCurrent } from './protection/prospective.ts';
export { type Race, type RaceFirst, raceOf, shareUsed } from './protection/race.ts';
export { instantaneous, regulationCurrent } from './protection/regulation-currents.ts';
export { isCord, type RuleQuestion, ruledMetal, ruleOfCase, soundCable } from './protection/rule-of-case.ts';
export type { RuleOutcome, RuleStep, RuleVerdict, TestStep, ValueStep } from './protection/rule-steps.ts';
export {
  type EnergyPair,
  gGRatio,
  type Selectivity,
  selectiveByCurves,
  selectiveByEnergy,
  selectiveGG,
} from './protection/selectivity.ts';
export { predictWithDevice, seriesOf } from './protection/series-of.ts';
export { branchSizes, dropFrom, fixedSizes, plugCordSizes, type SizesAndRule } from './protection/size-asks.ts';
export { nextStandardRating, usualRatings } from './protection/standard-ratings.ts';
export {
  flatTwinRatings,
  type MethodLetter,
  methodRatings,
  methodWords,
  type TableRating,
} from './protection/table-rating.ts';
export { type TimeToLimit, timeToLimit } from './protection/time-to-limit.ts';
export {
  type ByTemperature,
  byTemperature,
  type RuleBasis,
  type TwoAnswers,
  twoAnswers,
} from './protection/two-answers.ts';
export {
  againstGuides,
  type Drop,
  type DropBothWays,
  dropBothWays,
  dropOf,
  dropPerAmpereMetre,
  type GuideTest,
  longestForDrop,
} from './protection/volt-drop.ts';
export {
  type Adiabatic,
  adiabaticFrom,
  adiabaticTo,
  allowedTime,
  type EnergyTest,
  energyTest,
  leastArea,
  leastAreaForEnergy,
  type ShortRange,
  shortRange,
  withstand,
} from './protection/withstand.ts';
export * from './quantity.ts';
export { type AnswerKind, type AnswerReading, readAnswer } from './question/answer.ts';
export { fetchTemplates } from './question/fetch-templates.ts';
export { questions11 } from './question/lesson-1-1.ts';
export { questions12 } from './question/lesson-1-2.ts';
export { questions13 } from './question/lesson-1-3.ts';
export { questions14 } from './question/lesson-1-4.ts';
export { questions21 } from './question/lesson-2-1.ts';
export { questions22 } from './question/lesson-2-2.ts';
export { questions23 } from './question/lesson-2-3.ts';
export { questions24 } from './question/lesson-2-4.ts';
export { questions31 } from './question/lesson-3-1.ts';
export { questions32 } from './question/lesson-3-2.ts';
export { questions33 } from './question/lesson-3-3.ts';
export { questions41 } from './question/lesson-4-1.ts';
export { questions42 } from './question/lesson-4-2.ts';
export { questions43 } from './question/lesson-4-3.ts';
export { questions44 } from './question/lesson-4-4.ts';
export { questions45 } from './question/lesson-4-5.ts';
export { questions51 } from './question/lesson-5-1.ts';
export { questions52 } from './question/lesson-5-2.ts';
export { questions53 } from './question/lesson-5-3.ts';
export { questions54 } from './question/lesson-5-4.ts';
export { mark } from './question/mark.ts';
export { type Misconception, type MisconceptionId, misconceptions } from './question/misconceptions.ts';
export { boxAfter, boxDays } from './question/practice/boxes.ts';
export { catalogueOf, type Listed, lessonOf, objectivesOf, serving } from './question/practice/catalogue.ts';
export { dateOf, dayNumber } from './question/practice/days.ts';
export { type Answered, type Grade, gradeOf, type Sureness } from './question/practice/grade.ts';
export { mastery, type Recurring, recurringMistakes, type Standing, standingOf } from './question/practice/mastered.ts';
export { chanceOf, dueDay, keepsFor, reviewed } from './question/practice/memory.ts';
export {
  type Memory,
  type MemoryState,
  mostReviews,
  type PracticeSettings,
  type Review,
  retentions,
} from './question/practice/review.ts';
export { type Ask, comesBack, type SessionPlan, session, sessionLength } from './question/practice/session.ts';
export { weights } from './question/practice/weights.ts';
export { type Random, randomOf } from './question/random.ts';
export { type QuestionFault, questionOf, refFromText, refToText } from './question/ref.ts';
export {
  type CurveFacts,
  curveFacts,
  type SketchKnot,
  type SketchQuantity,
  sketchAt,
  sketchFacts,
} from './question/sketch.ts';
export { questionFrom, templates, templatesOfLesson } from './question/templates.ts';
export type {
  ChooseOption,
  ChoosePart,
  ChooseQuestion,
  Difficulty,
  Feedback,
  Figure,
  Given,
  GivenChoice,
  GivenOrder,
  NamedScenario,
  NumberAnswer,
  NumberQuestion,
  OrderItem,
  OrderQuestion,
  Practice,
  Question,
  QuestionKind,
  QuestionRef,
  ReadQuestion,
  Said,
  Template,
  Tolerance,
  TraceFigure,
  TypedQuestion,
  Verdict,
  WrongOrder,
  WrongValue,
} from './question/types.ts';
export { plainText, type Segment, type Words } from './question/words.ts';
export { type Fault, faultLine, ScenarioFault } from './scenario/fault.ts';
export { scenarioFromLink } from './scenario/from-link.ts';
export { type Parsed, parseScenario } from './scenario/parse.ts';
export type {
  CableSpec,
  DeviceSpec,
  FaultSpec,
  MetalValues,
  OwnDevice,
  PlasticValues,
  Scenario,
  SupplyStep,
  SurroundingsSpec,
} from './scenario/schema.ts';
export { scenarioToLink } from './scenario/to-link.ts';
export { type Source, type SourceId, type SourceKind, sources } from './sources.ts';
export { type Arrangement, arrangements, clipped, draught, stillAir } from './surroundings/air-laws.ts';
export { type Coil, type CoilEffect, coilEffect, layersFor } from './surroundings/coil.ts';
export {
  film,
  nusseltChurchillBernstein,
  nusseltChurchillChu,
  nusseltKuehnGoldstein,
} from './surroundings/convection.ts';
export { stefanBoltzmann } from './surroundings/law.ts';
export { type Shed, shedAt } from './surroundings/shed.ts';
