import fc from 'fast-check';
import type { Estimate } from '../../estimate/index.ts';
import { allMaterials } from '../../material/index.ts';
import type { Ingredient } from '../ingredient.ts';
import type { MixBalanceInput } from '../mix-balance.ts';

/** Volatile solids over carbon: Adams et al. 1951. */
const VOLATILE_PER_CARBON = 1.8;

/** A material whose published percentages are known exactly, as worked examples give them. */
export function fromPercentages(
  material: string,
  mass_kg: number,
  stuff: { readonly moisture_pctWet: number; readonly carbon_pctDry: number; readonly nitrogen_pctDry: number },
): Ingredient {
  return {
    material,
    amount: { mass_kg },
    described: {
      moisture_pctWet: stuff.moisture_pctWet,
      volatileSolids_pctDry: VOLATILE_PER_CARBON * stuff.carbon_pctDry,
      carbonToNitrogen_ratio: stuff.carbon_pctDry / stuff.nitrogen_pctDry,
    },
  };
}

const solids = allMaterials.filter(({ particle }) => particle !== 'liquid').map(({ id }) => id);

const counts: fc.Arbitrary<number | Estimate> = fc.oneof(
  fc.double({ min: 0.5, max: 30, noNaN: true }),
  fc
    .tuple(fc.double({ min: 0.5, max: 5, noNaN: true }), fc.double({ min: 1, max: 3, noNaN: true }))
    .map(([low, times]) => ({
      p10: low,
      p50: low * times,
      p90: low * times * times,
    })),
);

const ingredients: fc.Arbitrary<Ingredient> = fc
  .tuple(fc.constantFrom(...solids), counts, fc.constantFrom('bucket-20l', 'barrow', 'kg'), fc.boolean())
  .map(([material, count, by, packed]) => ({
    material,
    amount: by === 'kg' ? { mass_kg: count, packed } : { measure: by, count, packed },
  }));

/** Mixes of one to six materials with some water. */
export const mixInputs: fc.Arbitrary<MixBalanceInput> = fc
  .tuple(
    fc.uniqueArray(ingredients, { minLength: 1, maxLength: 6, selector: ({ material }) => material }),
    fc.double({ min: 0, max: 100, noNaN: true }),
  )
  .map(([some, water_L]) => ({ ingredients: some, water_L }));
