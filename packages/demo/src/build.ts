import type { Entered, LayerPut, MixAnswer } from '@loamwright/daybook';
import { carbon_pctDry, knownMaterial, likely, mixBalance } from '@loamwright/science';
import { convert } from '@loamwright/units';
import { draws, guessed, halvesOf, type Portion, portion, times, wholesOf } from './amount.ts';
import { book, bring, type Garden, onHand_kg } from './garden.ts';

/** In which measure each material is laid. */
const measureOf = {
  'goat-bedding': 'barrow',
  'rabbit-droppings': 'pail',
  'coffee-grounds': 'bucket-5gal',
  'grass-clippings': 'barrow',
  'apple-pomace': 'bucket-5gal',
  'hedge-chippings': 'barrow-large',
  'autumn-leaves': 'leaf-bag-30gal',
  straw: 'straw-bale',
} as const;
type Laid = keyof typeof measureOf;

/** Most of each in one heap, kg. */
const most_kg: Readonly<Record<Exclude<Laid, 'straw'>, number>> = {
  'goat-bedding': 170,
  'rabbit-droppings': 45,
  'coffee-grounds': 40,
  'grass-clippings': 60,
  'apple-pomace': 90,
  'hedge-chippings': 50,
  'autumn-leaves': 40,
};

const raw: ReadonlySet<string> = new Set(['goat-bedding', 'rabbit-droppings']);

const GOAL_RATIO = 30;
const GOAL_MOISTURE_PCT = 57;
const LEAST_BEDDING_KG = 110;
const FEWEST_BALES = 1.5;
const COVER_BALES = 0.5;
const MORNING_MIN = 8 * 60 + 30;

/** A heap to be built: its name and place. */
export interface HeapPlan {
  readonly id: string;
  readonly name: string;
  readonly bay: string;
  /** Whether it is the one that takes the apple pomace. */
  readonly pomace?: boolean | undefined;
}

/** Builds a heap out of what lies there, with straw for the carbon and water for the damp. */
export function build(garden: Garden, plan: HeapPlan): void {
  fetchFor(garden, plan);
  const rich = (Object.keys(most_kg) as (keyof typeof most_kg)[]).flatMap((material) => {
    const count = wholesOf(material, Math.min(most_kg[material], onHand_kg(garden, material)), measureOf[material]);
    return count === 0 ? [] : [portion(material, count, measureOf[material])];
  });
  const bales = Math.max(FEWEST_BALES, halvesOf('straw', strawFor_kg(rich), measureOf.straw));
  const straw = portion('straw', bales, measureOf.straw);
  if (onHand_kg(garden, 'straw') < straw.mass_kg.p50) {
    bring(garden, portion('straw', 5, 'straw-bale'), { minutes: MORNING_MIN, supplier: 'Farm at the top of the lane' });
  }
  const { layers, entered } = layered(garden, rich, straw);
  const water_gal = Math.max(0, Math.round(convert(waterFor_L([...rich, straw]), 'L', 'gal')));
  const mix = answerFor([...rich, straw], convert(water_gal, 'gal', 'L'));
  const all_kg = [...rich, straw].reduce((sum, { mass_kg }) => sum + mass_kg.p50, convert(water_gal, 'gal', 'L'));
  garden.book.put({
    day: garden.day.number,
    minutes: 10 * 60 + 15,
    precision: 'hour',
    kind: 'heap-built',
    subject: plan.id,
    writtenAfter_min: 180,
    body: {
      name: plan.name,
      bay: plan.bay,
      layers,
      ...(water_gal > 0 && { water_L: guessed(convert(water_gal, 'gal', 'L')) }),
      mix,
      size: { width_m: guessed(BAY_M), depth_m: guessed(BAY_M), height_m: guessed(likely(mix.height_m ?? BAY_M)) },
    },
    entered: { ...entered, ...(water_gal > 0 && { '/water_L': { amount: water_gal, unit: 'gal' } }) },
  });
  garden.heaps.set(plan.id, {
    id: plan.id,
    name: plan.name,
    builtOn: garden.day.number,
    lastTurnOn: garden.day.number,
    turns: 0,
    peak_degC: 0,
    thirst: 0,
    mass_kg: all_kg,
    state: 'working',
  });
}

/** What is fetched for the day: bedding when there is too little, grass and pomace fresh. */
function fetchFor(garden: Garden, plan: HeapPlan): void {
  const minutes = MORNING_MIN - 30;
  if (onHand_kg(garden, 'goat-bedding') < LEAST_BEDDING_KG) {
    bring(garden, portion('goat-bedding', 3, 'barrow'), { minutes, note: 'Pen cleaned out early, for the heap.' });
  }
  if (garden.day.month >= 4 && garden.day.month <= 10) {
    bring(garden, portion('grass-clippings', 2, 'barrow'), { minutes, supplier: 'Our lawn' });
  }
  if (plan.pomace === true) {
    bring(garden, portion('apple-pomace', 5, 'bucket-5gal'), { minutes, supplier: 'Cider press in the village' });
  }
}

interface Sums {
  readonly wet_kg: number;
  readonly dry_kg: number;
  readonly carbon_kg: number;
  readonly nitrogen_kg: number;
}

function sumsOf(parts: readonly { readonly material: string; readonly kg: number }[]): Sums {
  const sums = { wet_kg: 0, dry_kg: 0, carbon_kg: 0, nitrogen_kg: 0 };
  for (const { material, kg } of parts) {
    const known = knownMaterial(material);
    const dry_kg = kg * (1 - likely(known?.quantities.moisture_pctWet ?? 0) / 100);
    const carbon_kg = (dry_kg * likely(known === undefined ? 0 : (carbon_pctDry(known) ?? 0))) / 100;
    sums.wet_kg += kg;
    sums.dry_kg += dry_kg;
    sums.carbon_kg += carbon_kg;
    sums.nitrogen_kg += carbon_kg / likely(known?.quantities.carbonToNitrogen_ratio ?? Number.POSITIVE_INFINITY);
  }
  return sums;
}

const asKg = ({ material, mass_kg }: Portion): { material: string; kg: number } => ({ material, kg: mass_kg.p50 });

/** Straw that brings the rest to the goal: C + cS = R (N + nS). */
function strawFor_kg(rich: readonly Portion[]): number {
  const rest = sumsOf(rich.map(asKg));
  const one = sumsOf([{ material: 'straw', kg: 1 }]);
  return Math.max(0, (GOAL_RATIO * rest.nitrogen_kg - rest.carbon_kg) / (one.carbon_kg - GOAL_RATIO * one.nitrogen_kg));
}

function waterFor_L(parts: readonly Portion[]): number {
  const { wet_kg, dry_kg } = sumsOf(parts.map(asKg));
  return dry_kg / (1 - GOAL_MOISTURE_PCT / 100) - wet_kg;
}

const BAY_M = 1.2;

/** What the program would have said of the mix. */
function answerFor(parts: readonly Portion[], water_L: number): MixAnswer {
  const balanced = mixBalance.run(
    {
      ingredients: parts.map(({ material, entered }) => ({
        material,
        amount: { measure: entered.unit ?? '', count: entered.amount ?? 0 },
      })),
      water_L,
      bay: { width_m: BAY_M, depth_m: BAY_M, height_m: BAY_M },
    },
    { draws },
  );
  if (!balanced.ok) throw new RangeError(JSON.stringify(balanced.problems));
  const { carbonToNitrogen_ratio, moisture_pctWet, density_kgPerM3AsIs, freeAirSpace_pctVolume, volume_m3, height_m } =
    balanced.value;
  return {
    carbonToNitrogen: carbonToNitrogen_ratio?.value,
    moisture_pctWet: moisture_pctWet.value,
    density_kgPerM3AsIs: density_kgPerM3AsIs.value,
    freeAirSpace_pct: freeAirSpace_pctVolume.value,
    volume_m3,
    height_m,
  };
}

/** Chippings at the bottom, two lifts of all the rest, straw on top. */
function layered(
  garden: Garden,
  rich: readonly Portion[],
  straw: Portion,
): { readonly layers: readonly LayerPut[]; readonly entered: Readonly<Record<string, Entered>> } {
  const base = rich.filter(({ material }) => material === 'hedge-chippings');
  const body = rich.filter(({ material }) => material !== 'hedge-chippings');
  const bales = straw.entered.amount ?? 0;
  const cover = part(straw, COVER_BALES / bales);
  const lift = [part(straw, (1 - COVER_BALES / bales) / 2), ...body.map((one) => part(one, 0.5))];
  const laid = [
    ...base.map((one) => ({ one, where: 'base' as const })),
    ...lift.map((one) => ({ one, where: 'body' as const })),
    ...lift.map((one) => ({ one, where: 'body' as const })),
    { one: cover, where: 'cover' as const },
  ];
  for (const { one } of laid) book(garden, one, -1);
  return {
    layers: laid.map(({ one, where }) => ({
      material: one.material,
      mass_kg: one.mass_kg,
      volume_m3: one.volume_m3,
      part: where,
      raw: raw.has(one.material),
      from: { type: 'stock' },
    })),
    entered: Object.fromEntries(laid.map(({ one }, i) => [`/layers/${i}/mass_kg`, one.entered])),
  };
}

function part(whole: Portion, share: number): Portion {
  return {
    material: whole.material,
    mass_kg: times(whole.mass_kg, share),
    volume_m3: times(whole.volume_m3, share),
    entered: { ...whole.entered, amount: Math.round((whole.entered.amount ?? 0) * share * 100) / 100 },
  };
}
