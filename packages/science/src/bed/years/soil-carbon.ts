import { type Calculation, type Cites, good, type Needs, type Outcome } from '../../catalogue/index.ts';
import { cautionIds, inOrder } from '../../caution/index.ts';
import {
  chance,
  type Draws,
  drawsOf,
  fraction,
  free,
  fromPublished,
  percent,
  positive,
  type Scale,
  summarise,
} from '../../estimate/index.ts';
import { allMaterials } from '../../material/index.ts';
import { carbonParameters, humifiedOf, type TextureRow } from './carbon-parameters.ts';
import {
  type CarbonNote,
  type CarbonYear,
  type SoilCarbon,
  type SoilCarbonInput,
  soilCarbonInputSchema,
  soilCarbonSchema,
} from './soil-carbon-io.ts';
import { carbonOf, type Pools, poolsAfter } from './two-pools.ts';
import { waterHeld } from './water-held.ts';
import { type CarbonWay, wayOf } from './way.ts';
import { type Weighed, weighPlan } from './yearly-plan.ts';

const parameters = carbonParameters;
const USUAL_YEARS = 20;
const PCT = 100;
const MM_PER_M = 1000;
const SPREAD_OVER_DEGC = 10;
const nothing: Pools = { young: 0, old: 0 };

/** What feeds the soil each year, on a square metre, in one draw. */
interface Feed {
  readonly carbon_kgPerM2: number;
  readonly humified_share: number;
}

/** The soil of one draw. */
interface Ground {
  readonly texture: TextureRow;
  readonly start_kgPerM2: number;
  readonly mineral_kgPerM2: number;
  readonly old_perYear: number;
  readonly outside_factor: number;
  readonly roots_kgPerM2: number;
  readonly rootsHumified_share: number;
  readonly feeds: readonly Feed[];
  readonly charcoal_kgPerM2: number;
  readonly charcoal_perYear: number;
}

function run(input: SoilCarbonInput, { draws }: Needs): Outcome<SoilCarbon> {
  const plan = weighPlan(input.plan, { draws, area_m2: input.area_m2, ownSizes: input.ownSizes });
  if (!plan.ok) return plan;
  const { depth_m = parameters.usualDepth_m.value, years = USUAL_YEARS, area_m2 } = input;
  const grounds = groundsOf(input, plan.value, depth_m, draws);
  const each = <Value extends number>(of: (ground: Ground) => Value): Float64Array => Float64Array.from(grounds, of);
  const water = (year: number): Float64Array =>
    each((ground) => available_mm(ground, organic_pctDry(ground, year, 'rotting'), depth_m));
  const told = (year: number): CarbonYear => {
    const planned = each((ground) => organic_pctDry(ground, year, 'all'));
    return {
      year,
      organicMatter_pctDry: summarise(planned),
      without_pctDry: summarise(each((ground) => organic_pctDry(ground, year, 'none'))),
      available_mm: summarise(water(year)),
    };
  };
  const start = each((ground) => organic_pctDry(ground, 0, 'all'));
  const end = each((ground) => organic_pctDry(ground, years, 'all'));
  const without = each((ground) => organic_pctDry(ground, years, 'none'));
  const brought = each((ground) => years * area_m2 * yearly_kgPerM2(ground));
  const kept = each((ground) => area_m2 * (rottingLeft_kgPerM2(ground, years) + charcoalLeft_kgPerM2(ground, years)));
  const gain = end.map((pct, i) => pct - (without[i] ?? Number.NaN));
  const dry = each((one) => available_mm(one, organic_pctDry(one, years, 'none'), depth_m));
  const rotting = each((one) => organic_pctDry(one, years, 'rotting')).map((pct, i) => pct - at(without, i));
  const carbonGain_pct = summarise(rotting).p50 / parameters.organicMatterPerCarbon_ratio.value;
  const { low, high } = parameters.waterBySurvey_mmPerMPerPct;
  const way = wayOf(input.organicMatter_pctDry);
  return good({
    way,
    years: Array.from({ length: years + 1 }, (_, year) => told(year)),
    start_pctDry: summarise(start),
    end_pctDry: summarise(end),
    gain_pctDry: summarise(gain),
    rises: chance(
      end.map((pct, i) => pct - (start[i] ?? Number.NaN)),
      (more) => more > 0,
    ),
    brought_kg: summarise(brought),
    kept_kg: summarise(kept),
    rotted_kg: summarise(brought.map((kg, i) => kg - (kept[i] ?? Number.NaN))),
    ...(brought.every((kg) => kg > 0) && {
      kept_share: summarise(kept.map((kg, i) => kg / (brought[i] ?? Number.NaN))),
    }),
    water: {
      gain_mm: summarise(water(years).map((mm, i) => mm - at(dry, i))),
      bySurvey_mm: { low: low * depth_m * carbonGain_pct, high: high * depth_m * carbonGain_pct },
    },
    notes: notesOf(input, way, plan.value, summarise(end).p90),
    cautions: inOrder([...plan.value.flatMap(({ cautions }) => cautions), 'local-rules']),
  });
}

/** Carbon that the plan brings on, on each square metre in a year. */
function yearly_kgPerM2({ feeds, charcoal_kgPerM2 }: Ground): number {
  return feeds.reduce((sum, { carbon_kgPerM2 }) => sum + carbon_kgPerM2, charcoal_kgPerM2);
}

/** What is there after some years of all that the plan brought on but charcoal. */
function rottingLeft_kgPerM2(ground: Ground, years: number): number {
  return ground.feeds.reduce(
    (sum, { carbon_kgPerM2, humified_share }) =>
      sum + carbonOf(poolsAfter(nothing, carbon_kgPerM2, years, { ...ratesOf(ground), humified_share })),
    0,
  );
}

/** The lasting part of charcoal goes slowly by its own rate; the rest is taken as gone at once. */
function charcoalLeft_kgPerM2({ charcoal_kgPerM2, charcoal_perYear, outside_factor }: Ground, years: number): number {
  const rate = charcoal_perYear * outside_factor;
  return charcoal_kgPerM2 * parameters.charcoalLasting_share.value * ((1 - Math.exp(-rate * years)) / rate);
}

function ratesOf({ old_perYear, outside_factor }: Ground) {
  return { young_perYear: parameters.youngDecay_perYear.value, old_perYear, outside_factor };
}

/**
 * Organic matter, percent of dry soil; the mineral part stays what it is.
 *
 * @param counted what is counted of the plan: `rotting` leaves out charcoal, on which no equation of water rests
 */
function organic_pctDry(ground: Ground, years: number, counted: 'all' | 'rotting' | 'none'): number {
  const young = ground.start_kgPerM2 * parameters.youngAtStart_share.value;
  const own = carbonOf(
    poolsAfter({ young, old: ground.start_kgPerM2 - young }, ground.roots_kgPerM2, years, {
      ...ratesOf(ground),
      humified_share: ground.rootsHumified_share,
    }),
  );
  const added = {
    all: () => rottingLeft_kgPerM2(ground, years) + charcoalLeft_kgPerM2(ground, years),
    rotting: () => rottingLeft_kgPerM2(ground, years),
    none: () => 0,
  };
  const carbon = own + added[counted]();
  const organic = carbon * parameters.organicMatterPerCarbon_ratio.value;
  return (PCT * organic) / (organic + ground.mineral_kgPerM2);
}

function available_mm({ texture }: Ground, organicMatter_pctDry: number, depth_m: number): number {
  const { field_share, wilting_share } = waterHeld(texture, organicMatter_pctDry);
  return Math.max(0, field_share - wilting_share) * depth_m * MM_PER_M;
}

function groundsOf(input: SoilCarbonInput, plan: readonly Weighed[], depth_m: number, draws: Draws): readonly Ground[] {
  const ranged = (name: string, range: Parameters<typeof fromPublished>[0], scale: Scale): Float64Array =>
    drawsOf(draws, name, fromPublished(range, scale), scale);
  const start = drawsOf(
    draws,
    'soil/organicMatter_pctDry',
    input.organicMatter_pctDry ?? fromPublished(parameters.untested_pctDry, percent),
    percent,
  );
  const old = ranged('soil/oldDecay_perYear', parameters.oldDecay_perYear, positive);
  const outside = ranged('soil/outside_factor', parameters.outside_factor, positive);
  const warmth = drawsOf(
    draws,
    'season/year_degC',
    input.year_degC ?? fromPublished(parameters.yearUnknown_degC, free),
    free,
  );
  const roots = ranged('soil/ownPlants_kgPerM2', parameters.ownPlants_kgPerM2, positive);
  const humified = new Map(
    plan.map(({ kind }) => [kind.id, ranged(`${kind.id}/humified_share`, humifiedOf(kind.id), fraction)]),
  );
  const ofPlants = ranged('dry-plants/humified_share', humifiedOf('dry-plants'), fraction);
  const charCarbon = ranged('charcoal/carbon_shareOfVolatile', parameters.charcoalCarbon_shareOfVolatile, fraction);
  const charDecay = ranged('charcoal/decay_perYear', parameters.charcoalDecay_perYear, positive);
  const guess = draws.shares('soil/texture');
  return Array.from({ length: draws.count }, (_, i) => {
    const texture = textureOf(input.texture, at(guess, i));
    const pct = at(start, i);
    const soil_kgPerM2 = depth_m * waterHeld(texture, pct).density_kgPerM3Dry;
    return {
      texture,
      start_kgPerM2: (soil_kgPerM2 * pct) / PCT / parameters.organicMatterPerCarbon_ratio.value,
      mineral_kgPerM2: soil_kgPerM2 * (1 - pct / PCT),
      old_perYear: at(old, i),
      outside_factor:
        at(outside, i) * parameters.q10.value ** ((at(warmth, i) - parameters.site_degC.value) / SPREAD_OVER_DEGC),
      roots_kgPerM2: input.cropped === false ? 0 : at(roots, i),
      rootsHumified_share: at(ofPlants, i),
      feeds: plan.map(({ kind, portions }) => ({
        carbon_kgPerM2: (portions[i]?.carbon_kg ?? Number.NaN) / input.area_m2,
        humified_share: at(humified.get(kind.id) ?? [], i),
      })),
      charcoal_kgPerM2: plan
        .filter(({ published }) => published === 'charcoal')
        .reduce(
          (sum, { portions }) =>
            sum + ((portions[i]?.volatileSolids_kg ?? Number.NaN) * at(charCarbon, i)) / input.area_m2,
          0,
        ),
      charcoal_perYear: at(charDecay, i),
    };
  });
}

const guessedTextures = ['sandy-loam', 'loam', 'clay-loam'] as const;

/** As told; else light, middling or heavy, each in a third of the draws. */
function textureOf(told: SoilCarbonInput['texture'], guess: number): TextureRow {
  const id = told ?? guessedTextures[Math.floor(guess * guessedTextures.length)];
  const row = parameters.textures.rows.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`reference/soil-carbon.json has no texture ${id}`);
  return row;
}

function notesOf(
  { texture, year_degC }: SoilCarbonInput,
  way: CarbonWay,
  plan: readonly Weighed[],
  highest_pct: number,
): readonly CarbonNote[] {
  const composts = humifiedOf('finished-compost').for;
  return [
    ...(way === 'by-nothing-known' ? (['not-tested'] as const) : []),
    ...(texture === undefined ? (['texture-guessed'] as const) : []),
    ...(year_degC === undefined ? (['climate-guessed'] as const) : []),
    ...(plan.some(({ kind }) => composts.includes(kind.id)) ? (['compost-not-in-trial'] as const) : []),
    ...(plan.some(({ published }) => published === 'charcoal') ? (['charcoal'] as const) : []),
    ...(highest_pct > parameters.pedotransfer.most_pctDry ? (['beyond-water'] as const) : []),
    ...(way === 'by-dry-soil' ? (['peaty'] as const) : []),
  ];
}

function at(values: ArrayLike<number>, i: number): number {
  return values[i] ?? Number.NaN;
}

const sources: readonly Cites[] = [
  parameters.youngDecay_perYear,
  parameters.oldDecay_perYear,
  parameters.outside_factor,
  parameters.site_degC,
  parameters.q10,
  parameters.yearUnknown_degC,
  parameters.youngAtStart_share,
  parameters.ownPlants_kgPerM2,
  ...parameters.humified_share,
  parameters.charcoalCarbon_shareOfVolatile,
  parameters.charcoalDecay_perYear,
  parameters.charcoalLasting_share,
  parameters.organicMatterPerCarbon_ratio,
  parameters.untested_pctDry,
  parameters.mineralSoil_pctDry,
  parameters.organicSoil_pctDry,
  parameters.usualDepth_m,
  parameters.textures,
  parameters.pedotransfer,
  parameters.waterBySurvey_mmPerMPerPct,
];

/** A bed's organic matter and the water it holds over the years, under a yearly plan. */
export const soilCarbon: Calculation<SoilCarbonInput, SoilCarbon> = {
  id: 'soil-carbon',
  title: 'Organic matter of a bed over the years',
  summary:
    'What goes on a bed every year, how deep the soil is and what organic matter it starts with go in; out comes its organic matter year by year, beside the same bed with nothing brought on, with its range: by a published model of young and old carbon. With it the water it holds for plants, by published equations and by a survey of measurements.',
  input: soilCarbonInputSchema,
  output: soilCarbonSchema,
  sources,
  cautions: cautionIds.filter(
    (id) => id === 'local-rules' || allMaterials.some(({ cautions }) => cautions.includes(id)),
  ),
  example: {
    area_m2: 10,
    plan: [{ material: 'finished-compost', amount: { measure: 'barrow', count: 1 } }],
    depth_m: 0.2,
    texture: 'loam',
    organicMatter_pctDry: 3,
    year_degC: 9,
    years: 20,
  },
  run,
};
