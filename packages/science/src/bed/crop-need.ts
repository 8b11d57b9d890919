import { bad, good, type Outcome } from '../catalogue/index.ts';
import { type Draws, drawsOf, fromPublished, type PublishedRange, positive, withSpread } from '../estimate/index.ts';
import { nearest } from '../material/index.ts';
import type { BedCrop, SoilTest } from './bed-budget-io.ts';
import { budgetParameters, type ClassId } from './budget-parameters.ts';
import { allCrops, type Crop, cropById } from './crops.ts';

const parameters = budgetParameters;

/** What a crop wants this season and takes off with its harvest, kg, draw by draw. */
export interface Wanted {
  readonly crop: Crop;
  readonly area_m2: Float64Array;
  readonly nitrogen_kg: Float64Array;
  readonly phosphate_kg: Float64Array;
  readonly potash_kg: Float64Array;
  /** Phosphorus that leaves with the harvest, P₂O₅. */
  readonly removal_kg: Float64Array;
}

const M2_PER_HA = 10_000;
const KG_PER_T = 1000;

/** A range that may be nothing at all. */
export function rangedDraws(draws: Draws, name: string, range: PublishedRange): Float64Array {
  if (range.high === 0) return new Float64Array(draws.count);
  return drawsOf(draws, name, fromPublished(range, positive), positive);
}

/** Problems: `unknown-crop`, and `not-one-of` for a cover crop, which has no harvest. */
export function cropWants(given: BedCrop, index: number, soil: SoilTest, draws: Draws): Outcome<Wanted> {
  const crop = cropById(given.crop);
  const path = `crops[${index}].crop`;
  if (crop === undefined) {
    const ids = allCrops.map(({ id }) => id);
    return bad({ code: 'unknown-crop', path, found: given.crop, wanted: nearest(given.crop, ids).join(', ') });
  }
  if (crop.nitrogen_kgPerHa === undefined) {
    return bad({ code: 'cover-crop', path, found: given.crop, wanted: '' });
  }
  const area_m2 = drawsOf(draws, `crops-${index}/area_m2`, given.area_m2, positive);
  const harvest_t = harvestOf(given, crop, area_m2, draws);
  const takes = given.takes ?? removalOf(crop);
  const taken = (kgPerT: number): Float64Array => harvest_t.map((tonnes) => tonnes * kgPerT);
  const wants = given.wants ?? {};
  const asked = (gPerM2: number): Float64Array => area_m2.map((area) => (area * gPerM2) / KG_PER_T);
  const removal_kg = taken(takes.phosphate_kgPerT);
  const byClass = (kg: Float64Array, name: 'phosphorus' | 'potassium', told: ClassId | undefined): Float64Array => {
    const rows = parameters[`${name}OfRemoval_times`];
    const row = rows.find(({ id }) => id === (told ?? 'untested'));
    if (row === undefined) throw new RangeError('a row for every class');
    const times = rangedDraws(draws, `bed/${name}OfRemoval_times`, row);
    return kg.map((taken_kg, i) => taken_kg * (times[i] ?? Number.NaN));
  };
  const ownTakes = given.takes !== undefined || given.byRemoval === true;
  return good({
    crop,
    area_m2,
    nitrogen_kg:
      wants.nitrogen_gPerM2 !== undefined
        ? asked(wants.nitrogen_gPerM2)
        : (treesWant_kg(given, draws) ??
          (ownTakes ? taken(takes.nitrogen_kgPerT) : byGuide(crop, crop.nitrogen_kgPerHa, area_m2, draws))),
    phosphate_kg:
      wants.phosphate_gPerM2 !== undefined
        ? asked(wants.phosphate_gPerM2)
        : given.takes !== undefined
          ? removal_kg
          : byClass(removal_kg, 'phosphorus', soil.phosphorusClass),
    potash_kg:
      wants.potash_gPerM2 !== undefined
        ? asked(wants.potash_gPerM2)
        : given.takes !== undefined
          ? taken(takes.potash_kgPerT)
          : byClass(taken(takes.potash_kgPerT), 'potassium', soil.potassiumClass),
    removal_kg,
  });
}

/** What is harvested, tonnes, draw by draw. */
export function harvestOf(given: BedCrop, crop: Crop, area_m2: Float64Array, draws: Draws): Float64Array {
  const usual = (crop.yield_tPerHa?.typical ?? 0) * (KG_PER_T / M2_PER_HA);
  const yield_kgPerM2 =
    given.yield_kgPerM2 ??
    withSpread(usual > 0 ? usual : parameters.gardenYield_kgPerM2.value, parameters.yieldSpread_onLine.value, positive);
  const each = drawsOf(draws, `${crop.id}/yield_kgPerM2`, yield_kgPerM2, positive);
  return area_m2.map((area, i) => (area * (each[i] ?? Number.NaN)) / KG_PER_T);
}

/** What a tonne of harvest holds; a herb without figures of its own takes those of its family. */
export function removalOf(crop: Crop): NonNullable<Crop['removal']> {
  const found =
    crop.removal ?? allCrops.find(({ family, removal }) => family === crop.family && removal !== undefined)?.removal;
  if (found === undefined) throw new RangeError(`${crop.id}: no removal in its family`);
  return found;
}

/** A guide's rate, as wide as guides of other regions make it. */
function byGuide(
  crop: Crop,
  rate: NonNullable<Crop['nitrogen_kgPerHa']>,
  area_m2: Float64Array,
  draws: Draws,
): Float64Array {
  const elsewhere = crop.nitrogenElsewhere_kgPerHa;
  const each = rangedDraws(draws, `${crop.id}/nitrogen_kgPerHa`, {
    low: Math.min(rate.low, elsewhere?.low ?? rate.low),
    typical: (rate.low + rate.high) / 2,
    high: Math.max(rate.high, elsewhere?.high ?? rate.high),
  });
  return area_m2.map((area, i) => (area * (each[i] ?? Number.NaN)) / M2_PER_HA);
}

/** By number and age, where a rule is published for such trees. */
function treesWant_kg({ crop, trees }: BedCrop, { count: draws }: Draws): Float64Array | undefined {
  const rule = parameters.trees.find(({ crops }) => crops.includes(crop));
  if (trees === undefined || rule === undefined) return undefined;
  return new Float64Array(draws).fill(trees.count * Math.min(rule.most_kg, rule.perYear_kg * trees.age_years));
}
