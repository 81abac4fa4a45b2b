// The engine's public face. SI inside: metres, kilograms, seconds, amperes, kelvin; names say so where they differ.
// Sorted by file; the folders are the topics.

export * from './bench/index.ts';
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
export * from './question/index.ts';
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
