import table from '@loamwright/reference/liming.json' with { type: 'json' };
import {
  type Draws,
  drawsOf,
  type Estimate,
  fromPublished,
  percent,
  positive,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { potassiumSalts_SCm2PerMol, saltWater_dSPerM } from '../mix/salts.ts';
import { budgetParameters } from './budget-parameters.ts';
import { releaseParameters } from './release.ts';

const { ash } = table;
const WHOLE_PCT = 100;
const G_PER_KG = 1000;

/** How deep ash lies that is raked in and no deeper, m: as seed. */
export const ashRakedIn_m: number = ash.salt.seedDepth_m;

/** What a laboratory found in the ash: its potassium as the oxide or as the element, one of them. */
export interface TestedAsh {
  readonly potash_pctAsIs?: Quantity | undefined;
  readonly potassium_pctAsIs?: Quantity | undefined;
}

/** Potassium of the ash as K₂O, %: tested, or as ashes differ. */
export function ashPotash_pct({ potash_pctAsIs, potassium_pctAsIs }: TestedAsh, draws: Draws): Float64Array {
  if (potassium_pctAsIs !== undefined)
    return drawsOf(draws, 'wood-ash/potassium_pct', potassium_pctAsIs, percent).map(
      (pct) => pct * releaseParameters.oxides.potashPerPotassium_ratio,
    );
  return drawsOf(draws, 'wood-ash/potash_pct', potash_pctAsIs ?? fromPublished(ash.potash_pct, percent), percent);
}

/** How much saltier a dose of ash makes the soil: electrical conductivity of a saturated extract, dS/m. */
export interface AshSalt {
  /** Worked in as deep as a fork mixes. */
  readonly mixed_dSPerM: Estimate;
  /** Raked into the depth of seed and no deeper. */
  readonly onTop_dSPerM: Estimate;
}

/**
 * The salt of a dose: all its potassium taken as dissolved in the water of the saturated soil, as in the compost of a mix
 * (κ = Λ c). Clay and humus hold part of it; sodium and sulphate add to it.
 */
export function ashSalt(dose_kgPerM2: Float64Array, potash_pct: Float64Array, draws: Draws): AshSalt {
  const { salt } = ash;
  const salts = potassiumSalts_SCm2PerMol(draws);
  const water_pct = drawsOf(draws, 'soil/saturation_pctOfDry', fromPublished(salt.water_pctOfDry, percent), percent);
  const deep = drawsOf(draws, 'bed/mixedDepth_m', fromPublished(budgetParameters.mixedDepth_m, positive), positive);
  const rise = (depth_m: (i: number) => number): Estimate =>
    summarise(
      dose_kgPerM2.map((kg, i) => {
        const potash_g = (G_PER_KG * kg * (potash_pct[i] ?? Number.NaN)) / WHOLE_PCT;
        const potassium_g = potash_g / releaseParameters.oxides.potashPerPotassium_ratio;
        const water_L = (depth_m(i) * salt.soil_kgPerM3Dry * (water_pct[i] ?? Number.NaN)) / WHOLE_PCT;
        return saltWater_dSPerM(potassium_g / water_L, salts[i] ?? Number.NaN);
      }),
    );
  return { mixed_dSPerM: rise((i) => deep[i] ?? Number.NaN), onTop_dSPerM: rise(() => ashRakedIn_m) };
}
