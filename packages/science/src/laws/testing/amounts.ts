import fc from 'fast-check';
import type { Amount } from '../../material/index.ts';
import type { Ingredient } from '../../mix/ingredient.ts';
import type { MixInput } from '../../mix/mix-input.ts';

/** A share strictly between its ends. */
export const shares: fc.Arbitrary<number> = fc.double({ min: 0.05, max: 0.95, noNaN: true });

/** A factor from no more to ten times as much. */
export const timesMore: fc.Arbitrary<number> = fc.double({ min: 1, max: 10, noNaN: true });

/** So many times an amount that was told in numbers. */
export function amountTimes(amount: Amount, by: number): Amount {
  if ('measure' in amount && typeof amount.count !== 'string')
    return { ...amount, count: quantityTimes(amount.count, by) };
  if ('mass_kg' in amount) return { ...amount, mass_kg: quantityTimes(amount.mass_kg, by) };
  if ('volume_m3' in amount) return { ...amount, volume_m3: quantityTimes(amount.volume_m3, by) };
  throw new RangeError('only amounts told in numbers can be multiplied');
}

type Numbers = number | { readonly p10: number; readonly p50: number; readonly p90: number };

function quantityTimes(quantity: Numbers, by: number): Numbers {
  if (typeof quantity === 'number') return quantity * by;
  return { p10: quantity.p10 * by, p50: quantity.p50 * by, p90: quantity.p90 * by };
}

/** So many times everything that lies in a mix, its water too. */
export function mixTimes<Input extends MixInput>(input: Input, by: number): Input {
  const { ingredients, water_L } = input;
  return {
    ...input,
    ingredients: ingredients.map((one): Ingredient => ({ ...one, amount: amountTimes(one.amount, by) })),
    ...(water_L === undefined ? {} : { water_L: quantityTimes(water_L, by) }),
  };
}

/** Stuff of which everything that a balance needs is known exactly. */
export function exactStuff(
  material: string,
  mass_kg: number,
  known: { readonly moisture_pctWet: number; readonly carbonToNitrogen_ratio?: number },
): Ingredient {
  return {
    material,
    amount: { mass_kg },
    described: { volatileSolids_pctDry: 90, carbonToNitrogen_ratio: 30, ...known },
  };
}
