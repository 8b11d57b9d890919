import {
  bad,
  type Calculation,
  type Citation,
  good,
  type Needs,
  type Outcome,
  type Problem,
} from '../catalogue/index.ts';
import {
  type Draws,
  drawsOf,
  type Estimate,
  fromPublished,
  likely,
  percent,
  positive,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { countInMeasure } from '../material/index.ts';
import { fateDraws, likelyFate, nitrogenAtRisk_kg } from '../mix/fate.ts';
import { resolve, weigh } from '../mix/ingredient.ts';
import { weighMix } from '../mix/mix-input.ts';
import { materialRules, mixParameters } from '../mix/parameters.ts';
import { type Portion, portionMoisture_pctWet } from '../mix/portion.ts';
import { potassiumConductivity_dSPerM, ripeDry_kg } from '../mix/salts.ts';
import { believed, type Left } from './believed.ts';
import { type HeapYield, type PastHeap, type YieldInput, yieldInputSchema, yieldSchema } from './yield-io.ts';
import { yieldParameters } from './yield-parameters.ts';

function run(input: YieldInput, { draws }: Needs): Outcome<HeapYield> {
  const problems = impossible(input);
  if (problems.length > 0) return bad(...problems);
  const compost = readyCompost(input, draws);
  if (!compost.ok) return compost;
  const reckoned =
    input.ingredients === undefined ? fromVolume(input, compost.value, draws) : fromMix(input, compost.value, draws);
  if (!reckoned.ok) return reckoned;
  const { left, places, volume_m3, notes } = believed(reckoned.value, input, draws);
  const measure = input.measure ?? 'barrow';
  const count = countInMeasure(volume_m3, measure, { draws, ownSizes: input.ownSizes, path: 'measure' });
  if (!count.ok) return count;
  const kept = (values: ArrayLike<number>): Float64Array =>
    Float64Array.from(places, (place) => values[place] ?? Number.NaN);
  const told = (values: ArrayLike<number>): Estimate => summarise(kept(values));
  const ofDry = (kg: Float64Array): Float64Array => kg.map((one, i) => (100 * one) / (left.dry_kg[i] ?? Number.NaN));
  const salts = drawsOf(
    draws,
    'heap/potassiumSalts_SCm2PerMol',
    fromPublished(mixParameters.potassiumSalts_SCm2PerMol, positive),
    positive,
  );
  const potassium_pctDry = ofDry(left.potassium_kg);
  const { carbon_kg, nitrogen_kg, before } = left;
  return good({
    basis: left.basis,
    notes,
    volume_m3: summarise(volume_m3),
    measure,
    count: summarise(count.value),
    wet_kg: told(left.wet_kg),
    dry_kg: told(left.dry_kg),
    moisture_pctWet: told(left.moisture_pctWet),
    left_pctVolume: summarise(volume_m3.map((one, i) => (100 * one) / (kept(left.built_m3)[i] ?? Number.NaN))),
    nitrogen_kg: told(nitrogen_kg),
    nitrogen_pctDry: told(ofDry(nitrogen_kg)),
    phosphorus_kg: told(left.phosphorus_kg),
    phosphorus_pctDry: told(ofDry(left.phosphorus_kg)),
    potassium_kg: told(left.potassium_kg),
    potassium_pctDry: told(potassium_pctDry),
    ...(carbon_kg !== undefined && nitrogen_kg.every((one) => one > 0)
      ? { carbonToNitrogen_ratio: told(carbon_kg.map((one, i) => one / (nitrogen_kg[i] ?? Number.NaN))) }
      : {}),
    ...(before === undefined || carbon_kg === undefined ? {} : { lost: lossesOf(left, before, carbon_kg, told) }),
    fromPotassium_dSPerM: told(
      potassium_pctDry.map((share, i) => potassiumConductivity_dSPerM(share, salts[i] ?? Number.NaN)),
    ),
    pastHeaps: input.pastHeaps?.length ?? 0,
  });
}

/** Heaps shrink: what is ready is never more than what was built. */
function impossible({ ingredients, built_m3, ready_m3, pastHeaps = [] }: YieldInput): readonly Problem[] {
  const missing: readonly Problem[] =
    ingredients === undefined && built_m3 === undefined
      ? [{ code: 'missing', path: 'built_m3', found: '', wanted: 'ingredients, built_m3' }]
      : [];
  const grown = (one: PastHeap, path: string): readonly Problem[] =>
    one.ready_m3 < one.built_m3
      ? []
      : [{ code: 'out-of-bounds', path, found: `${one.ready_m3} m³`, wanted: `less than ${one.built_m3} m³` }];
  return [
    ...missing,
    ...(ready_m3 !== undefined && built_m3 !== undefined
      ? grown({ built_m3: likely(built_m3), ready_m3 }, 'ready_m3')
      : []),
    ...pastHeaps.flatMap((one, i) => grown(one, `pastHeaps[${i}].ready_m3`)),
  ];
}

/** A cubic metre of ready compost as it lies in the heap: with what was measured on this one, else as published. */
function readyCompost(input: YieldInput, draws: Draws): Outcome<readonly Portion[]> {
  const { readyMoisture_pctWet, readyDensity_kgPerM3AsIs } = yieldParameters;
  const resolved = resolve(
    {
      material: 'finished-compost',
      described: {
        moisture_pctWet: input.readyMoisture_pctWet ?? fromPublished(readyMoisture_pctWet, percent),
        densityLoose_kgPerM3AsIs: input.readyDensity_kgPerM3AsIs ?? fromPublished(readyDensity_kgPerM3AsIs, positive),
      },
    },
    '',
  );
  return resolved.ok ? weigh(resolved.value, { volume_m3: 1 }, 'ready', { draws, path: '' }) : resolved;
}

/** Nothing is known but the volume: published shrinking, and composts of a laboratory. */
function fromVolume(input: YieldInput, compost: readonly Portion[], draws: Draws): Outcome<Left> {
  const built_m3 = drawsOf(draws, 'heap/built_m3', input.built_m3 ?? Number.NaN, positive);
  const lost = drawsOf(
    draws,
    'heap/volumeLost_pctVolume',
    fromPublished(mixParameters.volumeLost_pctVolume, percent),
    percent,
  );
  const volume_m3 = built_m3.map((one, i) => one * (1 - (lost[i] ?? Number.NaN) / 100));
  const each = (of: (portion: Portion) => number): Float64Array =>
    Float64Array.from(compost, (portion, i) => of(portion) * (volume_m3[i] ?? Number.NaN));
  return good({
    basis: 'volume',
    notes: ['not-listed'],
    built_m3,
    volume_m3,
    moisture_pctWet: Float64Array.from(compost, (portion) => portionMoisture_pctWet(portion) ?? Number.NaN),
    wet_kg: each(({ wet_kg }) => wet_kg),
    dry_kg: each(({ dry_kg }) => dry_kg),
    nitrogen_kg: each(({ nitrogen_kg }) => nitrogen_kg),
    phosphorus_kg: each(({ phosphorus_kg }) => phosphorus_kg),
    potassium_kg: each(({ potassium_kg }) => potassium_kg),
  });
}

/** The mix is known: ash, phosphorus and what does not rot stay; carbon, nitrogen and some potassium go. */
function fromMix(input: YieldInput, compost: readonly Portion[], draws: Draws): Outcome<Left> {
  const { ingredients = [], water_L, ownSizes, readyAsh_pctDry, shelter = 'unknown' } = input;
  const mix = weighMix({ ingredients, water_L, ownSizes }, draws);
  if (!mix.ok) return mix;
  const before = mix.value.total;
  const ash = readyAsh_pctDry === undefined ? undefined : drawsOf(draws, 'ready/ash_pctDry', readyAsh_pctDry, percent);
  const problem = readyAsh_pctDry === undefined ? undefined : ashProblem(before, readyAsh_pctDry);
  if (problem !== undefined) return bad(problem);
  const dry_kg = Float64Array.from(before, (portion, i) => dryLeft_kg(portion, ash?.[i]));
  const shares = Float64Array.from(compost, ({ wet_kg, dry_kg: dry }) => dry / wet_kg);
  const wet_kg = dry_kg.map((one, i) => one / (shares[i] ?? Number.NaN));
  const { volatileSolidsPerCarbon_ratio: perCarbon } = materialRules.carbonFromVolatileSolids;
  const carbon_kg = Float64Array.from(before, (portion, i) =>
    Math.max(0, portion.carbon_kg - (portion.dry_kg - (dry_kg[i] ?? Number.NaN)) / perCarbon),
  );
  const { nitrogenLeast_pct, potassiumLost_pct } = yieldParameters;
  const least = drawsOf(draws, 'heap/nitrogenLeast_pct', fromPublished(nitrogenLeast_pct, percent), percent);
  const washed = drawsOf(draws, 'heap/potassiumLost_pct', fromPublished(potassiumLost_pct[shelter], percent), percent);
  const fates = fateDraws(draws);
  const built_m3 =
    input.built_m3 === undefined
      ? Float64Array.from(before, ({ volume_m3 }, i) => volume_m3 * (mix.value.packing_share[i] ?? Number.NaN))
      : drawsOf(draws, 'heap/built_m3', input.built_m3, positive);
  return good({
    basis: ash === undefined ? 'rotting' : 'ash',
    notes: ash !== undefined && isGritty(before, dry_kg) ? ['grit'] : [],
    built_m3,
    // A heap settles; it never grows.
    volume_m3: wet_kg.map((one, i) => Math.min(built_m3[i] ?? Number.NaN, one / (compost[i]?.wet_kg ?? Number.NaN))),
    moisture_pctWet: shares.map((share) => 100 * (1 - share)),
    wet_kg,
    dry_kg,
    nitrogen_kg: Float64Array.from(before, (portion, i) => {
      const leaving_kg = ((least[i] ?? Number.NaN) / 100) * portion.nitrogen_kg;
      return portion.nitrogen_kg - Math.max(leaving_kg, nitrogenAtRisk_kg(portion, fates[i] ?? likelyFate));
    }),
    phosphorus_kg: Float64Array.from(before, ({ phosphorus_kg }) => phosphorus_kg),
    potassium_kg: Float64Array.from(
      before,
      ({ potassium_kg }, i) => potassium_kg * (1 - (washed[i] ?? Number.NaN) / 100),
    ),
    carbon_kg,
    before,
  });
}

const ash_kg = ({ dry_kg, volatileSolids_kg }: Portion): number => dry_kg - volatileSolids_kg;

/**
 * Ash stays: dry mass out = dry mass in × ash in / ash out, both percent of dry mass, and never more than went in. Without the ash
 * of the compost, everything has rotted that does in one composting.
 */
export function dryLeft_kg(before: Portion, readyAsh_pctDry: number | undefined): number {
  if (readyAsh_pctDry === undefined) return ripeDry_kg(before);
  return Math.min(before.dry_kg, (100 * ash_kg(before)) / readyAsh_pctDry);
}

function ashProblem(before: readonly Portion[], readyAsh_pctDry: Quantity): Problem | undefined {
  const at_pct = summarise(before.map((portion) => (100 * ash_kg(portion)) / portion.dry_kg)).p50;
  if (likely(readyAsh_pctDry) > at_pct) return undefined;
  const wanted = `more than ${at_pct.toFixed(0)}`;
  return { code: 'out-of-bounds', path: 'readyAsh_pctDry', found: String(likely(readyAsh_pctDry)), wanted };
}

function isGritty(before: readonly Portion[], dry_kg: Float64Array): boolean {
  return summarise(dry_kg).p50 < yieldParameters.grit_share.value * summarise(before.map(ripeDry_kg)).p50;
}

function lossesOf(
  left: Left,
  before: readonly Portion[],
  carbon_kg: Float64Array,
  told: (values: ArrayLike<number>) => Estimate,
): NonNullable<HeapYield['lost']> {
  const lost_pct = (of: (portion: Portion) => number, after: (i: number) => number): Estimate =>
    told(before.map((portion, i) => (100 * (of(portion) - after(i))) / of(portion)));
  const at = (values: Float64Array) => (i: number) => values[i] ?? Number.NaN;
  const every = (of: (portion: Portion) => number): boolean => before.every((portion) => of(portion) > 0);
  const nitrogen = ({ nitrogen_kg }: Portion): number => nitrogen_kg;
  const organic_kg = (i: number): number => {
    const portion = before[i];
    return portion === undefined ? Number.NaN : portion.volatileSolids_kg - (portion.dry_kg - at(left.dry_kg)(i));
  };
  const ofSome = (of: (portion: Portion) => number, after: (i: number) => number): Estimate =>
    every(of) ? lost_pct(of, after) : { p10: 0, p50: 0, p90: 0 };
  return {
    dry_pct: lost_pct(({ dry_kg }) => dry_kg, at(left.dry_kg)),
    organicMatter_pct: ofSome(({ volatileSolids_kg }) => volatileSolids_kg, organic_kg),
    carbon_pct: ofSome((portion) => portion.carbon_kg, at(carbon_kg)),
    ...(every(nitrogen) ? { nitrogen_pct: lost_pct(nitrogen, at(left.nitrogen_kg)) } : {}),
    potassium_pct: ofSome(({ potassium_kg }) => potassium_kg, at(left.potassium_kg)),
  };
}

const cited = ({ source, place, mark }: Citation): Citation => ({ source, place, mark });
const { nitrogenLeast_pct, potassiumLost_pct, betweenHeaps_factor, tape_factor } = yieldParameters;

/** How much compost a heap comes to, and what is in it. */
export const yieldEstimate: Calculation<YieldInput, HeapYield> = {
  id: 'yield-estimate',
  title: 'How much compost a heap comes to',
  summary:
    'Takes what went into a heap, or only its volume, and tells what is left when it is ready: volume, measures, mass, moisture, nitrogen, phosphorus, potassium and salts. Ash stays, so a laboratory’s ash gives the dry mass at once; without it everything has rotted that does in one composting. Past heaps of the same garden and a tape in the bay sharpen the answer.',
  input: yieldInputSchema,
  output: yieldSchema,
  sources: [
    cited(mixParameters.volumeLost_pctVolume),
    cited(mixParameters.finalRatio),
    cited(yieldParameters.readyDensity_kgPerM3AsIs),
    cited(yieldParameters.readyMoisture_pctWet),
    cited(nitrogenLeast_pct),
    cited(potassiumLost_pct.sheltered),
    cited(potassiumLost_pct.open),
    cited(betweenHeaps_factor),
    cited(tape_factor),
  ],
  cautions: ['legionella', 'dust-spores'],
  example: {
    ingredients: [
      { material: 'goat-bedding', amount: { count: 6, measure: 'barrow' } },
      { material: 'grass-clippings', amount: { count: 4, measure: 'barrow' } },
      { material: 'hedge-chippings', amount: { count: 3, measure: 'barrow' } },
    ],
    shelter: 'sheltered',
  },
  run,
};
