import { z } from 'zod';
import { mixParameters } from './parameters.ts';

/** When and on which half of the earth it is. */
export interface Season {
  /** 1 to 12. */
  readonly month: number;
  readonly hemisphere: 'north' | 'south';
}

export const seasonSchema: z.ZodType<Season> = z
  .strictObject({ month: z.int().min(1).max(12), hemisphere: z.enum(['north', 'south']) })
  .meta({ description: 'The month, and on which half of the earth.' });

const MONTHS = 12;

/**
 * Whether a material is commonly to be had; what has no row is, all the year round. South of the equator
 * the seasons are half a year apart. Common practice, no source: `reference/mix.json`, inSeason.
 */
function isInSeason(material: string, { month, hemisphere }: Season): boolean {
  const row = mixParameters.inSeason.find((one) => one.material === material);
  const northern = hemisphere === 'north' ? month : ((month - 1 + MONTHS / 2) % MONTHS) + 1;
  return row === undefined || row.months_north.includes(northern);
}

/** The common materials to fetch, and those passed over because they are not in season; all of them where that is not known. */
export function commonMends(season: Season | undefined): {
  readonly mends: readonly string[];
  readonly outOfSeason: readonly string[];
} {
  const { mends, seasonalMends } = mixParameters;
  if (season === undefined) return { mends, outOfSeason: [] };
  return {
    mends: [...mends, ...seasonalMends].filter((material) => isInSeason(material, season)),
    outOfSeason: mends.filter((material) => !isInSeason(material, season)),
  };
}
