import { z } from 'zod';
import { bad, good, type Outcome } from '../../catalogue/index.ts';
import { between, type Draws, drawsOf, positive, positiveQuantity, type Quantity } from '../../estimate/index.ts';
import { nearest } from '../../material/index.ts';
import { harvestOf, removalOf } from '../crop-need.ts';
import { allCrops, cropById } from '../crops.ts';
import { bedBounds } from '../slips.ts';

/** A crop that is harvested every year. */
export interface YearlyCrop {
  /** An id of `reference/crops.json`. */
  readonly crop: string;
  readonly area_m2: Quantity;
  readonly yield_kgPerM2?: Quantity | undefined;
}

const MOST_CROPS = 40;

export const yearlyCropsSchema: z.ZodType<readonly YearlyCrop[]> = z
  .array(
    z.strictObject({
      crop: z.string().min(1),
      area_m2: between(positiveQuantity('Area of the crop.'), bedBounds.area_m2.least, bedBounds.area_m2.most),
      yield_kgPerM2: between(positiveQuantity('Harvest on each square metre.'), 0, 100).optional(),
    }),
  )
  .max(MOST_CROPS)
  .meta({ description: 'What is harvested every year.' });

/** What harvests take away in a year, kg, draw by draw. */
export interface Taken {
  readonly harvest_kg: Float64Array;
  readonly nitrogen_kg: Float64Array;
  readonly phosphate_kg: Float64Array;
  readonly potash_kg: Float64Array;
}

const KG_PER_T = 1000;

/** Problems: `unknown-crop`; `cover-crop` for one that has no harvest. */
export function takenBy(crops: readonly YearlyCrop[], draws: Draws): Outcome<Taken> {
  const nothing = (): Float64Array => new Float64Array(draws.count);
  const taken = { harvest_kg: nothing(), nitrogen_kg: nothing(), phosphate_kg: nothing(), potash_kg: nothing() };
  for (const [at, given] of crops.entries()) {
    const crop = cropById(given.crop);
    const path = `crops[${at}].crop`;
    if (crop === undefined) {
      const ids = allCrops.map(({ id }) => id);
      return bad({ code: 'unknown-crop', path, found: given.crop, wanted: nearest(given.crop, ids).join(', ') });
    }
    if (crop.nitrogen_kgPerHa === undefined) return bad({ code: 'cover-crop', path, found: given.crop, wanted: '' });
    const area_m2 = drawsOf(draws, `crops-${at}/area_m2`, given.area_m2, positive);
    const takes = removalOf(crop);
    for (const [i, tonnes] of harvestOf(given, crop, area_m2, draws).entries()) {
      taken.harvest_kg[i] = (taken.harvest_kg[i] ?? Number.NaN) + tonnes * KG_PER_T;
      taken.nitrogen_kg[i] = (taken.nitrogen_kg[i] ?? Number.NaN) + tonnes * takes.nitrogen_kgPerT;
      taken.phosphate_kg[i] = (taken.phosphate_kg[i] ?? Number.NaN) + tonnes * takes.phosphate_kgPerT;
      taken.potash_kg[i] = (taken.potash_kg[i] ?? Number.NaN) + tonnes * takes.potash_kgPerT;
    }
  }
  return good(taken);
}
