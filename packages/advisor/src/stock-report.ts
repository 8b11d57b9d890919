import { type Holding, type StockMove, type StockOfMaterial, tell } from '@loamwright/daybook';
import { isEstimate, materialById, type PublishedValue, type Quantity } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { materialName, someOf } from './names.ts';
import { mass, say } from './saying.ts';
import { daysFrom, lasting } from './when.ts';

/** One material in store. */
export interface StockLine {
  readonly material: string;
  readonly name: Saying;
  /** What is left, with its range; the plain likely figure where the book is below zero. */
  readonly mass_kg: Quantity;
  /** Days that the oldest of it has lain; null where nothing of what came in is left. */
  readonly oldest_days: number | null;
  /** Days for which it keeps, as published: low, typical and high; null where it is not known. */
  readonly keeps_days: PublishedValue | null;
  /** Typical days left before the oldest of it spoils; below 0 when it is past; null where it is not known. */
  readonly left_days: number | null;
  readonly said: Saying;
  /** How long it keeps, or that the book does not add up. */
  readonly keeping: Saying | null;
}

export interface StockReport {
  /** What spoils soonest comes first. */
  readonly lines: readonly StockLine[];
  /** Said when there is nothing. */
  readonly none: Saying;
}

/** Less than this is a rounding of amounts, not stuff. */
const LEAST_KG = 0.05;
/** It is time to use what spoils within this. */
const SOON_DAYS = 7;

/**
 * What lies in store, with ranges, and what of it spoils soon. What came in first is taken to have been used first.
 */
export function stockReport(holding: Holding, now: string): StockReport {
  const quantityIn = quantitiesIn(holding);
  const lines = [...holding.stock.values()]
    .filter(({ mass_kg }) => Math.abs(mass_kg) >= LEAST_KG)
    .map((stock) => lineOf(stock, { holding, now, quantityIn }));
  return {
    lines: lines.sort((a, b) => (a.left_days ?? Number.POSITIVE_INFINITY) - (b.left_days ?? Number.POSITIVE_INFINITY)),
    none: say('advisor.stock.none'),
  };
}

interface Context {
  readonly holding: Holding;
  readonly now: string;
  readonly quantityIn: ReadonlyMap<string, Quantity>;
}

function lineOf(stock: StockOfMaterial, context: Context): StockLine {
  const { holding, now, quantityIn } = context;
  const { material } = stock;
  const batches = stock.mass_kg < LEAST_KG ? [] : leftOf(stock.moves);
  const mass_kg = batches.length === 0 ? stock.mass_kg : sumOf(batches, quantityIn);
  const [oldest] = batches;
  const oldest_days = oldest === undefined ? null : Math.max(0, daysFrom(oldest.move.at, now));
  const keeps_days = materialById(material)?.values.storageLife_days ?? null;
  const left_days = oldest_days === null || keeps_days === null ? null : keeps_days.typical - oldest_days;
  return {
    material,
    name: materialName(holding, material),
    mass_kg,
    oldest_days,
    keeps_days,
    left_days,
    said: say('advisor.stock.line', { stuff: someOf(holding, material, mass(mass_kg)) }),
    keeping: keepingOf(stock.mass_kg, oldest_days, keeps_days),
  };
}

function keepingOf(mass_kg: number, oldest_days: number | null, keeps: PublishedValue | null): Saying | null {
  if (mass_kg < 0) return say('advisor.stock.below-zero');
  if (oldest_days === null) return null;
  const lain = lasting(oldest_days);
  if (keeps === null) return say('advisor.stock.keeps-unknown', { lain });
  const places = { lain, keeps: lasting(keeps.typical) };
  const left = keeps.typical - oldest_days;
  if (left <= 0) return say('advisor.stock.past', places);
  return left <= SOON_DAYS
    ? say('advisor.stock.soon', { ...places, left: lasting(Math.ceil(left)) })
    : say('advisor.stock.keeps', places);
}

/** Part of something that came in and is still there. */
interface Batch {
  readonly move: StockMove;
  /** Part of it that is left, above 0 to 1. */
  readonly share: number;
}

/** What is left of each thing that came in, the oldest first, when the oldest is used first. */
function leftOf(moves: readonly StockMove[]): readonly Batch[] {
  let used_kg = moves.reduce((sum, { mass_kg }) => sum - Math.min(0, mass_kg), 0);
  const batches: Batch[] = [];
  for (const move of moves) {
    if (move.mass_kg <= 0) continue;
    const taken_kg = Math.min(used_kg, move.mass_kg);
    used_kg -= taken_kg;
    if (move.mass_kg - taken_kg >= LEAST_KG) batches.push({ move, share: 1 - taken_kg / move.mass_kg });
  }
  return batches;
}

/**
 * The sum of what is left of each batch, with its range. One hand guessed them all, in the same buckets, of stuff as
 * dense: they are over or under together, so their tenths add up.
 */
function sumOf(batches: readonly Batch[], quantityIn: ReadonlyMap<string, Quantity>): Quantity {
  const total = { p10: 0, p50: 0, p90: 0 };
  for (const { move, share } of batches) {
    const quantity = quantityIn.get(move.entry) ?? move.mass_kg;
    const { p10, p50, p90 } = isEstimate(quantity) ? quantity : { p10: quantity, p50: quantity, p90: quantity };
    total.p10 += share * p10;
    total.p50 += share * p50;
    total.p90 += share * p90;
  }
  return total.p10 === total.p90 ? total.p50 : total;
}

/** The mass that each entry brought into store, with its range. */
function quantitiesIn(holding: Holding): ReadonlyMap<string, Quantity> {
  const found = new Map<string, Quantity>();
  for (const entry of holding.inForce) {
    if (entry.kind !== 'stock-in' && entry.kind !== 'screened') continue;
    const told = tell(entry);
    if (!told.ok) continue;
    if (told.value.kind === 'stock-in') found.set(entry.id, told.value.body.mass_kg);
    if (told.value.kind === 'screened') found.set(entry.id, told.value.body.oversize.mass_kg);
  }
  return found;
}
