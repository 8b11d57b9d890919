import { bad, type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { inOrder } from '../caution/index.ts';
import {
  chance,
  type Draws,
  drawsOf,
  fraction,
  fromPublished,
  type PublishedRange,
  percent,
  positive,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { countInMeasure, knownMaterial, propertyDraws } from '../material/index.ts';
import { type PartAmount, partAmount } from './amounts.ts';
import {
  type BedAdviceId,
  type BedFill,
  type BedFillInput,
  type BedSize,
  bedAdviceIds,
  bedFillInputSchema,
  bedFillSchema,
} from './bed-fill-io.ts';
import { compostCautions, compostConductivity_dSPerM, maturitySigns, ripenessFor } from './compost.ts';
import { blendConductivity_dSPerM, blended, drained, type Shared, sharesOf } from './medium.ts';
import { type BaseId, blendParameters, type Parts, rowOf } from './parameters.ts';
import { partDraws } from './part.ts';
import { blendSources } from './sources.ts';

const { bed: rules } = blendParameters;

/** Below this depth of mix a bed holds no roots. */
const LEAST_MIX_M = 0.05;
const KG_PER_M3_PER_PCT_WATER = 10;

/** Area within the walls, m², draw by draw. */
function areaOf(bed: BedSize, draws: Draws): Float64Array {
  const side = (name: string, quantity: Quantity): Float64Array => drawsOf(draws, `bed/${name}`, quantity, positive);
  if ('area_m2' in bed) return side('area_m2', bed.area_m2);
  const width = side('width_m', bed.width_m);
  return side('length_m', bed.length_m).map((length, i) => length * (width[i] ?? Number.NaN));
}

function partsOf({ parts, compost_pctVolume }: BedFillInput): Outcome<readonly Parts[]> {
  if (parts !== undefined) {
    if (compost_pctVolume === undefined) return good(parts);
    return bad({ code: 'two-recipes', path: 'parts', found: String(compost_pctVolume), wanted: '' });
  }
  const compost = compost_pctVolume ?? rules.usualCompost_pctVolume.value;
  const both: readonly Parts[] = [
    { part: 'compost', parts: compost },
    { part: 'loam', parts: 100 - compost },
  ];
  return good(both.filter((one) => one.parts > 0));
}

interface Base {
  readonly volume_m3: Float64Array;
  readonly density_kgPerM3AsIs: Float64Array;
  readonly density_kgPerM3Wet: Float64Array;
}

/** The woody foot of a bed; logs lie closer than chips. */
function baseOf(id: BaseId, volume_m3: Float64Array, draws: Draws): Base {
  const { material, filled_share } = rowOf(rules.base, id);
  const known = knownMaterial(material);
  const asIs = known && propertyDraws(draws, known, 'densityLoose_kgPerM3AsIs');
  const moisture = known && propertyDraws(draws, known, 'moisture_pctWet');
  if (asIs === undefined || moisture === undefined) throw new RangeError(`nothing is known of ${material}`);
  const density_kgPerM3AsIs = asIs.map((kg) => kg * filled_share);
  const held = ranged(draws, 'base/waterHeld_pctVolume', rules.baseWaterHeld_pctVolume, percent);
  return {
    volume_m3,
    density_kgPerM3AsIs,
    density_kgPerM3Wet: density_kgPerM3AsIs.map((kg, i) => {
      const water = (kg * (moisture[i] ?? Number.NaN)) / 100;
      return kg - water + Math.max(water, KG_PER_M3_PER_PCT_WATER * (held[i] ?? Number.NaN));
    }),
  };
}

function ranged(
  draws: Draws,
  name: string,
  range: PublishedRange,
  scale: typeof percent | typeof positive | typeof fraction,
): Float64Array {
  return drawsOf(draws, name, fromPublished(range, scale), scale);
}

function run(input: BedFillInput, { draws }: { readonly draws: Draws }): Outcome<BedFill> {
  const asked = partsOf(input);
  if (!asked.ok) return asked;
  const known = input.compost ?? {};
  const beds = input.beds ?? 1;
  const area_m2 = areaOf(input.bed, draws).map((area) => area * beds);
  const depth_m = drawsOf(draws, 'bed/depth_m', input.bed.depth_m, positive);
  const base_m =
    input.base === undefined
      ? new Float64Array(draws.count)
      : drawsOf(draws, 'base/depth_m', input.base.depth_m, positive);
  const mix_m = depth_m.map((depth, i) => depth - (base_m[i] ?? 0));
  const shallowest_m = Math.min(...mix_m);
  if (shallowest_m < LEAST_MIX_M) {
    return bad({
      code: 'base-too-deep',
      path: 'base.depth_m',
      found: String(Math.max(...base_m)),
      wanted: String(LEAST_MIX_M),
    });
  }
  const volume_m3 = area_m2.map((area, i) => area * (depth_m[i] ?? Number.NaN));
  const mix_m3 = area_m2.map((area, i) => area * (mix_m[i] ?? Number.NaN));
  const settled = ranged(draws, 'bed/settled_share', rules.settled_share, fraction);
  const loose_m3 = mix_m3.map((volume, i) => volume / (settled[i] ?? Number.NaN));
  const salt = compostConductivity_dSPerM(known);
  const shared: readonly Shared[] = sharesOf(asked.value).map(({ part, share }) => ({
    part,
    share,
    drawn: partDraws(draws, part, part === 'compost' ? salt : undefined),
  }));
  const measure = input.measure ?? 'barrow';
  const parts: PartAmount[] = [];
  for (const { part, share, drawn } of shared) {
    const amount = partAmount(
      {
        part,
        share,
        volume_m3: loose_m3.map((loose) => loose * share),
        density_kgPerM3AsIs: drawn.density_kgPerM3AsIs,
      },
      { draws, measure, ownSizes: input.ownSizes, onHand: input.onHand },
    );
    if (!amount.ok) return amount;
    parts.push(amount.value);
  }
  const base =
    input.base &&
    baseOf(
      input.base.stuff,
      area_m2.map((area, i) => area * (base_m[i] ?? 0)),
      draws,
    );
  const counting = { draws, ownSizes: input.ownSizes, path: 'measure' };
  const baseCount = base && countInMeasure(base.volume_m3, measure, counting);
  if (baseCount !== undefined && !baseCount.ok) return baseCount;
  const wet = drained(shared, settled);
  const load = mix_m.map(
    (depth, i) =>
      depth * (wet.density_kgPerM3Wet[i] ?? Number.NaN) + (base_m[i] ?? 0) * (base?.density_kgPerM3Wet[i] ?? 0),
  );
  const compostShare = shared.find(({ part }) => part === 'compost')?.share ?? 0;
  const rotting = shared.reduce(
    (sum, { part, share }) => (rowOf(blendParameters.parts, part).rots ? sum + share : sum),
    0,
  );
  const organicLoss = ranged(draws, 'bed/organicLoss_pctVolume', rules.firstYearLoss_pctVolume.organic, percent);
  const woodLoss = ranged(draws, 'bed/woodLoss_pctVolume', rules.firstYearLoss_pctVolume.wood, percent);
  const drop_m = mix_m.map(
    (depth, i) =>
      (depth * rotting * (organicLoss[i] ?? Number.NaN) + (base_m[i] ?? 0) * (woodLoss[i] ?? Number.NaN)) / 100,
  );
  const topUp_m3 = drop_m.map((drop, i) => drop * (area_m2[i] ?? Number.NaN));
  const topUp = countInMeasure(topUp_m3, measure, counting);
  if (!topUp.ok) return topUp;
  const dry = blended(shared, ({ density_kgPerM3Dry }) => density_kgPerM3Dry);
  const organic = blended(shared, ({ organicMatter_kgPerM3 }) => organicMatter_kgPerM3);
  const conductivity = blendConductivity_dSPerM(shared);
  const phosphorus = phosphorusYears(shared, loose_m3, area_m2, draws);
  const { low, high } = rules.compost_pctVolume;
  const stands = compostStands(100 * compostShare, low, high);
  const underHardy = chance(conductivity, (value) => value <= rules.hardyConductivity_dSPerM.value);
  const ripeness = ripenessFor(maturitySigns(known), 'mature');
  const overDeck = chance(load, (kg) => kg > rules.deckDesignLoad_kgPerM2.value);
  return good({
    area_m2: summarise(area_m2),
    volume_m3: summarise(volume_m3),
    mixDepth_m: summarise(mix_m),
    settled_share: summarise(settled),
    bring_m3: summarise(loose_m3),
    parts,
    ...(base !== undefined &&
      input.base !== undefined &&
      baseCount?.ok === true && {
        base: {
          stuff: input.base.stuff,
          volume_m3: summarise(base.volume_m3),
          measure,
          count: summarise(baseCount.value),
          mass_kg: summarise(base.volume_m3.map((volume, i) => volume * (base.density_kgPerM3AsIs[i] ?? Number.NaN))),
        },
      }),
    compost: { share_pctVolume: 100 * compostShare, low_pctVolume: low, high_pctVolume: high, stands },
    organicMatter_pctDry: summarise(organic.map((kg, i) => (100 * kg) / (dry[i] ?? Number.NaN))),
    phosphorus_years: summarise(phosphorus),
    salts: {
      conductivity_dSPerM: summarise(conductivity),
      measured: known.conductivity !== undefined,
      sensitive_dSPerM: rules.sensitiveConductivity_dSPerM.value,
      underSensitive: chance(conductivity, (value) => value <= rules.sensitiveConductivity_dSPerM.value),
      hardy_dSPerM: rules.hardyConductivity_dSPerM.value,
      underHardy,
    },
    ripeness,
    load_kgPerM2: summarise(load),
    mass_kg: summarise(load.map((kg, i) => kg * (area_m2[i] ?? Number.NaN))),
    deck_kgPerM2: rules.deckDesignLoad_kgPerM2.value,
    overDeck,
    drop_m: summarise(drop_m),
    topUp: { volume_m3: summarise(topUp_m3), measure, count: summarise(topUp.value) },
    advice: adviceOf(input, {
      stands,
      salty: 2 * underHardy.met < underHardy.of,
      young: compostShare > 0 && ripeness === 'young',
      shallow: input.base !== undefined && summarise(mix_m).p50 < rules.leastOverWood_m.value,
    }),
    cautions: inOrder([
      ...(compostShare > 0 ? compostCautions(known) : []),
      ...(input.standsOn === 'roof' || input.standsOn === 'deck' ? (['roof-load'] as const) : []),
      ...(input.walls === 'treated-wood' || input.walls === 'unknown-wood' || input.base !== undefined
        ? (['treated-wood'] as const)
        : []),
      ...(input.standsOn === 'doubtful-ground' ? (['doubtful-ground'] as const) : []),
      'local-rules',
    ]),
  });
}

/** Years of vegetables that take off as much phosphorus as the compost of the bed holds. */
function phosphorusYears(
  shared: readonly Shared[],
  loose_m3: Float64Array,
  area_m2: Float64Array,
  draws: Draws,
): Float64Array {
  const compost = shared.find(({ part }) => part === 'compost');
  const known = knownMaterial('finished-compost');
  const pct = known && propertyDraws(draws, known, 'phosphorus_pctDry');
  if (compost === undefined || pct === undefined) return new Float64Array(draws.count);
  const removal = ranged(draws, 'bed/phosphorusRemoval', rules.phosphorusRemoval_kgPerM2PerYear, positive);
  return loose_m3.map((loose, i) => {
    const dry_kg = loose * compost.share * (compost.drawn.density_kgPerM3Dry[i] ?? Number.NaN);
    return (dry_kg * (pct[i] ?? Number.NaN)) / 100 / (area_m2[i] ?? Number.NaN) / (removal[i] ?? Number.NaN);
  });
}

const HAIR_PCT = 1e-9;

function compostStands(share_pct: number, low: number, high: number): BedFill['compost']['stands'] {
  if (share_pct === 0) return 'none';
  if (share_pct < low - HAIR_PCT) return 'lean';
  return share_pct <= high + HAIR_PCT ? 'within' : 'over';
}

function adviceOf(
  { base }: BedFillInput,
  of: {
    readonly stands: BedFill['compost']['stands'];
    readonly salty: boolean;
    readonly young: boolean;
    readonly shallow: boolean;
  },
): readonly BedAdviceId[] {
  const when: Readonly<Record<BedAdviceId, boolean>> = {
    'much-compost': of.stands === 'over',
    'salty-wash': of.salty,
    'young-wait': of.young,
    'wood-below': base !== undefined,
    'shallow-over-wood': of.shallow,
  };
  return bedAdviceIds.filter((id) => when[id]);
}

export const bedFill: Calculation<BedFillInput, BedFill> = {
  id: 'bed-fill',
  title: 'Filling a raised bed',
  summary:
    'How much compost, soil and wood fills a bed by volume, with what it settles by; in barrows, with the weight, wet, on each square metre; whether the compost is more than a bed can use, its salts, the years of phosphorus it brings; and what topping up to expect after the first year.',
  input: bedFillInputSchema,
  output: bedFillSchema,
  sources: blendSources.bed,
  cautions: inOrder([
    'legionella',
    'dust-spores',
    'manure-pathogens',
    'herbicide-carryover',
    'roof-load',
    'treated-wood',
    'doubtful-ground',
    'local-rules',
  ]),
  example: {
    bed: { length_m: 2.4, width_m: 1.2, depth_m: 0.4 },
    base: { stuff: 'hedge-chippings', depth_m: 0.1 },
    compost: { age_months: 14, madeOf: 'manure-or-salty' },
    standsOn: 'ground',
    walls: 'untreated-wood',
  },
  run,
};
