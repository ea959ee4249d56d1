/** The front door of reasoning: the only file of it that others may import. */
export * from './types.js';
export { compare } from './book/compare.js';
export { largestOf } from './book/largestOf.js';
export { type Reasoner, makeReasoner } from './sheet/makeReasoner.js';
export { flammableClass } from './hazard/flammableClass.js';
export { dryingClass, mayRagsSelfHeat } from './rags/dryingClass.js';
export { generatorCategory, isIgnitableWaste, wipesFaults } from './rags/waste.js';
export { bestGloves, chartGrade } from './gloves/glovesThatHold.js';
export { gloveType, permeationLevel } from './gloves/permeation.js';
export { concentration, meanConcentration, type Source as AirSource } from './air/track.js';
export { nearField, oneZone, twoZones, type Zones } from './air/zones.js';
export { SPOKEN_TEXTS } from './sheet/lineTexts.js';
export {
  mgM3ToPpm,
  mixtureDensity,
  molarVolume,
  ppmToMgM3,
  REFERENCE_MOLAR_VOLUME,
  saturatedMgM3,
  saturatedPpm,
  vapourDensity,
} from './sums/convert.js';
export {
  diffusivityM2S,
  massTransfer,
  openSurfaceGS,
  penetrationGS,
  spillMgM3,
} from './sums/evaporation.js';
export {
  liquidFactor,
  outdoorPoolGS,
  penetrationPoundsGS,
  penetrationShortGS,
  windFactor,
} from './sums/evaporationForms.js';
export {
  airForMeasure,
  fireFlow,
  healthFlow,
  heatFactor,
  hotFlow,
  roomPpm,
  summedFlow,
  vapourCfm,
  vapourM3PerHour,
} from './sums/dilution.js';
export {
  effectiveChanges,
  flowFromHalfLife,
  levelAt,
  meanLevel,
  minutesToRemove,
  mixingFactorOf,
  shareLeft,
  steadyLevel,
  timeTo,
  type Airing,
} from './sums/purge.js';
export {
  mixtureLimit,
  sumOfFractions,
  totalLevel,
  vapourOver,
  type LevelAndLimit,
} from './sums/mixture.js';
export {
  doseFactor,
  longShiftFactor,
  SHIFT_HOURS,
  weightedAverage,
  worstAverage,
} from './sums/exposure.js';
export * from './sums/usUnits.js';
export { hydrocarbonLimit, roundLimit, type HydrocarbonPart } from './sums/hydrocarbonLimit.js';
export { lflAt, lflOfMixture, shareOfLfl, totalPercent } from './sums/flammableLimit.js';
export { airPerPerson, changesByFloor, changesByFlow } from './sums/airChanges.js';
