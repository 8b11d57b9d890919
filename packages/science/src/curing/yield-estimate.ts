import { bad, type Calculation, good, type Needs, type Outcome, type Problem } from '../catalogue/index.ts';
import { type Estimate, summarise } from '../estimate/index.ts';
import { countInMeasure } from '../material/index.ts';
import { mixParameters } from '../mix/parameters.ts';
import type { Portion } from '../mix/portion.ts';
import { potassiumConductivity_dSPerM, potassiumSalts_SCm2PerMol } from '../mix/salts.ts';
import { believed, type Left } from './believed.ts';
import { heapLeft } from './left.ts';
import { type HeapYield, type YieldInput, yieldInputSchema, yieldSchema } from './yield-io.ts';
import { yieldParameters } from './yield-parameters.ts';

function run(input: YieldInput, { draws }: Needs): Outcome<HeapYield> {
  const problems = impossible(input);
  if (problems.length > 0) return bad(...problems);
  const reckoned = heapLeft(input, draws);
  if (!reckoned.ok) return reckoned;
  const most_m3 = summarise(reckoned.value.built_m3).p50;
  if (input.ready_m3 !== undefined && input.ready_m3 >= most_m3)
    return bad(grown('ready_m3', input.ready_m3, Number(most_m3.toPrecision(2))));
  const left = believed(reckoned.value, input, draws);
  const { volume_m3, notes } = left;
  const measure = input.measure ?? 'barrow';
  const count = countInMeasure(volume_m3, measure, { draws, ownSizes: input.ownSizes, path: 'measure' });
  if (!count.ok) return count;
  const ofDry = (kg: Float64Array): Float64Array => kg.map((one, i) => (100 * one) / (left.dry_kg[i] ?? Number.NaN));
  const salts = potassiumSalts_SCm2PerMol(draws);
  const potassium_pctDry = ofDry(left.potassium_kg);
  const { carbon_kg, nitrogen_kg, before } = left;
  return good({
    basis: left.basis,
    notes,
    volume_m3: summarise(volume_m3),
    measure,
    count: summarise(count.value),
    wet_kg: summarise(left.wet_kg),
    dry_kg: summarise(left.dry_kg),
    moisture_pctWet: summarise(left.moisture_pctWet),
    left_pctVolume: summarise(volume_m3.map((one, i) => (100 * one) / (left.built_m3[i] ?? Number.NaN))),
    nitrogen_kg: summarise(nitrogen_kg),
    nitrogen_pctDry: summarise(ofDry(nitrogen_kg)),
    phosphorus_kg: summarise(left.phosphorus_kg),
    phosphorus_pctDry: summarise(ofDry(left.phosphorus_kg)),
    potassium_kg: summarise(left.potassium_kg),
    potassium_pctDry: summarise(potassium_pctDry),
    ...(carbon_kg !== undefined && nitrogen_kg.every((one) => one > 0)
      ? { carbonToNitrogen_ratio: summarise(carbon_kg.map((one, i) => one / (nitrogen_kg[i] ?? Number.NaN))) }
      : {}),
    ...(before === undefined || carbon_kg === undefined ? {} : { lost: lossesOf(left, before, carbon_kg) }),
    fromPotassium_dSPerM: summarise(
      potassium_pctDry.map((share, i) => potassiumConductivity_dSPerM(share, salts[i] ?? Number.NaN)),
    ),
    pastHeaps: input.pastHeaps?.length ?? 0,
  });
}

/** Heaps shrink: what is ready is never more than what was built. */
function impossible({ ingredients, built_m3, pastHeaps = [] }: YieldInput): readonly Problem[] {
  const missing: readonly Problem[] =
    ingredients === undefined && built_m3 === undefined
      ? [{ code: 'missing', path: 'built_m3', found: '', wanted: 'ingredients, built_m3' }]
      : [];
  return [
    ...missing,
    ...pastHeaps.flatMap((one, i) =>
      one.ready_m3 < one.built_m3 ? [] : [grown(`pastHeaps[${i}].ready_m3`, one.ready_m3, one.built_m3)],
    ),
  ];
}

function grown(path: string, ready_m3: number, built_m3: number): Problem {
  return { code: 'out-of-bounds', path, found: `${ready_m3} m³`, wanted: `less than ${built_m3} m³` };
}

function lossesOf(left: Left, before: readonly Portion[], carbon_kg: Float64Array): NonNullable<HeapYield['lost']> {
  const lost_pct = (of: (portion: Portion) => number, after: (i: number) => number): Estimate =>
    summarise(before.map((portion, i) => (100 * (of(portion) - after(i))) / of(portion)));
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
    yieldParameters.volumeLost_pctVolume,
    mixParameters.finalRatio,
    yieldParameters.readyDensity_kgPerM3AsIs,
    yieldParameters.readyMoisture_pctWet,
    nitrogenLeast_pct,
    potassiumLost_pct.sheltered,
    potassiumLost_pct.open,
    betweenHeaps_factor,
    tape_factor,
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
