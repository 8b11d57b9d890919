import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import { type Draws, likely, summarise } from '../estimate/index.ts';
import { measureById, type OwnSizes } from '../material/index.ts';
import { type Resolved, resolve, weigh } from '../mix/ingredient.ts';
import { mixParameters } from '../mix/parameters.ts';
import type { Portion } from '../mix/portion.ts';
import { USUAL_MEASURE } from '../mix/stock.ts';
import { type Aim, aims, dryNeed, needed_kg } from './need.ts';
import type { DryStuff, PailCoverInput } from './pail-input.ts';

/** What is to be dried, draw by draw, and the dry stuff that must at least lie over it. */
export interface Wet {
  readonly portions: readonly Portion[];
  readonly cover_m3: Float64Array;
}

/** A dry material looked up and weighed by the measure. */
export interface Dry extends Resolved {
  readonly stuff: DryStuff;
  readonly measure: string;
  /** One measure of it, draw by draw. */
  readonly ones: readonly Portion[];
  /** What is on hand, draw by draw, kg; `undefined` for plenty. */
  readonly onHand_kg?: Float64Array | undefined;
}

/**
 * Looks up the dry stuff on hand, and after it the common dry materials that are not on hand, for what must be fetched.
 * Where nothing was said of what is on hand there is plenty of these. All problems come back at once.
 */
export function dryStuffs(input: PailCoverInput, wet: Wet, draws: Draws): Outcome<readonly Dry[]> {
  const { dry = [] } = input;
  const common = mixParameters.driers.filter((id) => dry.every(({ material }) => material !== id));
  const found = [
    ...dry.map((stuff, i) => dryStuff(stuff, { path: `dry[${i}]`, input, wet, draws })),
    ...common.map((material, i) => commonStuff(material, { path: `driers[${i}]`, input, wet, draws })),
  ];
  const problems: readonly Problem[] = found.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(found.flatMap((one) => (one.ok ? [one.value] : [])));
}

interface LookingUp {
  readonly path: string;
  readonly input: PailCoverInput;
  readonly wet: Wet;
  readonly draws: Draws;
}

function commonStuff(material: string, looking: LookingUp): Outcome<Dry> {
  const found = dryStuff({ material }, looking);
  if (!found.ok || looking.input.dry === undefined) return found;
  return good({ ...found.value, onHand_kg: new Float64Array(looking.draws.count) });
}

/** Dry stuff that is there; where there is none at all, what could be fetched. */
export function choice(dries: readonly Dry[]): readonly Dry[] {
  const there = dries.filter(({ onHand_kg }) => onHand_kg === undefined || summarise(onHand_kg).p50 > 0);
  return there.length > 0 ? there : dries;
}

function dryStuff(stuff: DryStuff, looking: LookingUp): Outcome<Dry> {
  const { path, input, draws } = looking;
  const resolved = resolve(stuff, path);
  if (!resolved.ok) return resolved;
  const laid = inHandyMeasure(stuff, resolved.value, looking);
  const { amount, material } = stuff;
  if (!laid.ok || amount === undefined) return laid;
  const all = weigh(resolved.value, amount, material, { draws, ownSizes: input.ownSizes, path });
  if (!all.ok) return all;
  return good({ ...laid.value, onHand_kg: Float64Array.from(all.value, ({ wet_kg }) => wet_kg) });
}

/** From so many on, a larger measure counts finely enough in halves. */
export const FINE_COUNT = 2;
/** What much of it is carried in. */
export const LARGE_MEASURE = 'barrow';

/** By the bucket; much of it by what it stands in, or by the barrow. */
function inHandyMeasure(stuff: DryStuff, resolved: Resolved, looking: LookingUp): Outcome<Dry> {
  const { input, wet } = looking;
  const { amount, measure } = stuff;
  if (measure !== undefined) return inMeasure(measure, stuff, resolved, looking);
  const usual = input.usualMeasure ?? USUAL_MEASURE;
  const standsIn = amount !== undefined && 'measure' in amount ? amount.measure : LARGE_MEASURE;
  const sizeOf = (id: string): number => volumeOf_L(id, input.ownSizes);
  const [small, large] = sizeOf(standsIn) <= sizeOf(usual) ? [standsIn, undefined] : [usual, standsIn];
  if (large !== undefined) {
    const much = inMeasure(large, stuff, resolved, looking);
    const count = much.ok ? likelyCount(wet, much.value) : 0;
    if (!much.ok || (count >= FINE_COUNT && Number.isFinite(count))) return much;
  }
  return inMeasure(small, stuff, resolved, looking);
}

function volumeOf_L(measure: string, ownSizes: OwnSizes | undefined): number {
  return likely(ownSizes?.[measure] ?? measureById(measure)?.volume_L ?? Number.POSITIVE_INFINITY);
}

function inMeasure(measure: string, stuff: DryStuff, resolved: Resolved, looking: LookingUp): Outcome<Dry> {
  const { path, input, draws } = looking;
  const { material, packed } = stuff;
  const ones = weigh(resolved, { measure, count: 1, packed }, material, { draws, ownSizes: input.ownSizes, path });
  if (!ones.ok) return ones;
  if (ones.value.some(({ volume_m3, dry_kg }) => volume_m3 <= 0 || dry_kg <= 0)) {
    return bad({ code: 'nothing-in-it', path, found: material, wanted: 'some solid stuff' });
  }
  return good({ ...resolved, stuff, measure, ones: ones.value });
}

/** One measure of a dry material in one draw. */
export function oneOf({ ones }: Dry, draw: number): Portion {
  const one = ones[draw];
  if (one === undefined) throw new RangeError('dry stuff has a portion in every draw');
  return one;
}

/** Measures of dry stuff that bring a portion to an aim and cover it; infinite where it can't be done. */
export function countNeeded(wet: Portion, one: Portion, cover_m3: number, aim: Aim): number {
  return Math.max(needed_kg(dryNeed(wet, one, aim)) / one.wet_kg, cover_m3 / one.volume_m3, 0);
}

/** Measures that bring wet stuff to the better aim in half of the draws; infinite where most can't be done. */
export function likelyCount(wet: Wet, dry: Dry): number {
  const counts = wet.portions.map((portion, i) =>
    countNeeded(portion, oneOf(dry, i), wet.cover_m3[i] ?? 0, aims.better),
  );
  const able = counts.filter(Number.isFinite);
  return 2 * able.length > counts.length ? summarise(able).p50 : Number.POSITIVE_INFINITY;
}
