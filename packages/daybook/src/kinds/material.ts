import { percentQuantity, positiveQuantity, type Quantity } from '@loamwright/science';
import { z } from 'zod';
import { nameSchema } from '../entry/header.ts';
import { longText, shortText } from './amount.ts';
import type { Kind } from './kind.ts';

/** What is known of a material. Nitrogen, ash, phosphorus and potassium on dry mass, moisture on wet mass. */
export interface MaterialFigures {
  readonly nitrogen_pctDry?: Quantity | undefined;
  /** Carbon to nitrogen, by mass. */
  readonly carbonToNitrogen?: Quantity | undefined;
  readonly moisture_pctWet?: Quantity | undefined;
  /** As it lies loose. */
  readonly density_kgPerM3AsIs?: Quantity | undefined;
  /** As it lies settled or pressed down. */
  readonly densityPacked_kgPerM3AsIs?: Quantity | undefined;
  readonly ash_pctDry?: Quantity | undefined;
  readonly phosphorus_pctDry?: Quantity | undefined;
  readonly potassium_pctDry?: Quantity | undefined;
}

const figures = {
  nitrogen_pctDry: percentQuantity('Nitrogen, % of dry mass').optional(),
  carbonToNitrogen: positiveQuantity('Carbon to nitrogen, by mass').optional(),
  moisture_pctWet: percentQuantity('Water, % of wet mass').optional(),
  density_kgPerM3AsIs: positiveQuantity('Bulk density as it lies loose, kg/m³').optional(),
  densityPacked_kgPerM3AsIs: positiveQuantity('Bulk density settled or pressed down, kg/m³').optional(),
  ash_pctDry: percentQuantity('Ash, % of dry mass').optional(),
  phosphorus_pctDry: percentQuantity('Phosphorus (P), % of dry mass').optional(),
  potassium_pctDry: percentQuantity('Potassium (K), % of dry mass').optional(),
} as const;

/**
 * A material of the holding's own, or one of the tables as it is here: `material-described`. A later one replaces an
 * earlier one. Version 2 may tell the density pressed down.
 */
export interface MaterialDescribed extends MaterialFigures {
  readonly name: string;
  /** Id of the material of the tables that it resembles: what isn't given here is taken from there. */
  readonly like?: string | undefined;
  /** Raw or risky: manure, kitchen scraps, sick plants; whatever heat must make safe. */
  readonly raw?: boolean | undefined;
  readonly note?: string | undefined;
}

export const materialDescribed: Kind<MaterialDescribed> = {
  id: 'material-described',
  kv: 2,
  subject: 'material',
  body: z.strictObject({
    name: shortText,
    like: nameSchema.optional(),
    raw: z.boolean().optional(),
    note: longText.optional(),
    ...figures,
  }),
};

/**
 * Something measured on a material, of the tables or own: `material-measured`. At least one figure. Version 2 may tell
 * the density pressed down.
 */
export interface MaterialMeasured extends MaterialFigures {
  /** How: a bucket weighed, an oven, a laboratory. */
  readonly method?: string | undefined;
  readonly laboratory?: string | undefined;
}

export const materialMeasured: Kind<MaterialMeasured> = {
  id: 'material-measured',
  kv: 2,
  subject: 'material',
  body: z
    .strictObject({ method: shortText.optional(), laboratory: shortText.optional(), ...figures })
    .refine((body) => Object.keys(figures).some((key) => body[key as keyof MaterialFigures] !== undefined), {
      params: { wanted: 'at least one figure' },
    }),
};
