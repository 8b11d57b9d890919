import { z } from 'zod';
import {
  type Draws,
  drawsOf,
  type Estimate,
  estimateSchema,
  fromPublished,
  positive,
  summarise,
} from '../estimate/index.ts';
import type { WeighedMix } from './mix-input.ts';
import { materialRules, mixParameters } from './parameters.ts';
import type { Portion } from './portion.ts';

/** How salty the compost of a mix may come out, against the composts of a laboratory. */
export const saltClasses = ['low', 'usual', 'high'] as const;
export type SaltClass = (typeof saltClasses)[number];

/** What is known of a mix's salts. No sound source prints the conductivity of raw stuff. */
export interface Salts {
  /**
   * Conductivity, dS/m, of one part of the dry compost in five of water if all the potassium of the mix
   * stays and dissolves, and nothing else does. Rain washes some out; sodium, ammonium and chloride add to it.
   */
  readonly fromPotassium_dSPerM: Estimate;
  readonly class: SaltClass;
  /** Ingredients known as salty beyond their potassium's part. */
  readonly salty: readonly string[];
}

export const saltsSchema: z.ZodType<Salts> = z.strictObject({
  fromPotassium_dSPerM: estimateSchema('Conductivity of a 1:5 extract of the compost from its potassium alone, dS/m.'),
  class: z.enum(saltClasses),
  salty: z.array(z.string()),
});

/** Dry mass that is left when everything has rotted that does in one composting, kg: carbon is VS / 1.8. */
export function ripeDry_kg({ dry_kg, degradableCarbon_kg }: Portion): number {
  const { volatileSolidsPerCarbon_ratio } = materialRules.carbonFromVolatileSolids;
  return dry_kg - degradableCarbon_kg * volatileSolidsPerCarbon_ratio;
}

/**
 * Conductivity of water with the salts of potassium, dS/m: κ = Λ c, with c the potassium, g/L over its molar mass, and Λ the
 * equivalent conductivity of its salts, S cm²/mol (CRC Handbook).
 */
export function saltWater_dSPerM(potassium_gPerL: number, salts_SCm2PerMol: number): number {
  // S cm²/mol by mol/L is a thousandth of S/cm, that is mS/cm, which is dS/m.
  return (salts_SCm2PerMol * potassium_gPerL) / mixParameters.potassium_gPerMol.value;
}

/** Conductivity of a 1:5 extract from the potassium of the dry mass, dS/m. */
export function potassiumConductivity_dSPerM(potassium_pctDry: number, salts_SCm2PerMol: number): number {
  const potassium_gPerKg = (G_PER_KG * potassium_pctDry) / 100;
  return saltWater_dSPerM(potassium_gPerKg / mixParameters.saltExtract_LPerKgDry.value, salts_SCm2PerMol);
}

/** How well the salts of potassium conduct, draw by draw. */
export function potassiumSalts_SCm2PerMol(draws: Draws): Float64Array {
  const range = fromPublished(mixParameters.potassiumSalts_SCm2PerMol, positive);
  return drawsOf(draws, 'heap/potassiumSalts_SCm2PerMol', range, positive);
}

const G_PER_KG = 1000;

export function saltsOf({ ingredients, total }: WeighedMix, draws: Draws): Salts {
  const salts = potassiumSalts_SCm2PerMol(draws);
  const fromPotassium_dSPerM = summarise(
    total.map((portion, i) => {
      const dry_kg = ripeDry_kg(portion);
      const potassium_pctDry = dry_kg > 0 ? (100 * portion.potassium_kg) / dry_kg : 0;
      return potassiumConductivity_dSPerM(potassium_pctDry, salts[i] ?? Number.NaN);
    }),
  );
  const { low, high } = mixParameters.usualSalt_dSPerM;
  const { p50 } = fromPotassium_dSPerM;
  return {
    fromPotassium_dSPerM,
    class: p50 > high ? 'high' : p50 < low ? 'low' : 'usual',
    salty: [
      ...new Set(
        ingredients.filter(({ published }) => published.cautions.includes('salt')).map(({ given }) => given.material),
      ),
    ],
  };
}
