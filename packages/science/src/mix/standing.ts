import { z } from 'zod';
import { type Band, bandsMet, type JudgedQuantity, judgedQuantities } from './bands.ts';
import type { MixBalance } from './mix-balance.ts';
import type { Portion } from './portion.ts';
import { built, portionMoisture_pctWet, portionRatio } from './portion.ts';
import { type Choice, volumeSlack_share, type Wanted } from './programme.ts';
import { type Found, portionOf } from './search.ts';
import { smallestHeap_m3 } from './warnings.ts';

/**
 * How a mix stands on the likely values of its figures, as {@link bandsMet} has them:
 * - `good`: in every preferred band (soft edges allowed) and the wanted volume reached, not passed;
 * - `fair`: in every reasonable band (soft edges allowed) and large enough to heat;
 * - `small`: in every reasonable band, but too little to heat, or to fill a small bay;
 * - `poor`: outside a reasonable band: the nearest there is;
 * - `nothing`: there is nothing to build with.
 */
export const standings = ['good', 'fair', 'small', 'poor', 'nothing'] as const;
export type Standing = (typeof standings)[number];

/** What a mix is short of, or has too much of; its words are the message `mix.lack.CODE`. */
export const lackCodes = ['nitrogen', 'carbon', 'water', 'too-much-water', 'air', 'volume', 'volume-to-heat'] as const;

export interface Lack {
  readonly code: (typeof lackCodes)[number];
  /** Kilograms of the element: nitrogen, carbon. */
  readonly amount_kg?: number | undefined;
  /** Litres: water lacking or too much, coarse stuff lacking for air, heap lacking to the wanted volume or, where none was said, to what heats. */
  readonly amount_L?: number | undefined;
}

export const lackSchema: z.ZodType<Lack> = z.strictObject({
  code: z.enum(lackCodes),
  amount_kg: z.number().positive().optional(),
  amount_L: z.number().positive().optional(),
});

/** The likely value of a quantity of a mix; `undefined` where the mix has none. */
function figureOf(quantity: JudgedQuantity, total: Portion, packing_share: number): number | undefined {
  switch (quantity) {
    case 'carbonToNitrogen_ratio':
      return portionRatio(total) ?? (total.carbon_kg > 0 ? Number.POSITIVE_INFINITY : undefined);
    case 'moisture_pctWet':
      return portionMoisture_pctWet(total);
    case 'freeAirSpace_pctVolume':
    case 'density_kgPerM3AsIs':
      return built(total, packing_share)?.[quantity];
  }
}

/** A mix that was found: its figures over the draws, absent where nothing solid goes in, and what it was sought for. */
export interface Stood {
  readonly balance: MixBalance | undefined;
  readonly found: Found;
  readonly choices: readonly Choice[];
  readonly wanted: Wanted;
}

/** How a mix stands: by the same words that stand beside each of its figures. The place it fills by likely amounts, as it was sought. */
export function standingOf(stood: Stood): Standing {
  const { balance, choices, wanted } = stood;
  if (balance === undefined || balance.dry_kg.p50 <= 0) return 'nothing';
  const met = bandsMet(judgedQuantities.map((quantity) => balance[quantity]));
  if (met === 'neither') return 'poor';
  const full_m3 = wanted.volume_m3 * (1 - volumeSlack_share(choices, wanted)) * (1 - ROUNDING);
  const isFull = builtVolume_m3(stood) >= full_m3;
  const least_m3 = smallestHeap_m3('three-seasons');
  const heats = wanted.volume_m3 < least_m3 ? isFull : balance.volume_m3.p50 >= least_m3;
  if (!heats) return 'small';
  return isFull && !overfills(stood) && met === 'preferred' ? 'good' : 'fair';
}

/** Whether a mix is more than the wanted volume and its slack hold. */
export function overfills(stood: Stood): boolean {
  const { choices, wanted } = stood;
  return builtVolume_m3(stood) > wanted.volume_m3 * (1 + volumeSlack_share(choices, wanted)) * (1 + ROUNDING);
}

function builtVolume_m3({ found, choices, wanted }: Stood): number {
  return wanted.packing_share * portionOf(choices, found).volume_m3;
}

/** Whole measures land on the slack's end; it must not fail by the last digit. */
const ROUNDING = 1e-9;
const LITRES_PER_M3 = 1000;

/**
 * What is lacking or too much, as amounts to the preferred band, of each figure that is told as beyond it; water is too much only where it is told as too high. A
 * heap for which nobody said a size lacks only what would heat, and nothing at all lacks no volume.
 */
export function lacksOf(stood: Stood, isSizeSaid: boolean): readonly Lack[] {
  const { balance, found, choices, wanted } = stood;
  const total = portionOf(choices, found);
  const toHeat_m3 = smallestHeap_m3('three-seasons') - (balance?.volume_m3.p50 ?? 0);
  const lacking_L =
    LITRES_PER_M3 *
    (isSizeSaid ? wanted.volume_m3 * (1 - volumeSlack_share(choices, wanted)) - builtVolume_m3(stood) : toHeat_m3);
  const ofVolume: readonly Lack[] =
    lacking_L > SMALLEST_LACK && (isSizeSaid || balance !== undefined)
      ? [{ code: isSizeSaid ? 'volume' : 'volume-to-heat', amount_L: lacking_L }]
      : [];
  if (total.dry_kg <= 0) return ofVolume;
  const ofGoals = wanted.goals
    .filter(([quantity]) => balance?.[quantity]?.lean !== 'in')
    .flatMap(([quantity, { preferred }]) => lackOf(quantity, preferred, total, wanted))
    .filter(({ code }) => code !== 'too-much-water' || balance?.moisture_pctWet.verdict !== 'in');
  return [...ofGoals, ...ofVolume].filter(({ amount_kg = 1, amount_L = 1 }) => Number.isFinite(amount_kg * amount_L));
}

/** Below a tenth of a litre, or of a kilogram of carbon, nothing is lacking. */
const SMALLEST_LACK = 0.1;

function lackOf(quantity: JudgedQuantity, { low, high }: Band, total: Portion, wanted: Wanted): readonly Lack[] {
  const value = figureOf(quantity, total, wanted.packing_share);
  if (value === undefined) return [];
  const { carbon_kg, nitrogen_kg, wet_kg, dry_kg } = total;
  const side = low !== undefined && value < low ? 'low' : high !== undefined && value > high ? 'high' : undefined;
  if (side === undefined) return [];
  const at = (side === 'low' ? low : high) ?? Number.NaN;
  switch (quantity) {
    case 'carbonToNitrogen_ratio':
      return side === 'low'
        ? [{ code: 'carbon', amount_kg: at * nitrogen_kg - carbon_kg }]
        : [{ code: 'nitrogen', amount_kg: carbon_kg / at - nitrogen_kg }];
    case 'moisture_pctWet': {
      const water_L = dry_kg / (1 - at / 100) - wet_kg;
      return side === 'low' ? [{ code: 'water', amount_L: water_L }] : [{ code: 'too-much-water', amount_L: -water_L }];
    }
    case 'freeAirSpace_pctVolume': {
      const volume_m3 = wanted.packing_share * total.volume_m3;
      const needed_m3 = (volume_m3 * (100 - value)) / (100 - at);
      return side === 'low' ? [{ code: 'air', amount_L: LITRES_PER_M3 * (needed_m3 - volume_m3) }] : [];
    }
    case 'density_kgPerM3AsIs':
      return [];
  }
}
