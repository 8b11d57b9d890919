import { bad, good, type Needs, type Outcome, type Problem } from '../catalogue/index.ts';
import { summarise } from '../estimate/index.ts';
import { countInMeasure } from '../material/index.ts';
import { bedBudget } from './bed-budget.ts';
import type { BedBudget, BedBudgetInput, PutOn } from './bed-budget-io.ts';
import { budgetParameters } from './budget-parameters.ts';
import { cropWants } from './crop-need.ts';
import { dress } from './dressing.ts';
import { releaseParameters } from './release.ts';
import type { LimitId, Product, ProductRate } from './spread-rate-io.ts';

/** Nobody carries less than half a measure. */
export const STEP = 0.5;

/** What one measure of a product does to the bed, by its likely figures. */
export interface Unit {
  readonly product: Product;
  readonly measure: string;
  readonly nitrogen_kg: number;
  readonly phosphate_kg: number;
  readonly salts_dSPerM: number;
  readonly depth_m: number;
  readonly most: number;
}

/** What the bed still bears, by its likely figures. */
export interface Room {
  readonly nitrogen_kg: number;
  readonly phosphate_kg: number;
  readonly salts_dSPerM: number;
  readonly depth_m: number;
}

export type Load = keyof Room;
export const loads: readonly Load[] = ['nitrogen_kg', 'phosphate_kg', 'salts_dSPerM', 'depth_m'];
export const limitOf: Readonly<Record<Load, LimitId>> = {
  nitrogen_kg: 'nitrogen',
  phosphate_kg: 'phosphorus',
  salts_dSPerM: 'salts',
  depth_m: 'depth',
};

/** As it is put on: everything but what there is of it. */
export function laid({ onHand: _onHand, measure: _measure, ...product }: Product): Omit<PutOn, 'amount'> {
  return product;
}

/** One measure of a product. Problems: as of weighing an ingredient. */
export function unitOf(
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
export function phosphorusYears({ soilTest }: BedBudgetInput): number {
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
export function removal_kg({ crops, soilTest = {} }: BedBudgetInput, { draws }: Needs): number {
  return crops.reduce((sum, crop, index) => {
    const wanted = cropWants(crop, index, soilTest, draws);
    return wanted.ok ? sum + summarise(wanted.value.removal_kg).p50 : sum;
  }, 0);
}

export function roomOf({ elements, supplied, salts }: BedBudget, phosphateLimit_kg: number): Room {
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

/** How many of one thing by itself each limit lets on. */
export function alone(unit: Unit, room: Room): ProductRate['alone'] {
  if (unit.nitrogen_kg <= 0) return [{ limit: 'locks-up', count: 0 }];
  const by = loads.flatMap((load) =>
    unit[load] > 0 && Number.isFinite(room[load]) ? [{ limit: limitOf[load], count: room[load] / unit[load] }] : [],
  );
  return [...by, ...(Number.isFinite(unit.most) ? [{ limit: 'supply' as const, count: unit.most }] : [])];
}

export function least(limits: ProductRate['alone']): LimitId {
  const [first] = limits.toSorted((a, b) => a.count - b.count);
  if (first === undefined) throw new RangeError('nitrogen is a limit of everything that has some');
  return first.limit;
}

/** How many of one thing by itself a bed bears beside what it has, by each limit. Problems: as of the budget and of weighing the thing. */
export function spreadLimits(
  bed: BedBudgetInput,
  product: Product,
  needs: Needs,
): Outcome<Pick<ProductRate, 'alone' | 'stops'>> {
  const before = bedBudget.run(bed, needs);
  if (!before.ok) return before;
  const unit = unitOf(product, 0, bed, before.value, needs);
  if (!unit.ok) return unit;
  const limits = alone(unit.value, roomOf(before.value, phosphorusYears(bed) * removal_kg(bed, needs)));
  return good({ alone: limits, stops: least(limits) });
}
