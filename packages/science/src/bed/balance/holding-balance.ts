import { z } from 'zod';
import { type Calculation, good, type Needs, type Outcome } from '../../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../../caution/index.ts';
import { heapLeft } from '../../curing/left.ts';
import { type ShelterId, shelterIds, yieldParameters } from '../../curing/yield-parameters.ts';
import {
  type Draws,
  type Estimate,
  estimateSchema,
  positiveQuantity,
  type Quantity,
  summarise,
} from '../../estimate/index.ts';
import { type Amount, allMaterials, amountSchema, type OwnSizes } from '../../material/index.ts';
import {
  type Ingredient,
  ingredientSchema,
  ownSizesSchema,
  resolve,
  stuffedShape,
  weigh,
} from '../../mix/ingredient.ts';
import type { Portion } from '../../mix/portion.ts';
import { type Dressing, dressingShape } from '../available-nitrogen-io.ts';
import { dress } from '../dressing.ts';
import { releaseParameters } from '../release.ts';
import { takenBy, type YearlyCrop, yearlyCropsSchema } from '../years/harvests.ts';

export interface HoldingBalanceInput {
  /** What went on heaps in the year. */
  readonly heaped: readonly Ingredient[];
  readonly water_L?: Quantity | undefined;
  readonly shelter?: ShelterId | undefined;
  /** Compost that went from them on beds; left out, all that they come to. */
  readonly spread?: Amount | undefined;
  /** What went on beds straight. */
  readonly straight: readonly Dressing[];
  readonly crops: readonly YearlyCrop[];
  readonly ownSizes?: OwnSizes | undefined;
}

/** What is followed from scrap to crop; phosphorus and potassium as the elements. */
export const balanceIds = ['dry', 'water', 'carbon', 'nitrogen', 'phosphorus', 'potassium'] as const;
export type BalanceId = (typeof balanceIds)[number];

/** One of them, kg. In each draw: heaped = lost in the heap + spread + left; spread + straight = lost at spreading + taken + stays. */
export interface BalanceRow {
  readonly id: BalanceId;
  readonly heaped_kg: Estimate;
  /** Predicted; of water only what the compost does not hold. */
  readonly lostInHeap_kg: Estimate;
  readonly spread_kg: Estimate;
  /** Compost that should be there and was not spread: a remainder. Below 0 more was spread than heaps can come to. */
  readonly left_kg: Estimate;
  readonly straight_kg: Estimate;
  readonly lostAtSpreading_kg: Estimate;
  /** What harvests took; absent where it is not known. */
  readonly taken_kg?: Estimate | undefined;
  /** What stays in the beds or goes on from there, by leaching or to the air: a remainder. */
  readonly stays_kg: Estimate;
}

/** Where nitrogen goes that no crop gets. */
export const leakIds = ['heap', 'spreading', 'beds'] as const;
export type LeakId = (typeof leakIds)[number];

/** The cheapest way to stop the greatest leak; the message `balance.act.ID`. */
export const balanceActs = ['cover-and-carbon', 'work-in', 'spread-less', 'none'] as const;
export type BalanceAct = (typeof balanceActs)[number];

export interface HoldingBalance {
  readonly rows: readonly BalanceRow[];
  /** Greatest first. */
  readonly leaks: readonly { readonly leak: LeakId; readonly nitrogen_kg: Estimate }[];
  readonly act: BalanceAct;
  /** Nitrogen that working in at once would have kept. */
  readonly workedIn_kg: Estimate;
  readonly cautions: readonly CautionId[];
}

type Amounts = Readonly<Record<BalanceId, Float64Array>>;

function run(input: HoldingBalanceInput, { draws }: Needs): Outcome<HoldingBalance> {
  const heap = heapOf(input, draws);
  if (!heap.ok) return heap;
  const straight = straightOf(input, draws);
  if (!straight.ok) return straight;
  const taken = takenBy(input.crops, draws);
  if (!taken.ok) return taken;
  const { phosphatePerPhosphorus_ratio, potashPerPotassium_ratio } = releaseParameters.oxides;
  const takenOf: Readonly<Partial<Record<BalanceId, Float64Array>>> = {
    nitrogen: taken.value.nitrogen_kg,
    phosphorus: taken.value.phosphate_kg.map((kg) => kg / phosphatePerPhosphorus_ratio),
    potassium: taken.value.potash_kg.map((kg) => kg / potashPerPotassium_ratio),
  };
  const { heaped, compost, spread, cautions } = heap.value;
  const zero = new Float64Array(draws.count);
  const less = (a: Float64Array, b: Float64Array): Float64Array => a.map((kg, i) => kg - (b[i] ?? Number.NaN));
  const more = (a: Float64Array, b: Float64Array): Float64Array => a.map((kg, i) => kg + (b[i] ?? Number.NaN));
  const parts = balanceIds.map((id) => {
    const lostAtSpreading = id === 'nitrogen' ? straight.value.lost_kg : zero;
    const lostInHeap = less(heaped[id], compost[id]);
    const left = less(compost[id], spread[id]);
    const onBeds = less(more(spread[id], straight.value.amounts[id]), lostAtSpreading);
    const stays = less(onBeds, takenOf[id] ?? zero);
    return { id, lostInHeap, left, lostAtSpreading, stays };
  });
  const nitrogen = parts.find(({ id }) => id === 'nitrogen');
  if (nitrogen === undefined) throw new RangeError('nitrogen is followed');
  const leaks = [
    { leak: 'heap' as const, nitrogen_kg: summarise(nitrogen.lostInHeap) },
    { leak: 'spreading' as const, nitrogen_kg: summarise(nitrogen.lostAtSpreading) },
    { leak: 'beds' as const, nitrogen_kg: summarise(nitrogen.stays) },
  ].toSorted((a, b) => b.nitrogen_kg.p50 - a.nitrogen_kg.p50);
  return good({
    rows: parts.map(({ id, lostInHeap, left, lostAtSpreading, stays }) => {
      const took = takenOf[id];
      return {
        id,
        heaped_kg: summarise(heaped[id]),
        lostInHeap_kg: summarise(lostInHeap),
        spread_kg: summarise(spread[id]),
        left_kg: summarise(left),
        straight_kg: summarise(straight.value.amounts[id]),
        lostAtSpreading_kg: summarise(lostAtSpreading),
        ...(took !== undefined && { taken_kg: summarise(took) }),
        stays_kg: summarise(stays),
      };
    }),
    leaks,
    act: actOf(leaks),
    workedIn_kg: summarise(straight.value.saved_kg),
    cautions: inOrder([...cautions, ...straight.value.cautions, 'local-rules']),
  });
}

/** By the greatest leak; what stays in the beds is not all lost, but it is more than the crops took. */
function actOf(leaks: HoldingBalance['leaks']): BalanceAct {
  const [greatest] = leaks.filter(({ nitrogen_kg }) => nitrogen_kg.p50 > 0);
  if (greatest === undefined) return 'none';
  const acts = { heap: 'cover-and-carbon', spreading: 'work-in', beds: 'spread-less' } as const;
  return acts[greatest.leak];
}

interface Heaped {
  readonly heaped: Amounts;
  readonly compost: Amounts;
  readonly spread: Amounts;
  readonly cautions: readonly CautionId[];
}

/** The heaps of the year as one, what they come to, and what of it went on beds. */
function heapOf(
  { heaped: ingredients, water_L, shelter, spread, ownSizes }: HoldingBalanceInput,
  draws: Draws,
): Outcome<Heaped> {
  const zero = (): Float64Array => new Float64Array(draws.count);
  const nothing: Amounts = {
    dry: zero(),
    water: zero(),
    carbon: zero(),
    nitrogen: zero(),
    phosphorus: zero(),
    potassium: zero(),
  };
  if (ingredients.length === 0) return good({ heaped: nothing, compost: nothing, spread: nothing, cautions: [] });
  const left = heapLeft({ ingredients, water_L, shelter, ownSizes }, draws);
  if (!left.ok) return left;
  const { before = [], carbon_kg = zero(), dry_kg, wet_kg, nitrogen_kg, phosphorus_kg, potassium_kg } = left.value;
  const compost: Amounts = {
    dry: dry_kg,
    water: wet_kg.map((kg, i) => kg - (dry_kg[i] ?? Number.NaN)),
    carbon: carbon_kg,
    nitrogen: nitrogen_kg,
    phosphorus: phosphorus_kg,
    potassium: potassium_kg,
  };
  const share = spread === undefined ? undefined : spreadShare(spread, wet_kg, ownSizes, draws);
  if (share !== undefined && !share.ok) return share;
  const part = (of: Float64Array): Float64Array =>
    share === undefined ? of : of.map((kg, i) => kg * (share.value[i] ?? Number.NaN));
  const cautions = ingredients.flatMap((one) => {
    const resolved = resolve(one, 'heaped');
    return resolved.ok ? resolved.value.cautions : [];
  });
  return good({
    heaped: amountsOf(before),
    compost,
    spread: {
      dry: part(compost.dry),
      water: part(compost.water),
      carbon: part(compost.carbon),
      nitrogen: part(compost.nitrogen),
      phosphorus: part(compost.phosphorus),
      potassium: part(compost.potassium),
    },
    cautions,
  });
}

/** What was spread as a share of what the heaps come to; above 1 where more was spread than they can. */
function spreadShare(
  amount: Amount,
  wet_kg: Float64Array,
  ownSizes: OwnSizes | undefined,
  draws: Draws,
): Outcome<Float64Array> {
  const resolved = resolve({ material: 'finished-compost' }, 'spread');
  if (!resolved.ok) return resolved;
  const weighed = weigh(resolved.value, amount, 'balance-spread', { draws, ownSizes, path: 'spread' });
  if (!weighed.ok) return weighed;
  return good(wet_kg.map((kg, i) => (weighed.value[i]?.wet_kg ?? Number.NaN) / kg));
}

interface Straight {
  readonly amounts: Amounts;
  readonly lost_kg: Float64Array;
  /** What of the loss working in at once would have kept. */
  readonly saved_kg: Float64Array;
  readonly cautions: readonly CautionId[];
}

function straightOf({ straight, ownSizes }: HoldingBalanceInput, draws: Draws): Outcome<Straight> {
  const portions: Portion[][] = Array.from({ length: draws.count }, () => []);
  const lost_kg = new Float64Array(draws.count);
  const saved_kg = new Float64Array(draws.count);
  const cautions: CautionId[] = [];
  for (const [i, dressing] of straight.entries()) {
    const laying = { draws, ownSizes, path: `straight[${i}]`, name: `straight-${i}` };
    const dressed = dress(dressing, laying);
    if (!dressed.ok) return dressed;
    const { placed: _placed, workedInAfter_days: _after, ...plain } = dressing;
    const atOnce = dress({ ...plain, placed: 'dug-in', workedInAfter_days: 0 }, laying);
    if (!atOnce.ok) return atOnce;
    for (let k = 0; k < draws.count; k++) {
      const portion = dressed.value.portions[k];
      if (portion !== undefined) portions[k]?.push(portion);
      const lost = dressed.value.draws[k]?.lost_kg ?? Number.NaN;
      lost_kg[k] = (lost_kg[k] ?? Number.NaN) + lost;
      saved_kg[k] = (saved_kg[k] ?? Number.NaN) + lost - (atOnce.value.draws[k]?.lost_kg ?? Number.NaN);
    }
    cautions.push(...dressed.value.cautions);
  }
  const summed = portions.map((all) => sumOf(all));
  return good({ amounts: amountsOf(summed), lost_kg, saved_kg, cautions });
}

type Summed = Pick<Portion, 'wet_kg' | 'dry_kg' | 'carbon_kg' | 'nitrogen_kg' | 'phosphorus_kg' | 'potassium_kg'>;

function sumOf(portions: readonly Portion[]): Summed {
  const sum = (of: (portion: Portion) => number): number => portions.reduce((all, one) => all + of(one), 0);
  return {
    wet_kg: sum(({ wet_kg }) => wet_kg),
    dry_kg: sum(({ dry_kg }) => dry_kg),
    carbon_kg: sum(({ carbon_kg }) => carbon_kg),
    nitrogen_kg: sum(({ nitrogen_kg }) => nitrogen_kg),
    phosphorus_kg: sum(({ phosphorus_kg }) => phosphorus_kg),
    potassium_kg: sum(({ potassium_kg }) => potassium_kg),
  };
}

function amountsOf(portions: readonly Summed[]): Amounts {
  const each = (of: (portion: Summed) => number): Float64Array => Float64Array.from(portions, of);
  return {
    dry: each(({ dry_kg }) => dry_kg),
    water: each(({ wet_kg, dry_kg }) => wet_kg - dry_kg),
    carbon: each(({ carbon_kg }) => carbon_kg),
    nitrogen: each(({ nitrogen_kg }) => nitrogen_kg),
    phosphorus: each(({ phosphorus_kg }) => phosphorus_kg),
    potassium: each(({ potassium_kg }) => potassium_kg),
  };
}

const MOST_STUFFS = 40;

/** Where carbon, nitrogen, phosphorus, potassium, water and dry mass of a year go, from scrap to crop. */
export const holdingBalance: Calculation<HoldingBalanceInput, HoldingBalance> = {
  id: 'holding-balance',
  title: 'Where a year’s carbon and nutrients go',
  summary:
    'Follows dry mass, water, carbon, nitrogen, phosphorus and potassium of a year from what went on heaps to the compost, the beds and the harvest. Losses are predicted, so what is left over is a finding of its own: compost that should be there, and what stays in the beds or goes on from there. It tells where most nitrogen leaks and the cheapest way to stop it.',
  input: z.strictObject({
    heaped: z.array(ingredientSchema).max(MOST_STUFFS),
    water_L: positiveQuantity('Water poured on the heaps, litres.').optional(),
    shelter: z.enum(shelterIds).optional(),
    spread: amountSchema.optional(),
    straight: z.array(z.strictObject({ ...stuffedShape, ...dressingShape })).max(MOST_STUFFS),
    crops: yearlyCropsSchema,
    ownSizes: ownSizesSchema.optional(),
  }),
  output: z.strictObject({
    rows: z.array(
      z.strictObject({
        id: z.enum(balanceIds),
        heaped_kg: estimateSchema('On the heaps.'),
        lostInHeap_kg: estimateSchema('Predicted to be lost there.'),
        spread_kg: estimateSchema('In the compost that was spread.'),
        left_kg: estimateSchema('In compost that should be there still.'),
        straight_kg: estimateSchema('In what went on beds straight.'),
        lostAtSpreading_kg: estimateSchema('Predicted to be lost as it lay on the bed.'),
        taken_kg: estimateSchema('Taken by harvests.').optional(),
        stays_kg: estimateSchema('Stays in the beds or goes on from there.'),
      }),
    ),
    leaks: z.array(
      z.strictObject({ leak: z.enum(leakIds), nitrogen_kg: estimateSchema('Nitrogen that no crop of the year got.') }),
    ),
    act: z.enum(balanceActs),
    workedIn_kg: estimateSchema('Nitrogen that working in at once would have kept.'),
    cautions: z.array(z.enum(cautionIds)),
  }),
  sources: [yieldParameters.nitrogenLeast_pct, yieldParameters.potassiumLost_pct.unknown, releaseParameters.oxides],
  cautions: inOrder([...allMaterials.flatMap(({ cautions }) => cautions), 'local-rules']),
  example: {
    heaped: [
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 12 } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: 8 } },
      { material: 'hedge-chippings', amount: { measure: 'barrow', count: 6 } },
    ],
    spread: { measure: 'barrow', count: 4 },
    straight: [{ material: 'grass-clippings', amount: { measure: 'barrow', count: 1 }, placed: 'mulched' }],
    crops: [{ crop: 'kale', area_m2: 12 }],
  },
  run,
};
