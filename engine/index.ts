// The engine's public face. SI inside: metres, kilograms, seconds, amperes, kelvin; names say so where they differ.

export { OutOfRange, within } from './errors.ts';
export * from './quantity.ts';
export { type Source, type SourceId, type SourceKind, sources } from './sources.ts';

// materials
export { type Confidence, type Property } from './material/property.ts';
export { clad, type Metal, type MetalId, metals, tin } from './material/metals.ts';
export { resistanceRatio, resistivity } from './material/resistivity.ts';
export { type Ageing, type Plastic, type PlasticId, plastics } from './material/plastics.ts';
export { type Limit, type LimitKind, type Place, touchLimit } from './material/limits.ts';
export { type Air, air, airConductivity, airDensity, airViscosity } from './material/air.ts';

// conductors and cables
export { awgArea, awgDiameter, awgSizes } from './conductor/awg.ts';
export { type ConductorClass, copperTableResistance, type StandardSize, standardSize, standardSizes } from './conductor/iec60228.ts';
export { type Conductor, conductorOf, metalOf } from './conductor/conductor.ts';
export { type Construction, construction, constructions } from './cable/constructions.ts';
export { type Cable, cableOf } from './cable/cable.ts';
export { type SectionField } from './cable/section-field.ts';
export { sectionField, type ShapeLevels } from './cable/section-of.ts';

// surroundings
export { film, nusseltChurchillBernstein, nusseltChurchillChu, nusseltKuehnGoldstein } from './surroundings/convection.ts';
export { type Arrangement, arrangements, clipped, draught, stillAir } from './surroundings/air-laws.ts';
export { type Coil, type CoilEffect, coilEffect, layersFor } from './surroundings/coil.ts';
export { stefanBoltzmann } from './surroundings/law.ts';

// heating
export { buildCase, conductorResistance, leadResistance, type ThermalCase } from './heating/thermal-case.ts';
export { ratingOf } from './heating/limits-of.ts';
export { heatRatio, ratingAt, straightLineThreshold, type Threshold, threshold } from './heating/rating.ts';
export { balancingCurrent, type Chain, heatMade, type Steady, steadyChain, steadyFlow, steadyState } from './heating/steady.ts';
export { type Supply, supplyOf, supplyWords } from './heating/supply.ts';
export { type HeatEvent } from './heating/events.ts';
export { type Curves, durationOf, type EnergyAccount, type Outcome, type Run, runCase, type RunOptions } from './heating/run.ts';
export { type Moment, momentAt, timeToShare } from './heating/read-run.ts';
export { type Live, type LiveState, liveRun } from './heating/live.ts';
export { lifeAt, lifeUsed } from './heating/ageing.ts';
export { type LeadReading, leadReading, predict, type Prediction, type Rating } from './heating/predict.ts';
export { type Statement, type Validity } from './heating/validity.ts';

// scenarios
export { type Fault, faultLine, ScenarioFault } from './scenario/fault.ts';
export { type Parsed, parseScenario } from './scenario/parse.ts';
export { scenarioFromLink, scenarioToLink } from './scenario/link.ts';
export { type CableSpec, type MetalValues, type PlasticValues, type Scenario, type SupplyStep, type SurroundingsSpec } from './scenario/schema.ts';

// the standing cast of lessons and questions
export { cast, type CastKey, castScenario } from './examples/cast.ts';
