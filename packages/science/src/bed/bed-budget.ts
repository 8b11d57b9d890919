import { bad, type Calculation, type Cites, good, type Outcome, oneOfEach } from '../catalogue/index.ts';
import { cautionIds, inOrder } from '../caution/index.ts';
import { chance, type Draws, drawsOf, positive, shareOf, summarise } from '../estimate/index.ts';
import { allMaterials } from '../material/index.ts';
import { releaseSources } from './available-nitrogen.ts';
import {
  type BedBudget,
  type BedBudgetInput,
  bedBudgetInputSchema,
  bedBudgetSchema,
  type ElementBudget,
  type ElementId,
  type SoilTest,
  type Supplied,
} from './bed-budget-io.ts';
import { beforeSupplies, cautionsOf, limeOf, putSupplies, type Supply, saltsOf, soilSupply } from './bed-supply.ts';
import { adviceOf } from './budget-advice.ts';
import { budgetParameters } from './budget-parameters.ts';
import { cropWants, type Wanted } from './crop-need.ts';
import { allCrops, saltYield_pct } from './crops.ts';
import { releaseParameters } from './release.ts';

const parameters = budgetParameters;
const G_PER_KG = 1000;

function run(input: BedBudgetInput, { draws }: { readonly draws: Draws }): Outcome<BedBudget> {
  const soil = input.soilTest ?? {};
  const wanted: Wanted[] = [];
  for (const [index, crop] of input.crops.entries()) {
    const one = cropWants(crop, index, soil, draws);
    if (!one.ok) return one;
    wanted.push(one.value);
  }
  const area_m2 =
    input.area_m2 === undefined
      ? summed(
          draws,
          wanted.map((one) => one.area_m2),
        )
      : drawsOf(draws, 'bed/area_m2', input.area_m2, positive);
  const put = putSupplies(input, draws);
  if (!put.ok) return put;
  const before = beforeSupplies(input.before ?? [], area_m2, draws);
  if (!before.ok) return before;
  const deep_m = depthOf(put.value, area_m2, draws);
  const deepest_m = summarise(deep_m).p50;
  if (deepest_m > parameters.absurd_m.value) {
    const wanted_m = String(parameters.absurd_m.value);
    return bad({ code: 'bed-absurd-rate', path: 'put', found: deepest_m.toPrecision(3), wanted: wanted_m });
  }
  const ground = soilSupply(soil, area_m2, draws);
  const supplies = [...put.value, ...before.value, ...(ground === undefined ? [] : [ground])];
  const elements = {
    nitrogen: budgetOf('nitrogen', wanted, supplies, area_m2, draws),
    phosphate: budgetOf('phosphate', wanted, supplies, area_m2, draws),
    potash: budgetOf('potash', wanted, supplies, area_m2, draws),
  };
  const perM2 = (kg: Float64Array): Float64Array => kg.map((one, i) => (G_PER_KG * one) / (area_m2[i] ?? Number.NaN));
  const salts = saltsIn(wanted, saltsOf(supplies, soil, area_m2, draws), soil);
  const facts = {
    elements,
    salts,
    lime: limeIn(wanted, limeOf(supplies, draws), area_m2, soil),
    ...phosphorusYears(wanted, put.value, draws),
    ...lockUpOf(put.value, perM2, draws),
    untested: untestedOf(soil),
  };
  return good({
    area_m2: summarise(area_m2),
    ...facts,
    wanted: wanted.map((one) => ({
      crop: one.crop.id,
      nitrogen_kg: summarise(one.nitrogen_kg),
      phosphate_kg: summarise(one.phosphate_kg),
      potash_kg: summarise(one.potash_kg),
    })),
    supplied: supplies.map((supply) => suppliedOf(supply, area_m2)),
    cover: coverOf(input, wanted, supplies, perM2, draws),
    advice: adviceOf(facts, put.value, {
      deep_m,
      sandy: input.sandy === true,
      phosphorusClass: input.soilTest?.phosphorusClass,
      alone_m: depthOf(
        put.value.filter(({ put: one }) => one?.dressed.kind.fresh === false),
        area_m2,
        draws,
        true,
      ),
    }),
    cautions: inOrder(['local-rules', ...cautionsOf(put.value)]),
  });
}

function summed(draws: Draws, parts: readonly Float64Array[]): Float64Array {
  return Float64Array.from({ length: draws.count }, (_, i) => parts.reduce((sum, part) => sum + (part[i] ?? 0), 0));
}

/** How deep what was put on lies over the bed: this season's, or that of all seasons. */
function depthOf(supplies: readonly Supply[], area_m2: Float64Array, draws: Draws, everSince = false): Float64Array {
  const laid = supplies.filter(({ seasonsAgo }) => everSince || seasonsAgo === 0);
  const volumes = laid.map(({ put }) => Float64Array.from(put?.dressed.portions ?? [], ({ volume_m3 }) => volume_m3));
  return summed(draws, volumes).map((m3, i) => m3 / (area_m2[i] ?? Number.NaN));
}

function budgetOf(
  id: ElementId,
  wanted: readonly Wanted[],
  supplies: readonly Supply[],
  area_m2: Float64Array,
  draws: Draws,
): ElementBudget {
  const key = `${id}_kg` as const;
  const need = summed(
    draws,
    wanted.map((one) => one[key]),
  );
  const supplied = summed(
    draws,
    supplies.map((one) => one[key]),
  );
  const balance = supplied.map((kg, i) => kg - (need[i] ?? Number.NaN));
  const perM2 = (kg: Float64Array) => summarise(kg.map((one, i) => (G_PER_KG * one) / (area_m2[i] ?? Number.NaN)));
  const short = balance.map((kg) => Math.max(0, -kg));
  const over = balance.map((kg) => Math.max(0, kg));
  const enough = chance(balance, (kg) => kg >= 0);
  const twice = supplied.map((kg, i) => kg - 2 * (need[i] ?? Number.NaN));
  const doubled = chance(twice, (kg) => kg > 0);
  return {
    need_kg: summarise(need),
    supplied_kg: summarise(supplied),
    short_kg: summarise(short),
    over_kg: summarise(over),
    need_gPerM2: perM2(need),
    short_gPerM2: perM2(short),
    over_gPerM2: perM2(over),
    enough,
    stands: standsOf(need, shareOf(enough), shareOf(doubled)),
  };
}

function standsOf(need: Float64Array, enough: number, doubled: number): ElementBudget['stands'] {
  const sure = parameters.surely_share.value;
  if (doubled >= sure) return 'over';
  if (need.every((kg) => kg === 0)) return 'none-wanted';
  if (enough >= sure) return 'enough';
  return enough <= 1 - sure ? 'short' : 'doubtful';
}

function suppliedOf(supply: Supply, area_m2: Float64Array): Supplied {
  const { from, index, what, seasonsAgo, put } = supply;
  const of = (value: (portion: NonNullable<typeof put>['dressed']['portions'][number]) => number): Float64Array =>
    Float64Array.from(put?.dressed.portions ?? [], value);
  return {
    from,
    index,
    what,
    seasonsAgo,
    nitrogen_kg: summarise(supply.nitrogen_kg),
    phosphate_kg: summarise(supply.phosphate_kg),
    potash_kg: summarise(supply.potash_kg),
    ...(put !== undefined && {
      allNitrogen_kg: summarise(of(({ nitrogen_kg }) => nitrogen_kg)),
      allPhosphate_kg: summarise(
        of(({ phosphorus_kg }) => phosphorus_kg * releaseParameters.oxides.phosphatePerPhosphorus_ratio),
      ),
      mass_kg: summarise(of(({ wet_kg }) => wet_kg)),
      depth_m: summarise(of(({ volume_m3 }) => volume_m3).map((m3, i) => m3 / (area_m2[i] ?? Number.NaN))),
    }),
  };
}

function phosphorusYears(
  wanted: readonly Wanted[],
  put: readonly Supply[],
  draws: Draws,
): Pick<BedBudget, 'phosphorus_years'> {
  const now = put.filter(({ seasonsAgo }) => seasonsAgo === 0);
  if (now.length === 0) return {};
  const off = summed(
    draws,
    wanted.map(({ removal_kg }) => removal_kg),
  );
  const ratio = releaseParameters.oxides.phosphatePerPhosphorus_ratio;
  const on = summed(
    draws,
    now.map(({ put: one }) => Float64Array.from(one?.dressed.portions ?? [], (part) => part.phosphorus_kg * ratio)),
  );
  if (off.some((kg) => kg <= 0)) return {};
  return { phosphorus_years: summarise(on.map((kg, i) => kg / (off[i] ?? Number.NaN))) };
}

function lockUpOf(
  put: readonly Supply[],
  perM2: (kg: Float64Array) => Float64Array,
  draws: Draws,
): Pick<BedBudget, 'lockUp'> {
  const now = put.filter(({ seasonsAgo }) => seasonsAgo === 0);
  const of = (value: (draw: NonNullable<Supply['put']>['dressed']['draws'][number]) => number): Float64Array =>
    summed(
      draws,
      now.map(({ put: one }) => Float64Array.from(one?.dressed.draws ?? [], value)),
    );
  const most = perM2(of(({ lockMost_kg }) => lockMost_kg));
  if (most.every((g) => g === 0)) return {};
  const released = of(({ years_kg }) => years_kg[0]);
  return {
    lockUp: {
      most_gPerM2: summarise(most),
      thisSeason_gPerM2: summarise(perM2(of(({ lock_kg }) => lock_kg))),
      give_gPerM2: summarise(perM2(released.map((kg) => Math.max(0, -kg)))),
    },
  };
}

function saltsIn(wanted: readonly Wanted[], salts: Float64Array, soil: SoilTest): BedBudget['salts'] {
  const known = wanted
    .flatMap(({ crop }) => {
      const threshold_dSPerM = crop.salt?.threshold_dSPerM;
      return threshold_dSPerM === undefined ? [] : [{ crop, threshold_dSPerM }];
    })
    .toSorted((a, b) => a.threshold_dSPerM - b.threshold_dSPerM);
  const [first] = known;
  return {
    conductivity_dSPerM: summarise(salts),
    measured: soil.conductivity_dSPerM !== undefined,
    ...(first !== undefined && {
      crop: first.crop.id,
      threshold_dSPerM: first.threshold_dSPerM,
      under: chance(salts, (value) => value <= first.threshold_dSPerM),
      yield_pct: summarise(salts.map((value) => saltYield_pct(first.crop, value) ?? 100)),
    }),
  };
}

function limeIn(
  wanted: readonly Wanted[],
  lime_kg: Float64Array,
  area_m2: Float64Array,
  { pH }: SoilTest,
): BedBudget['lime'] {
  const pHLow = Math.max(...wanted.map(({ crop }) => crop.pH.low));
  const pHHigh = Math.min(...wanted.map(({ crop }) => crop.pH.high));
  return {
    brought_kgPerM2: summarise(lime_kg.map((kg, i) => kg / (area_m2[i] ?? Number.NaN))),
    pHLow,
    pHHigh,
    stands: pHStands({ pHLow, pHHigh }, pH),
  };
}

function pHStands(
  { pHLow, pHHigh }: { readonly pHLow: number; readonly pHHigh: number },
  pH: number | undefined,
): BedBudget['lime']['stands'] {
  if (pHLow > pHHigh) return 'apart';
  if (pH === undefined) return 'untested';
  if (pH < pHLow) return 'below';
  return pH > pHHigh ? 'above' : 'within';
}

function coverOf(
  { fertilisers = [] }: BedBudgetInput,
  wanted: readonly Wanted[],
  supplies: readonly Supply[],
  perM2: (kg: Float64Array) => Float64Array,
  draws: Draws,
): BedBudget['cover'] {
  const need = summed(
    draws,
    wanted.map(({ nitrogen_kg }) => nitrogen_kg),
  );
  const supplied = summed(
    draws,
    supplies.map(({ nitrogen_kg }) => nitrogen_kg),
  );
  return fertilisers.map(({ nitrogen_pctAsIs, phosphate_pctAsIs = 0, potash_pctAsIs = 0, price_perKg }) => {
    const mass_kg = need.map((kg, i) => Math.max(0, kg - (supplied[i] ?? Number.NaN)) / (nitrogen_pctAsIs / 100));
    return {
      mass_kg: summarise(mass_kg),
      mass_gPerM2: summarise(perM2(mass_kg)),
      phosphate_kg: summarise(mass_kg.map((kg) => (kg * phosphate_pctAsIs) / 100)),
      potash_kg: summarise(mass_kg.map((kg) => (kg * potash_pctAsIs) / 100)),
      ...(price_perKg !== undefined && { nitrogen_pricePerKg: price_perKg / (nitrogen_pctAsIs / 100) }),
    };
  });
}

function untestedOf(soil: SoilTest): BedBudget['untested'] {
  return [
    ...(soil.phosphorusClass === undefined ? (['phosphorus'] as const) : []),
    ...(soil.potassiumClass === undefined ? (['potassium'] as const) : []),
    ...(soil.organicMatter_pctDry === undefined ? (['organic-matter'] as const) : []),
    ...(soil.pH === undefined ? (['pH'] as const) : []),
    ...(soil.conductivity_dSPerM === undefined ? (['salts'] as const) : []),
  ];
}

/** One place of each source, however many crops stand there. */
const cropSources: readonly Cites[] = oneOfEach(
  allCrops.flatMap((crop) =>
    [
      crop.nitrogen_kgPerHa,
      crop.nitrogenElsewhere_kgPerHa,
      crop.removal,
      crop.yield_tPerHa,
      crop.salt,
      crop.pH,
      crop.cover,
    ].filter((one) => one !== undefined),
  ),
);

/** What a bed's crops want, what they have, and what is short or too much. */
export const bedBudget: Calculation<BedBudgetInput, BedBudget> = {
  id: 'bed-budget',
  title: 'What a bed wants and what it has',
  summary:
    'The crops of a bed, what was put on it this season and before, what grew before and what a soil test said go in; out comes nitrogen, phosphorus and potassium wanted, supplied, short or too much, with salts, lime and what nobody tested.',
  input: bedBudgetInputSchema,
  output: bedBudgetSchema,
  sources: [
    ...cropSources,
    { source: 'fao-61-salt', place: 'Annex 1, equation 1: yield above the threshold', mark: 'seen' },
    ...parameters.phosphorusOfRemoval_times,
    ...parameters.potassiumOfRemoval_times,
    parameters.organicMatterCounted_pct,
    releaseParameters.organicMatter,
    ...releaseParameters.credits,
    parameters.coverWithoutNitrogen_kgPerHa,
    parameters.saltOfShare,
    parameters.mixedDepth_m,
    parameters.soilConductivity_dSPerM,
    ...parameters.conductivity_dSPerM,
    ...parameters.limeEquivalent_share,
    ...parameters.trees,
    ...releaseSources,
  ],
  cautions: cautionIds.filter(
    (id) =>
      id === 'manure-pathogens' || id === 'local-rules' || allMaterials.some(({ cautions }) => cautions.includes(id)),
  ),
  example: {
    crops: [
      { crop: 'kale', area_m2: 10 },
      { crop: 'leek', area_m2: 5 },
    ],
    put: [
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 2 } },
      { material: 'finished-compost', amount: { measure: 'barrow', count: 3 }, seasonsAgo: 1 },
    ],
    soilTest: { phosphorusClass: 'high', pH: 6.4 },
  },
  run,
};
