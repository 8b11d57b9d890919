export { materialCalculations } from './calculations.ts';
export { type FoundMaterial, findMaterials, type MatchKind, type MaterialWords, matchKinds } from './find.ts';
export {
  allMaterials,
  type DoubtfulInput,
  doubtfulInputs,
  type GeneralName,
  generalNames,
  type Material,
  type MaterialClass,
  materialAt,
  materialById,
  type Particle,
  type Permit,
  type PropertyId,
  type PublishedValue,
  propertyIds,
} from './material.ts';
export {
  type BucketCheck,
  type Finding,
  type MaterialMeasured,
  type MaterialMeasuredInput,
  materialMeasured,
} from './material-measured.ts';
export { type Meant, meant, type Vocabulary } from './meant.ts';
export {
  type Amount,
  allMeasures,
  amountSchema,
  countInMeasure,
  type FillId,
  fillIds,
  fillTimes,
  type Measure,
  measureById,
  type OwnSizes,
  type Sized,
  type Sizing,
  sizeAmount,
  type VagueCountId,
  type VagueId,
  vagueCount,
  vagueCountIds,
  vagueIds,
  vagueVolume_L,
} from './measure.ts';
export {
  type DryDown,
  densityFromBucket,
  densityOnceSettled,
  moistureFromDryDown,
  moistureFromSqueeze,
  moistureWhenSaid,
  type Settling,
  settledShare,
  squeezeGrades,
  squeezeSaysLittle,
  type WeighedBucket,
  type Wetness,
  wetnessIds,
} from './measured.ts';
export {
  type MoistureFromSqueeze,
  type MoistureFromSqueezeInput,
  moistureFromSqueezeCalculation,
} from './moisture-from-squeeze.ts';
export { nearest } from './nearest.ts';
export { type OwnMaterial, type OwnQuantities, ownMaterialSchema, ownQuantitiesSchema, withOwn } from './own.ts';
export {
  carbon_pctDry,
  carbonDraws_pctDry,
  type KnownMaterial,
  knownMaterial,
  nitrogenDraws_pctDry,
  propertyDraws,
  scaleOf,
  spreadFor,
} from './properties.ts';
export { type Bounds, isWithin, materialBounds } from './slips.ts';
