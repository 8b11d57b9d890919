import { materialRules } from './parameters.ts';

/** Wet stuff by its percentages: moisture of the wet mass, carbon and nitrogen of the dry mass. */
export interface Stuff {
  /** Wet mass, 0 or more. */
  readonly wet_kg: number;
  /** Moisture, percent of wet mass, 0 to 100. */
  readonly moisture_pctWet: number;
  /** Carbon, percent of dry mass. */
  readonly carbon_pctDry: number;
  /** Nitrogen, percent of dry mass. */
  readonly nitrogen_pctDry: number;
}

/** Stuff whose mass is asked for. */
export type Unweighed = Omit<Stuff, 'wet_kg'>;

/** Dry mass, kg. */
export function dryMass_kg(stuff: Pick<Stuff, 'wet_kg' | 'moisture_pctWet'>): number {
  return (stuff.wet_kg * (100 - stuff.moisture_pctWet)) / 100;
}

/**
 * Moisture of a sample, percent of wet mass, from its mass before and after drying (any one unit).
 * Source: Cornell moisture-content text: M = 100 (wet − dry) / wet.
 */
export function moistureOfSample_pctWet(sample: { readonly wet: number; readonly dry: number }): number {
  return (100 * (sample.wet - sample.dry)) / sample.wet;
}

/**
 * Moisture of a mix, percent of wet mass; `undefined` when nothing is in it.
 * Source: Cornell moisture-content text; BC Agricultural Composting Handbook 1998, Appendix A:
 * M = ΣQᵢMᵢ / ΣQᵢ.
 */
export function moistureOfMix_pctWet(parts: readonly Pick<Stuff, 'wet_kg' | 'moisture_pctWet'>[]): number | undefined {
  const wet = sum(parts, (part) => part.wet_kg);
  return wet > 0 ? sum(parts, (part) => part.wet_kg * part.moisture_pctWet) / wet : undefined;
}

/**
 * C:N of a mix: total carbon over total nitrogen, which weights each part by its nitrogen. Averaging
 * the parts' own ratios is wrong. `undefined` when there is no nitrogen.
 * Source: BC Agricultural Composting Handbook 1998, Appendix A:
 * R = ΣQᵢCᵢ(100 − Mᵢ) / ΣQᵢNᵢ(100 − Mᵢ).
 */
export function carbonToNitrogenOfMix_ratio(parts: readonly Stuff[]): number | undefined {
  const nitrogen = sum(parts, (part) => dryMass_kg(part) * part.nitrogen_pctDry);
  return nitrogen > 0 ? sum(parts, (part) => dryMass_kg(part) * part.carbon_pctDry) / nitrogen : undefined;
}

/**
 * Wet mass of a second ingredient that brings the first to a goal moisture; `undefined` unless the
 * goal lies strictly between the two.
 * Source: Cornell moisture-content text: Q₂ = Q₁ (G − M₁) / (M₂ − G).
 */
export function secondForMoisture_kg(options: {
  readonly first: Pick<Stuff, 'wet_kg' | 'moisture_pctWet'>;
  readonly second: Pick<Stuff, 'moisture_pctWet'>;
  readonly goal_pctWet: number;
}): number | undefined {
  const { first, second, goal_pctWet } = options;
  const toFirst = goal_pctWet - first.moisture_pctWet;
  const toSecond = second.moisture_pctWet - goal_pctWet;
  return toFirst * toSecond > 0 ? (first.wet_kg * toFirst) / toSecond : undefined;
}

/**
 * Wet mass of a second ingredient that brings the first to a goal C:N; `undefined` unless the goal
 * lies strictly between the two ratios.
 * Source: BC Agricultural Composting Handbook 1998, Appendix A:
 * Q₂ = Q₁N₁(R − R₁)(100 − M₁) / [N₂(R₂ − R)(100 − M₂)].
 */
export function secondForCarbonToNitrogen_kg(options: {
  readonly first: Stuff;
  readonly second: Unweighed;
  readonly goal_ratio: number;
}): number | undefined {
  const { first, second, goal_ratio } = options;
  const lacking = goal_ratio * first.nitrogen_pctDry - first.carbon_pctDry;
  const bringing = second.carbon_pctDry - goal_ratio * second.nitrogen_pctDry;
  if (!(lacking * bringing > 0) || second.moisture_pctWet >= 100) return undefined;
  return (dryMass_kg(first) * lacking) / ((bringing * (100 - second.moisture_pctWet)) / 100);
}

/**
 * Carbon from nitrogen and C:N, percent of dry mass. Only for a matched pair: see
 * {@link impliedCarbonFits}. Source: Richard and Trautmann, C/N Ratio, Cornell: %C = %N × C:N.
 */
export function carbonFromRatio_pctDry(nitrogen_pctDry: number, carbonToNitrogen_ratio: number): number {
  return nitrogen_pctDry * carbonToNitrogen_ratio;
}

/**
 * Whether a published nitrogen and C:N can belong together: the carbon they imply must lie between
 * 25 and 60 % of dry matter. Tables average the two apart, so that sawdust "holds" 106 to 204 %.
 */
export function impliedCarbonFits(carbon_pctDry: number): boolean {
  const { carbonLow_pctDry, carbonHigh_pctDry } = materialRules.matchedPair;
  return carbon_pctDry >= carbonLow_pctDry && carbon_pctDry <= carbonHigh_pctDry;
}

/**
 * Carbon from ash, percent of dry mass.
 * Source: Richard, Estimating Carbon Content, Cornell (Adams et al. 1951): %C = (100 − ash) / 1.8.
 */
export function carbonFromAsh_pctDry(ash_pctDry: number): number {
  return (100 - ash_pctDry) / materialRules.carbonFromVolatileSolids.volatileSolidsPerCarbon_ratio;
}

/** Nitrogen, percent of dry mass, that belongs to a carbon and a C:N. */
export function nitrogenFromRatio_pctDry(carbon_pctDry: number, carbonToNitrogen_ratio: number): number {
  return carbon_pctDry / carbonToNitrogen_ratio;
}

/**
 * Water that brings a mix to a goal moisture, kg (that is litres); negative: it is too wet already.
 * Goal below 100 %. Algebra of the mix's moisture: W = D / (1 − G/100) − Q.
 */
export function waterToReach_kg(options: {
  readonly wet_kg: number;
  readonly dry_kg: number;
  readonly goal_pctWet: number;
}): number {
  return options.dry_kg / (1 - options.goal_pctWet / 100) - options.wet_kg;
}

/**
 * Nitrogen that brings carbon to a goal C:N, in the unit of the two masses; negative: there is more
 * than enough. Source: a Japanese soil-making note on adjusting C:N with nitrogen: C/R − N.
 */
export function nitrogenToReach(options: {
  readonly carbon: number;
  readonly nitrogen: number;
  readonly goal_ratio: number;
}): number {
  return options.carbon / options.goal_ratio - options.nitrogen;
}

/**
 * Masses of two further ingredients that bring what is there to a goal moisture and a goal C:N at
 * once; water is a legitimate one of them. `undefined` when they can't: they pull the same way, or a
 * mass would be negative.
 * Source: Richard, Solving the Moisture and C-N Equations Simultaneously, Cornell: two linear
 * equations, aᵢ = Mᵢ − G and bᵢ = (100 − Mᵢ)(Cᵢ − R Nᵢ), Σ Qᵢaᵢ = 0 and Σ Qᵢbᵢ = 0.
 */
export function twoUnknowns_kg(options: {
  readonly known: readonly Stuff[];
  readonly second: Unweighed;
  readonly third: Unweighed;
  readonly goal_pctWet: number;
  readonly goal_ratio: number;
}): { readonly second_kg: number; readonly third_kg: number } | undefined {
  const { known, second, third } = options;
  const a = (stuff: Unweighed): number => stuff.moisture_pctWet - options.goal_pctWet;
  const b = (stuff: Unweighed): number =>
    (100 - stuff.moisture_pctWet) * (stuff.carbon_pctDry - options.goal_ratio * stuff.nitrogen_pctDry);
  const knownA = sum(known, (stuff) => stuff.wet_kg * a(stuff));
  const knownB = sum(known, (stuff) => stuff.wet_kg * b(stuff));
  const determinant = a(second) * b(third) - a(third) * b(second);
  const second_kg = (a(third) * knownB - knownA * b(third)) / determinant;
  const third_kg = (knownA * b(second) - a(second) * knownB) / determinant;
  return second_kg >= 0 && third_kg >= 0 && Number.isFinite(second_kg + third_kg) ? { second_kg, third_kg } : undefined;
}

function sum<Part>(parts: readonly Part[], measure: (part: Part) => number): number {
  return parts.reduce((total, part) => total + measure(part), 0);
}
