import { z } from 'zod';
import { type CautionId, cautionIds } from '../../caution/index.ts';
import {
  between,
  type Estimate,
  estimateSchema,
  percentQuantity,
  positiveQuantity,
  type Quantity,
} from '../../estimate/index.ts';
import { bedBounds } from '../slips.ts';
import { type CharSoil, charSoils } from './parameters.ts';

/** A bed that gets charcoal, or a mix of so many litres; one of them. */
export interface CharBlendInput {
  /** Litres of charcoal there are; left out, the answer is what to begin with. */
  readonly charcoal_L?: Quantity | undefined;
  readonly bed?: { readonly area_m2: number; readonly depth_m?: number | undefined } | undefined;
  /** Volume of the whole mix, charcoal included. */
  readonly mix_L?: number | undefined;
  readonly soil?: CharSoil | undefined;
  readonly pH?: number | undefined;
  readonly density_kgPerM3Dry?: Quantity | undefined;
  /** Its lime value, calcium carbonate equivalent, %. */
  readonly equivalent_pct?: Quantity | undefined;
  /** Soaked in a feed or kept in compost already. */
  readonly isCharged?: boolean | undefined;
}

/** Against the doses at which trials did best (a bed), or against what mixes hold by practice. */
export const charStands = ['unasked', 'not-here', 'below', 'within', 'above'] as const;
export const charNotes = ['nearly-too-sweet', 'test-pH', 'uncharged', 'sand', 'clay'] as const;
export type CharNote = (typeof charNotes)[number];

/** So much charcoal, told in every way that growers and trials count. */
export interface CharDose {
  readonly charcoal_L: Estimate;
  readonly charcoal_kg: Estimate;
  readonly share_pctVolume: Estimate;
  /** Of a bed. */
  readonly rate_kgPerM2?: Estimate | undefined;
  readonly rate_tPerHa?: Estimate | undefined;
  readonly cover_LPerM2?: Estimate | undefined;
  readonly share_pctSoilMass?: Estimate | undefined;
}

/** What charges it: nitrogen, as so much urine, or as much compost. */
export interface CharCharge {
  readonly nitrogen_g: Estimate;
  readonly urine_L: Estimate;
  readonly compost_L: Estimate;
  readonly weeks: { readonly low: number; readonly high: number };
}

/** From the least to the most. */
export interface CharBounds {
  readonly least: CharDose;
  readonly most: CharDose;
}

export interface CharBlend {
  readonly stands: (typeof charStands)[number];
  /** What there is; or, where nobody said, the least to begin with. */
  readonly dose: CharDose;
  readonly begin: CharBounds;
  /** At which trials did best; of a mix, what is put in by practice. */
  readonly best: CharBounds;
  /** What a dark-earth bed or mix would hold. */
  readonly darkEarth: CharDose;
  readonly charge: CharCharge;
  /** Ground limestone that its ash stands for. */
  readonly limestone_kg: Estimate;
  readonly notes: readonly CharNote[];
  readonly cautions: readonly CautionId[];
}

const doseSchema: z.ZodType<CharDose> = z.strictObject({
  charcoal_L: estimateSchema('Charcoal, loose.'),
  charcoal_kg: estimateSchema('Its dry mass.'),
  share_pctVolume: estimateSchema('Its share of the worked layer, or of the mix.'),
  rate_kgPerM2: estimateSchema('Dry, on each square metre.').optional(),
  rate_tPerHa: estimateSchema('Dry, on each hectare.').optional(),
  cover_LPerM2: estimateSchema('Litres on each square metre.').optional(),
  share_pctSoilMass: estimateSchema('Of the dry mass of the worked layer.').optional(),
});

const boundsSchema: z.ZodType<CharBounds> = z.strictObject({ least: doseSchema, most: doseSchema });

export const charBlendInputSchema: z.ZodType<CharBlendInput> = z
  .strictObject({
    charcoal_L: between(positiveQuantity('Charcoal there is, loose, L.'), 0.01, 1_000_000).optional(),
    bed: z
      .strictObject({
        area_m2: z.number().min(bedBounds.area_m2.least).max(bedBounds.area_m2.most),
        depth_m: z.number().min(0.02).max(1).optional().meta({ description: 'How deep it is worked in.' }),
      })
      .optional(),
    mix_L: z.number().min(0.1).max(1_000_000).optional().meta({ description: 'The whole mix, charcoal included.' }),
    soil: z.enum(charSoils).optional(),
    pH: z.number().min(2).max(11).optional().meta({ description: 'Of the soil, in water.' }),
    density_kgPerM3Dry: between(positiveQuantity('Charcoal, loose and dry.'), 50, 800).optional(),
    equivalent_pct: between(percentQuantity('Lime value, calcium carbonate equivalent, %.'), 0, 60).optional(),
    isCharged: z.boolean().optional(),
  })
  .refine(({ bed, mix_L }) => (bed === undefined) !== (mix_L === undefined), {
    path: ['bed'],
    params: { wanted: 'a bed or a mix, one of them' },
  });

export const charBlendSchema: z.ZodType<CharBlend> = z.strictObject({
  stands: z.enum(charStands),
  dose: doseSchema,
  begin: boundsSchema,
  best: boundsSchema,
  darkEarth: doseSchema,
  charge: z.strictObject({
    nitrogen_g: estimateSchema('Nitrogen that fills it.'),
    urine_L: estimateSchema('The same as fresh urine.'),
    compost_L: estimateSchema('Finished compost in its place.'),
    weeks: z.strictObject({ low: z.number(), high: z.number() }),
  }),
  limestone_kg: estimateSchema('Ground limestone that its ash stands for.'),
  notes: z.array(z.enum(charNotes)),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
