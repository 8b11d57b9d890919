import { z } from 'zod';
import { freeQuantity, likely, positiveQuantity, type Quantity } from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { type Ingredient, ingredientSchema, ownSizesSchema } from '../mix/ingredient.ts';
import { type HeatToHoldInput, heapSizeSchema } from './heat-to-hold.ts';
import { type HeapSmell, heapSmellSchema, type SqueezeGrade, squeezeSchema } from './observed.ts';

/** A heap that will not heat, with whatever is known of it; nothing need be. */
export interface NotHeatingInput {
  readonly temp_degC?: Quantity | undefined;
  readonly size?: HeatToHoldInput['size'] | undefined;
  /** A handful from the middle, squeezed hard. */
  readonly squeeze?: SqueezeGrade | undefined;
  readonly smell?: HeapSmell | undefined;
  /** What went in. */
  readonly ingredients?: readonly Ingredient[] | undefined;
  readonly water_L?: Quantity | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  /** Its C:N as built, if what went in is not told. */
  readonly carbonToNitrogen_ratio?: Quantity | undefined;
  readonly age_days?: number | undefined;
  readonly sinceTurn_days?: number | undefined;
  /** The hottest it has ever read. */
  readonly hottest_degC?: Quantity | undefined;
  /** Whether scraps or greens can still be told apart in it. */
  readonly freshFood?: boolean | undefined;
  /** Whether leaves, straw or card still lie whole in it; asked where the scraps are gone. */
  readonly brownsWhole?: boolean | undefined;
  readonly air_degC?: Quantity | undefined;
  readonly holdsManure?: boolean | undefined;
}

const MOST_DAYS = 36_500;
const MOST_INGREDIENTS = 40;
const days = z.number().min(0).max(MOST_DAYS);

export const notHeatingInput: z.ZodType<NotHeatingInput> = z
  .strictObject({
    temp_degC: freeQuantity('Temperature in the core, °C.').optional(),
    size: heapSizeSchema.optional(),
    squeeze: squeezeSchema.optional(),
    smell: heapSmellSchema.optional(),
    ingredients: z.array(ingredientSchema).min(1).max(MOST_INGREDIENTS).optional(),
    water_L: positiveQuantity('Water poured on, litres.').optional(),
    ownSizes: ownSizesSchema.optional(),
    carbonToNitrogen_ratio: positiveQuantity('C:N as built.').optional(),
    age_days: days.optional().meta({ description: 'Days since it was built or begun.' }),
    sinceTurn_days: days.optional().meta({ description: 'Days since it was last turned.' }),
    hottest_degC: freeQuantity('The hottest it has ever read, °C.').optional(),
    freshFood: z.boolean().optional().meta({ description: 'Whether scraps or greens can still be told apart in it.' }),
    brownsWhole: z
      .boolean()
      .optional()
      .meta({ description: 'Whether leaves, straw or card still lie whole in it; counts where the scraps are gone.' }),
    air_degC: freeQuantity('Air temperature, °C.').optional(),
    holdsManure: z.boolean().optional().meta({ description: 'Whether manure went in.' }),
  })
  .superRefine(({ temp_degC, hottest_degC, age_days, sinceTurn_days }, context) => {
    const refuse = (field: string, wanted: string): void =>
      context.addIssue({ code: 'custom', path: [field], message: wanted, params: { wanted } });
    if (temp_degC !== undefined && hottest_degC !== undefined && likely(hottest_degC) < likely(temp_degC))
      refuse('hottest_degC', `at least temp_degC, ${likely(temp_degC)}`);
    if (age_days !== undefined && sinceTurn_days !== undefined && sinceTurn_days > age_days)
      refuse('sinceTurn_days', `at most age_days, ${age_days}`);
  });
