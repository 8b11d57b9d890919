import { bad, type Calculation, good, type Needs, type Outcome, type Problem } from '../catalogue/index.ts';
import { inOrder } from '../caution/index.ts';
import { type Estimate, summarise } from '../estimate/index.ts';
import { countInMeasure } from '../material/index.ts';
import type { MilpRow, MilpSolver, MilpVariable } from '../solver/milp.ts';
import { bedBudget } from './bed-budget.ts';
import type { BedBudget, BedBudgetInput, PutOn } from './bed-budget-io.ts';
import { budgetParameters } from './budget-parameters.ts';
import { cropWants } from './crop-need.ts';
import { dress } from './dressing.ts';
import { releaseParameters } from './release.ts';
import {
  type LimitId,
  type Product,
  type ProductRate,
  type SpreadRate,
  type SpreadRateInput,
  spreadRateInputSchema,
  spreadRateSchema,
} from './spread-rate-io.ts';

/** Nobody carries less than half a measure. */
const STEP = 0.5;

/** What one measure of a product does to the bed, by its likely figures. */
interface Unit {
  readonly product: Product;
  readonly measure: string;
  readonly nitrogen_kg: number;
  readonly phosphate_kg: number;
  readonly salts_dSPerM: number;
  readonly depth_m: number;
  readonly most: number;
}

/** What the bed still bears, by its likely figures. */
interface Room {
  readonly nitrogen_kg: number;
  readonly phosphate_kg: number;
  readonly salts_dSPerM: number;
  readonly depth_m: number;
}

type Load = keyof Room;
const loads: readonly Load[] = ['nitrogen_kg', 'phosphate_kg', 'salts_dSPerM', 'depth_m'];
const limitOf: Readonly<Record<Load, LimitId>> = {
  nitrogen_kg: 'nitrogen',
  phosphate_kg: 'phosphorus',
  salts_dSPerM: 'salts',
  depth_m: 'depth',
};

function run(input: SpreadRateInput, needs: Needs): Outcome<SpreadRate> {
  const { solver } = needs;
  if (solver === undefined) throw new RangeError('spread-rate wants a solver');
  const { products, prices: _prices, ...bed } = input;
  const before = bedBudget.run(bed, needs);
  if (!before.ok) return before;
  const years = phosphorusYears(bed);
  const room = roomOf(before.value, years * removal_kg(bed, needs));
  const units: Unit[] = [];
  for (const [i, product] of products.entries()) {
    const unit = handyUnit(product, (measured) => unitOf(measured, i, bed, before.value, needs), room);
    if (!unit.ok) return unit;
    units.push(unit.value);
  }
  const counts = chosen(units, room, solver);
  const put: readonly PutOn[] = units.flatMap(({ product, measure }, i) => {
    const count = counts[i] ?? 0;
    return count > 0 ? [{ ...laid(product), amount: { measure, count } }] : [];
  });
  const after = bedBudget.run({ ...bed, put: [...(bed.put ?? []), ...put] }, needs);
  if (!after.ok) return after;
  const rates = ratesOf(units, counts, room, after.value, (bed.put ?? []).length);
  return good({
    products: rates,
    stops: stopsAll(units, counts, room),
    short_kg: after.value.elements.nitrogen.short_kg,
    ...(Number.isFinite(years) && { phosphorusLimit_years: years }),
    after: after.value,
    ...worthOf(input, before.value, after.value),
    cautions: inOrder(after.value.cautions),
  });
}

/** As it is put on: everything but what there is of it. */
function laid({ onHand: _onHand, measure: _measure, ...product }: Product): Omit<PutOn, 'amount'> {
  return product;
}

/** Fewer barrows than this are told in buckets, where nobody said what to count in. */
const FEW = 3;

function handyUnit(product: Product, unit: (measured: Product) => Outcome<Unit>, room: Room): Outcome<Unit> {
  const one = unit(product);
  if (!one.ok || product.measure !== undefined || one.value.nitrogen_kg <= 0) return one;
  const least_count = Math.min(...alone(one.value, room).map(({ count }) => count));
  return least_count < FEW ? unit({ ...product, measure: 'bucket-20l' }) : one;
}

/** One measure of a product. Problems: as of weighing an ingredient. */
function unitOf(
  product: Product,
  i: number,
  { warmth, ownSizes }: BedBudgetInput,
  { area_m2 }: BedBudget,
  { draws }: Needs,
): Outcome<Unit> {
  const measure = product.measure ?? 'barrow';
  const path = `products[${i}]`;
  const laying = { draws, warmth, ownSizes, path, name: `product-${i}` };
  const one = dress({ ...laid(product), amount: { measure, count: 1 } }, laying);
  if (!one.ok) return one;
  const likelyOf = (each: (draw: number) => number): number =>
    summarise(Float64Array.from({ length: draws.count }, (_, j) => each(j))).p50;
  const portion = (j: number) => one.value.portions[j];
  if (one.value.portions.some(({ volume_m3 }) => !(volume_m3 > 0))) return bad(holdsNothing(path, measure));
  const depth_m = likelyOf((j) => portion(j)?.volume_m3 ?? Number.NaN) / area_m2.p50;
  const salts = budgetParameters.conductivity_dSPerM.find(({ for: kinds }) => kinds.includes(one.value.kind.id));
  const most = mostOf(product, measure, { draws, warmth, ownSizes, path, name: `product-${i}-onHand` });
  if (!most.ok) return most;
  return good({
    product,
    measure,
    nitrogen_kg: likelyOf((j) => one.value.draws[j]?.years_kg[0] ?? Number.NaN),
    phosphate_kg: likelyOf(
      (j) => (portion(j)?.phosphorus_kg ?? Number.NaN) * releaseParameters.oxides.phosphatePerPhosphorus_ratio,
    ),
    salts_dSPerM: salts === undefined ? 0 : (salts.typical * depth_m) / budgetParameters.mixedDepth_m.typical,
    depth_m,
    most: most.value,
  });
}

/** How many of the measure there are, in steps; unbounded where nobody said. */
function mostOf(product: Product, measure: string, laying: Parameters<typeof dress>[1]): Outcome<number> {
  const { onHand } = product;
  if (onHand === undefined) return good(Number.POSITIVE_INFINITY);
  const all = dress({ ...laid(product), amount: onHand }, laying);
  if (!all.ok) return all;
  const volume_m3 = Float64Array.from(all.value.portions, (portion) => portion.volume_m3);
  const counts = countInMeasure(volume_m3, measure, laying);
  if (!counts.ok) return counts;
  const isCounted = counts.value.every(Number.isFinite);
  return isCounted ? good(inSteps(summarise(counts.value).p50)) : bad(holdsNothing(laying.path, measure));
}

/** A measure that the grower gave no size can carry nothing. */
function holdsNothing(path: string, measure: string): Problem {
  return { code: 'too-small', path: `${path}.measure`, found: measure, wanted: '> 0' };
}

/** Whole steps, with a hair for what was counted in the same measure. */
function inSteps(count: number): number {
  return Math.floor(count / STEP + 1e-6) * STEP;
}

/**
 * Harvests of phosphorus that may go on in one season: none on soil that has far too much, one where it has enough, and
 * on poor soil as many as nitrogen lets on (Utah State University's rule); a few where nobody tested.
 */
function phosphorusYears({ soilTest }: BedBudgetInput): number {
  switch (soilTest?.phosphorusClass) {
    case 'excessive':
      return 0;
    case 'high':
    case 'optimum':
      return 1;
    case 'medium':
    case 'low':
      return Number.POSITIVE_INFINITY;
    case undefined:
      return budgetParameters.phosphorusMany_years.value;
  }
}

/** What the harvest of the season takes off of phosphorus, kg of P₂O₅, by its likely figures. */
function removal_kg({ crops, soilTest = {} }: BedBudgetInput, { draws }: Needs): number {
  return crops.reduce((sum, crop, index) => {
    const wanted = cropWants(crop, index, soilTest, draws);
    return wanted.ok ? sum + summarise(wanted.value.removal_kg).p50 : sum;
  }, 0);
}

function roomOf({ elements, supplied, salts }: BedBudget, phosphateLimit_kg: number): Room {
  const now = supplied.filter(({ from, seasonsAgo }) => from === 'put' && seasonsAgo === 0);
  const phosphatePut_kg = now.reduce((sum, { allPhosphate_kg }) => sum + (allPhosphate_kg?.p50 ?? 0), 0);
  const depthPut_m = now.reduce((sum, { depth_m }) => sum + (depth_m?.p50 ?? 0), 0);
  return {
    nitrogen_kg: Math.max(0, elements.nitrogen.need_kg.p50 - elements.nitrogen.supplied_kg.p50),
    phosphate_kg: Math.max(0, phosphateLimit_kg - phosphatePut_kg),
    salts_dSPerM:
      salts.threshold_dSPerM === undefined
        ? Number.POSITIVE_INFINITY
        : Math.max(0, salts.threshold_dSPerM - salts.conductivity_dSPerM.p50),
    depth_m: Math.max(0, budgetParameters.usualMost_m.value - depthPut_m),
  };
}

/** What is short costs most; then phosphorus, so that of two that feed alike the one that builds less up is taken. */
const COST_OF_SHORT = 1000;
const COST_OF_COUNT = 1e-4;

/** How many steps of each: nitrogen as near to what is wanted as the other limits and the supply let it come. */
function chosen(units: readonly Unit[], room: Room, solver: MilpSolver): readonly number[] {
  const useful = units.filter(({ nitrogen_kg }) => nitrogen_kg > 0);
  if (useful.length === 0 || room.nitrogen_kg <= 0) return units.map(() => 0);
  const name = (unit: Unit): string => `x${units.indexOf(unit)}`;
  const coarse_kg = STEP * Math.min(...useful.map(({ nitrogen_kg }) => nitrogen_kg));
  const row = (load: Load, upper: number): MilpRow => ({
    name: load,
    coefficients: Object.fromEntries(useful.map((unit) => [name(unit), STEP * unit[load]])),
    lower: Number.NEGATIVE_INFINITY,
    upper,
  });
  const variables: readonly MilpVariable[] = [
    ...useful.map((unit) => ({
      name: name(unit),
      cost: STEP * (unit.phosphate_kg + COST_OF_COUNT),
      lower: 0,
      upper: unit.most / STEP,
      integer: true,
    })),
    { name: 'short', cost: COST_OF_SHORT, lower: 0, upper: Number.POSITIVE_INFINITY, integer: false },
  ];
  const solved = solver({
    variables,
    rows: [
      {
        name: 'wanted',
        coefficients: { short: 1, ...Object.fromEntries(useful.map((unit) => [name(unit), STEP * unit.nitrogen_kg])) },
        lower: room.nitrogen_kg,
        upper: Number.POSITIVE_INFINITY,
      },
      row('nitrogen_kg', room.nitrogen_kg + coarse_kg / 2),
      ...loads
        .filter((load) => load !== 'nitrogen_kg' && Number.isFinite(room[load]))
        .map((load) => row(load, room[load])),
    ],
  });
  if (solved.status !== 'optimal') throw new RangeError(`nothing on the bed satisfies every limit: ${solved.status}`);
  return units.map((unit) => Math.max(0, Math.round(solved.values[name(unit)] ?? 0)) * STEP);
}

/** How many of one thing by itself each limit lets on. */
function alone(unit: Unit, room: Room): ProductRate['alone'] {
  if (unit.nitrogen_kg <= 0) return [{ limit: 'locks-up', count: 0 }];
  const by = loads.flatMap((load) =>
    unit[load] > 0 && Number.isFinite(room[load]) ? [{ limit: limitOf[load], count: room[load] / unit[load] }] : [],
  );
  return [...by, ...(Number.isFinite(unit.most) ? [{ limit: 'supply' as const, count: unit.most }] : [])];
}

function least(limits: ProductRate['alone']): LimitId {
  const [first] = limits.toSorted((a, b) => a.count - b.count);
  if (first === undefined) throw new RangeError('nitrogen is a limit of everything that has some');
  return first.limit;
}

function ratesOf(
  units: readonly Unit[],
  counts: readonly number[],
  room: Room,
  after: BedBudget,
  earlier: number,
): readonly ProductRate[] {
  let next = earlier;
  const nothing: Estimate = { p10: 0, p50: 0, p90: 0 };
  return units.map((unit, i) => {
    const count = counts[i] ?? 0;
    const put = count > 0 ? after.supplied.find(({ from, index }) => from === 'put' && index === next) : undefined;
    if (count > 0) next += 1;
    const limits = alone(unit, room);
    const depth_m = put?.depth_m ?? nothing;
    return {
      material: unit.product.material,
      measure: unit.measure,
      alone: limits,
      stops: least(limits),
      count,
      volume_m3: scaled(depth_m, after.area_m2.p50),
      mass_kg: put?.mass_kg ?? nothing,
      depth_m,
    };
  });
}

function scaled({ p10, p50, p90 }: Estimate, by: number): Estimate {
  return { p10: p10 * by, p50: p50 * by, p90: p90 * by };
}

/** What stops more: the limit that one further step of what is used, or of anything useful, would break. */
function stopsAll(units: readonly Unit[], counts: readonly number[], room: Room): LimitId {
  const used = (load: Load): number => units.reduce((sum, unit, i) => sum + (counts[i] ?? 0) * unit[load], 0);
  const useful = units.map((unit, i) => ({ unit, count: counts[i] ?? 0 })).filter(({ unit }) => unit.nitrogen_kg > 0);
  if (useful.length === 0) return 'locks-up';
  const smallest_kg = STEP * Math.min(...useful.map(({ unit }) => unit.nitrogen_kg));
  if (room.nitrogen_kg - used('nitrogen_kg') <= smallest_kg) return 'nitrogen';
  const open = useful.filter(({ unit, count }) => count + STEP <= unit.most);
  if (open.length === 0) return 'supply';
  const broken = loads.filter((load) => open.every(({ unit }) => used(load) + STEP * unit[load] > room[load]));
  const [first] = broken;
  if (first !== undefined) return limitOf[first];
  const tightest = loads
    .filter((load) => load !== 'nitrogen_kg' && Number.isFinite(room[load]))
    .toSorted((a, b) => used(b) / room[b] - used(a) / room[a])[0];
  return tightest === undefined ? 'supply' : limitOf[tightest];
}

/** What bought fertiliser would cost for what the bed wanted and now has: what it had not wanted is worth nothing here. */
function worthOf({ prices }: SpreadRateInput, before: BedBudget, after: BedBudget): Pick<SpreadRate, 'worth'> {
  if (prices === undefined) return {};
  const by = { nitrogen: prices.nitrogen_perKg, phosphate: prices.phosphate_perKg, potash: prices.potash_perKg };
  const saved = (id: keyof typeof by, at: keyof Estimate): number =>
    Math.max(0, before.elements[id].short_kg[at] - after.elements[id].short_kg[at]) * (by[id] ?? 0);
  const sum = (at: keyof Estimate): number => saved('nitrogen', at) + saved('phosphate', at) + saved('potash', at);
  const all = [sum('p10'), sum('p50'), sum('p90')];
  return { worth: { p10: Math.min(...all), p50: sum('p50'), p90: Math.max(...all) } };
}

/** How much of what is on hand goes on a bed, and what stops more. */
export const spreadRate: Calculation<SpreadRateInput, SpreadRate> = {
  id: 'spread-rate',
  title: 'How much goes on a bed',
  summary:
    'Takes a bed as bed-budget does and what could go on it, and tells how many measures of each: as near to the nitrogen that is wanted as phosphorus, salts, depth and the supply let it come, and which of them stops it. For each thing by itself, what every limit would let on. The rest of the answer is the bed with it.',
  input: spreadRateInputSchema,
  output: spreadRateSchema,
  sources: [
    ...bedBudget.sources,
    {
      source: 'usu-cnmp',
      place: 'lowest class by nitrogen or phosphorus, middle by removal, highest none',
      mark: 'seen',
    },
  ],
  cautions: bedBudget.cautions,
  example: {
    crops: [{ crop: 'kale', area_m2: 12 }],
    products: [
      { material: 'finished-compost', onHand: { measure: 'barrow', count: 6 } },
      { material: 'hen-manure', measure: 'bucket-20l', onHand: { measure: 'bucket-20l', count: 4 } },
    ],
    soilTest: { phosphorusClass: 'optimum' },
  },
  run,
};
