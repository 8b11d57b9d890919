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
import { type Amount, amountSchema, countInMeasure, type OwnSizes, sizeAmount } from '../material/index.ts';
import { type PartId, partIds } from './parameters.ts';
import { partMaterial } from './part.ts';

/** What there is of a part. */
export interface OnHand {
  readonly part: PartId;
  readonly amount: Amount;
}

export const onHandSchema: z.ZodType<readonly OnHand[]> = z
  .array(z.strictObject({ part: z.enum(partIds), amount: amountSchema }))
  .max(partIds.length * 2);

/** How much of one part to take, loose, and whether there is enough. */
export interface PartAmount {
  readonly part: PartId;
  /** Of the summed loose volumes. */
  readonly share_pctVolume: number;
  readonly volume_m3: Estimate;
  readonly measure: string;
  /** The same in the measure. */
  readonly count: Estimate;
  readonly mass_kg: Estimate;
  /** Absent where nobody said what there is. */
  readonly stock?: { readonly short_m3: Estimate; readonly shortCount: Estimate; readonly enough: Chance } | undefined;
}

export const partAmountSchema: z.ZodType<PartAmount> = z.strictObject({
  part: z.enum(partIds),
  share_pctVolume: z.number(),
  volume_m3: estimateSchema('Loose volume, m³.'),
  measure: z.string(),
  count: estimateSchema('In the measure.'),
  mass_kg: estimateSchema('Mass as it lies, kg.'),
  stock: z
    .strictObject({
      short_m3: estimateSchema('What is short, loose, m³.'),
      shortCount: estimateSchema('What is short, in the measure.'),
      enough: chanceSchema,
    })
    .optional(),
});

interface Asked {
  readonly draws: Draws;
  readonly measure: string;
  readonly ownSizes?: OwnSizes | undefined;
  readonly onHand?: readonly OnHand[] | undefined;
}

/** What there is of a part, draw by draw; `undefined` where nobody said. */
function stockOf(part: PartId, { draws, ownSizes, onHand }: Asked): Outcome<Float64Array | undefined> {
  let sum: Float64Array | undefined;
  for (const [i, { part: of, amount }] of (onHand ?? []).entries()) {
    if (of !== part) continue;
    const sized = sizeAmount(amount, {
      draws,
      ownSizes,
      material: partMaterial(part),
      name: `on-hand-${i}`,
      path: `onHand[${i}].amount`,
    });
    if (!sized.ok) return sized;
    sum = sized.value.volume_m3.map((volume, n) => volume + (sum?.[n] ?? 0));
  }
  return good(sum);
}

/** One part's amount in the grower's measure, and what is short of it. Problem: `unknown-measure`. */
export function partAmount(
  taken: {
    readonly part: PartId;
    readonly share: number;
    readonly volume_m3: Float64Array;
    readonly density_kgPerM3AsIs: Float64Array;
  },
  asked: Asked,
): Outcome<PartAmount> {
  const { part, share, volume_m3, density_kgPerM3AsIs } = taken;
  const counting = { draws: asked.draws, ownSizes: asked.ownSizes, path: 'measure' };
  const count = countInMeasure(volume_m3, asked.measure, counting);
  if (!count.ok) return count;
  const stock = stockOf(part, asked);
  if (!stock.ok) return stock;
  const amount = {
    part,
    share_pctVolume: 100 * share,
    volume_m3: summarise(volume_m3),
    measure: asked.measure,
    count: summarise(count.value),
    mass_kg: summarise(volume_m3.map((volume, i) => volume * (density_kgPerM3AsIs[i] ?? Number.NaN))),
  };
  if (stock.value === undefined) return good(amount);
  const held = stock.value;
  const short_m3 = volume_m3.map((volume, i) => Math.max(0, volume - (held[i] ?? 0)));
  const shortCount = countInMeasure(short_m3, asked.measure, counting);
  if (!shortCount.ok) return shortCount;
  return good({
    ...amount,
    stock: {
      short_m3: summarise(short_m3),
      shortCount: summarise(shortCount.value),
      enough: chance(short_m3, (volume) => volume === 0),
    },
  });
}
