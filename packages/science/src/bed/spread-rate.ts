import { type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { inOrder } from '../caution/index.ts';
import type { Estimate } from '../estimate/index.ts';
import type { MilpRow, MilpSolver, MilpVariable } from '../solver/milp.ts';
import { bedBudget } from './bed-budget.ts';
import type { BedBudget, PutOn } from './bed-budget-io.ts';
import {
  alone,
  type Load,
  laid,
  least,
  limitOf,
  loads,
  phosphorusYears,
  type Room,
  removal_kg,
  roomOf,
  STEP,
  type Unit,
  unitOf,
} from './spread-limits.ts';
import {
  type LimitId,
  type Product,
  type ProductRate,
  type SpreadRate,
  type SpreadRateInput,
  spreadRateInputSchema,
  spreadRateSchema,
} from './spread-rate-io.ts';

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

/** Fewer barrows than this are told in buckets, where nobody said what to count in. */
const FEW = 3;

function handyUnit(product: Product, unit: (measured: Product) => Outcome<Unit>, room: Room): Outcome<Unit> {
  const one = unit(product);
  if (!one.ok || product.measure !== undefined || one.value.nitrogen_kg <= 0) return one;
  const least_count = Math.min(...alone(one.value, room).map(({ count }) => count));
  return least_count < FEW ? unit({ ...product, measure: 'bucket-20l' }) : one;
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
