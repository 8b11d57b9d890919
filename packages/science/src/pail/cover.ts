import { z } from 'zod';
import { good, type Outcome } from '../catalogue/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  type Estimate,
  estimateSchema,
  summarise,
} from '../estimate/index.ts';
import { countInMeasure, type OwnSizes } from '../material/index.ts';
import { type Permitted, permittedShape } from '../mix/ingredient.ts';
import type { Portion } from '../mix/portion.ts';
import { choice, countNeeded, type Dry, oneOf, type Wet } from './dry.ts';
import { type Aim, type AimId, aimIds, aims, dryNeed } from './need.ts';

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
