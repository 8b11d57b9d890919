import { z } from 'zod';
import { bad, good, type Outcome, type Problem } from '../catalogue/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  type Estimate,
  estimateSchema,
  likely,
  summarise,
} from '../estimate/index.ts';
import { type Amount, countInMeasure, measureById, type OwnSizes } from '../material/index.ts';
import { type Permitted, permittedShape, type Resolved, resolve, weigh } from '../mix/ingredient.ts';
import { mixParameters } from '../mix/parameters.ts';
import type { Portion } from '../mix/portion.ts';
import { USUAL_MEASURE } from '../mix/stock.ts';
import { type Aim, type AimId, aimIds, aims, dryNeed, needed_kg } from './need.ts';
import type { DryStuff, PailCoverInput } from './pail-input.ts';

/** So much dry stuff, as mass, as it lies and in the grower's measure. */
export interface Amounts {
  readonly wet_kg: Estimate;
  readonly volume_m3: Estimate;
  readonly count: Estimate;
}

/** Why so much is needed: to take up water, for its carbon, to hide the pail from flies, or not at all. */
export const needReasons = ['water', 'carbon', 'cover', 'nothing'] as const;
export type NeedReason = (typeof needReasons)[number];

/** One dry material that could go with it, taken alone. */
export interface DryOption extends Permitted {
  readonly measure: string;
  /** The least that will do. */
  readonly least: Amounts;
  readonly better: Amounts;
  /** The better amount, per kilogram and per volume of the wet stuff. */
  readonly better_kgPerKg: Estimate;
  readonly better_volumePerVolume: Estimate;
  readonly because: NeedReason;
  /** In how many draws it can do it at all; the amounts are of those draws. */
  readonly does: Chance;
  /** In how many draws there is enough of it; absent where nothing was said of what is on hand. */
  readonly enough?: Chance | undefined;
}

const amountsSchema: z.ZodType<Amounts> = z.strictObject({
  wet_kg: estimateSchema('Wet mass, kg.'),
  volume_m3: estimateSchema('Volume as it lies, m³.'),
  count: estimateSchema('In the measure.'),
});

export const dryOptionSchema: z.ZodType<DryOption> = z.strictObject({
  ...permittedShape,
  measure: z.string(),
  least: amountsSchema,
  better: amountsSchema,
  better_kgPerKg: estimateSchema('Kilograms of it per kilogram of the wet stuff.'),
  better_volumePerVolume: estimateSchema('Volumes of it per volume of the wet stuff.'),
  because: z.enum(needReasons),
  does: chanceSchema,
  enough: chanceSchema.optional(),
});

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
export function dryStuffs(input: PailCoverInput, draws: Draws): Outcome<readonly Dry[]> {
  const { dry = [], ownSizes } = input;
  const common = mixParameters.driers.filter((id) => dry.every(({ material }) => material !== id));
  const found = [
    ...dry.map((stuff, i) => dryStuff(stuff, `dry[${i}]`, ownSizes, draws)),
    ...common.map((material, i) => commonStuff(material, `driers[${i}]`, input, draws)),
  ];
  const problems: readonly Problem[] = found.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(found.flatMap((one) => (one.ok ? [one.value] : [])));
}

function commonStuff(material: string, path: string, input: PailCoverInput, draws: Draws): Outcome<Dry> {
  const found = dryStuff({ material }, path, input.ownSizes, draws);
  if (!found.ok || input.dry === undefined) return found;
  return good({ ...found.value, onHand_kg: new Float64Array(draws.count) });
}

/** Dry stuff that is there; where there is none at all, what could be fetched. */
function choice(dries: readonly Dry[]): readonly Dry[] {
  const there = dries.filter(({ onHand_kg }) => onHand_kg === undefined || summarise(onHand_kg).p50 > 0);
  return there.length > 0 ? there : dries;
}

function dryStuff(stuff: DryStuff, path: string, ownSizes: OwnSizes | undefined, draws: Draws): Outcome<Dry> {
  const resolved = resolve(stuff, path);
  if (!resolved.ok) return resolved;
  const { amount, material, packed } = stuff;
  const measure = stuff.measure ?? handyMeasure(amount, ownSizes);
  const counted = { measure, count: 1, packed };
  const ones = weigh(resolved.value, counted, material, { draws, ownSizes, path });
  if (!ones.ok) return ones;
  if (ones.value.some(({ volume_m3, dry_kg }) => volume_m3 <= 0 || dry_kg <= 0)) {
    return bad({ code: 'nothing-in-it', path, found: material, wanted: 'some solid stuff' });
  }
  const dry = { ...resolved.value, stuff, measure, ones: ones.value };
  if (amount === undefined) return good(dry);
  const all = weigh(resolved.value, amount, material, { draws, ownSizes, path });
  if (!all.ok) return all;
  return good({ ...dry, onHand_kg: Float64Array.from(all.value, ({ wet_kg }) => wet_kg) });
}

/** What stands on hand in bales and leaf bags is still laid by the bucket. */
function handyMeasure(amount: Amount | undefined, ownSizes: OwnSizes | undefined): string {
  if (amount === undefined || !('measure' in amount)) return USUAL_MEASURE;
  const volumeOf_L = (id: string): number =>
    likely(ownSizes?.[id] ?? measureById(id)?.volume_L ?? Number.POSITIVE_INFINITY);
  return volumeOf_L(amount.measure) <= volumeOf_L(USUAL_MEASURE) ? amount.measure : USUAL_MEASURE;
}

/** What is to be dried, draw by draw, and the dry stuff that must at least lie over it. */
export interface Wet {
  readonly portions: readonly Portion[];
  readonly cover_m3: Float64Array;
}

/**
 * How much of each dry material that is there, alone, brings wet stuff to the aims; those that can't in most draws are
 * left out.
 */
export function optionsFor(
  wet: Wet,
  dries: readonly Dry[],
  ownSizes: OwnSizes | undefined,
  draws: Draws,
): Outcome<readonly DryOption[]> {
  const options: DryOption[] = [];
  for (const dry of choice(dries)) {
    const option = optionFor(wet, dry, ownSizes, draws);
    if (!option.ok) return option;
    if (option.value !== undefined) options.push(option.value);
  }
  return good(options);
}

function optionFor(wet: Wet, dry: Dry, ownSizes: OwnSizes | undefined, draws: Draws): Outcome<DryOption | undefined> {
  const needs = Object.fromEntries(aimIds.map((id) => [id, volumeNeeded_m3(wet, dry, aims[id])])) as Readonly<
    Record<AimId, Float64Array>
  >;
  const does = chance(needs.better, Number.isFinite);
  if (2 * does.met <= does.of) return good(undefined);
  const least = amountsOf(needs.least, dry, ownSizes, draws);
  if (!least.ok) return least;
  const better = amountsOf(needs.better, dry, ownSizes, draws);
  if (!better.ok) return better;
  const better_kg = needs.better.map((volume_m3, i) => massOf_kg(volume_m3, oneOf(dry, i)));
  const able = (values: Float64Array): Estimate => summarise(values.filter(Number.isFinite));
  const per = (values: Float64Array, of: 'wet_kg' | 'volume_m3'): Estimate =>
    able(values.map((value, i) => value / (wet.portions[i]?.[of] ?? Number.NaN)));
  const { onHand_kg } = dry;
  return good({
    ...dry.permitted,
    measure: dry.measure,
    least: least.value,
    better: better.value,
    better_kgPerKg: per(better_kg, 'wet_kg'),
    better_volumePerVolume: per(needs.better, 'volume_m3'),
    because: reasonFor(wet, dry),
    does,
    ...(onHand_kg === undefined
      ? {}
      : {
          enough: chance(
            onHand_kg.map((kg, i) => kg - (better_kg[i] ?? Number.NaN)),
            (spare_kg) => spare_kg >= 0,
          ),
        }),
  });
}

/** Never less than the cover, whatever water and carbon ask for. */
function volumeNeeded_m3(wet: Wet, dry: Dry, aim: Aim): Float64Array {
  return Float64Array.from(wet.portions, (portion, i) => {
    const one = oneOf(dry, i);
    return countNeeded(portion, one, wet.cover_m3[i] ?? 0, aim) * one.volume_m3;
  });
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

function massOf_kg(volume_m3: number, one: Portion): number {
  return (volume_m3 / one.volume_m3) * one.wet_kg;
}

function amountsOf(volume_m3: Float64Array, dry: Dry, ownSizes: OwnSizes | undefined, draws: Draws): Outcome<Amounts> {
  const counted = countInMeasure(volume_m3, dry.measure, { draws, ownSizes, path: 'measure' });
  if (!counted.ok) return counted;
  const able = (values: Float64Array): Estimate => summarise(values.filter(Number.isFinite));
  return good({
    wet_kg: able(volume_m3.map((volume, i) => massOf_kg(volume, oneOf(dry, i)))),
    volume_m3: able(volume_m3),
    count: able(counted.value),
  });
}

/** Which need is the largest in most draws. */
function reasonFor(wet: Wet, dry: Dry): NeedReason {
  const votes = new Map<NeedReason, number>(needReasons.map((reason) => [reason, 0]));
  for (const [i, portion] of wet.portions.entries()) {
    const one = oneOf(dry, i);
    const { forMoisture_kg, forRatio_kg } = dryNeed(portion, one, aims.better);
    const cover_kg = massOf_kg(wet.cover_m3[i] ?? 0, one);
    const most = Math.max(forMoisture_kg, forRatio_kg, cover_kg);
    const reason: NeedReason =
      most <= 0 ? 'nothing' : most === cover_kg ? 'cover' : most === forMoisture_kg ? 'water' : 'carbon';
    votes.set(reason, (votes.get(reason) ?? 0) + 1);
  }
  return needReasons.reduce((first, one) => ((votes.get(one) ?? 0) > (votes.get(first) ?? 0) ? one : first));
}
