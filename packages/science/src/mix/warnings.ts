import { z } from 'zod';
import { chance, type Draws, summarise } from '../estimate/index.ts';
import { heightInBay_m } from './geometry.ts';
import type { Bay, WeighedMix } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { souringOf } from './tendency.ts';
import { roomInMix_L } from './water.ts';

/** Something about a mix that the figures alone don't say; its words are the message `mix.warning.CODE`. */
export const warningCodes = [
  'unmatched-pair',
  'no-nitrogen',
  'slow-carbon',
  'more-water-than-it-holds',
  'squeeze-streams',
  'too-small-to-heat',
  'too-small-in-winter',
  'higher-than-bay',
  'ash-drives-off-ammonia',
  'lime-drives-off-ammonia',
  'sour-start',
  'grass-mats',
] as const;
export type WarningCode = (typeof warningCodes)[number];

export interface Warning {
  readonly code: WarningCode;
  /** The ingredients it is about; empty for the whole mix. */
  readonly materials: readonly string[];
}

export const warningSchema: z.ZodType<Warning> = z.strictObject({
  code: z.enum(warningCodes),
  materials: z.array(z.string()),
});

/** Fresh fines in thicker layers mat, m: common practice, `reference/mix.json`, layers. */
export const thickestFines_m: number = mixParameters.layers.fines_m.high_m;

/** The smallest heap that heats, by season, m³: the least of the published ones. */
export function smallestHeap_m3(season: 'three-seasons' | 'winter'): number {
  const sizes = mixParameters.smallestHeap.filter((row) => row.season === season).map(({ volume_m3 }) => volume_m3);
  return Math.min(...sizes);
}

/** What to point out about a mix, on its likely values. */
export function warningsOf(
  mix: WeighedMix,
  draws: Draws,
  of: { readonly volume_m3: Float64Array; readonly moisture: Float64Array; readonly bay: Bay | undefined },
): readonly Warning[] {
  const middle = (values: ArrayLike<number>): number => summarise(values).p50;
  const named = (holds: (one: WeighedMix['ingredients'][number]) => boolean): readonly string[] =>
    mix.ingredients.filter(holds).map(({ given }) => given.material);
  const about = (code: WarningCode, materials: readonly string[]): readonly Warning[] =>
    materials.length > 0 ? [{ code, materials }] : [];
  const when = (code: WarningCode, holds: boolean): readonly Warning[] => (holds ? [{ code, materials: [] }] : []);
  const volume_m3 = middle(of.volume_m3);
  const nitrogen_kg = middle(mix.total.map((portion) => portion.nitrogen_kg));
  const are = (id: string): readonly string[] => named(({ published }) => published.id === id);
  const rich = mix.ingredients.some(({ published }) => published.class === 'nitrogen-rich');
  return [
    ...about(
      'unmatched-pair',
      named(({ unmatchedPair }) => unmatchedPair),
    ),
    ...when('no-nitrogen', nitrogen_kg <= 0),
    ...when('slow-carbon', isSlow(mix)),
    ...when('more-water-than-it-holds', overflows(mix, draws)),
    ...when('squeeze-streams', middle(of.moisture) > mixParameters.squeezeLimit_pctWet.value),
    ...when('too-small-to-heat', volume_m3 < smallestHeap_m3('three-seasons')),
    ...when(
      'too-small-in-winter',
      volume_m3 >= smallestHeap_m3('three-seasons') && volume_m3 < smallestHeap_m3('winter'),
    ),
    ...when('higher-than-bay', of.bay !== undefined && heightInBay_m(volume_m3, of.bay) > of.bay.height_m),
    ...(rich ? about('ash-drives-off-ammonia', are('wood-ash')) : []),
    ...(rich ? about('lime-drives-off-ammonia', are('ground-limestone')) : []),
    ...about('sour-start', souringOf(mix)),
    ...when('grass-mats', isGrassy(mix)),
  ];
}

/**
 * Most of the carbon is woody and comes too slowly for the nitrogen beside it, whatever the C:N reads
 * (Richard, Bioavailability of Carbon and Nitrogen, Cornell: raise the C:N for woody, coarse stuff).
 */
function isSlow(mix: WeighedMix): boolean {
  const { woodyBelow_share, woodyCarbon_share } = mixParameters;
  const slow = mix.total.filter(({ carbon_kg }, i) => {
    const woody_kg = mix.ingredients
      .flatMap(({ portions }) => portions[i] ?? [])
      .filter((portion) => portion.degradableCarbon_kg < woodyBelow_share.value * portion.carbon_kg)
      .reduce((sum, portion) => sum + portion.carbon_kg, 0);
    return woody_kg > woodyCarbon_share.value * carbon_kg;
  });
  return 2 * slow.length > mix.total.length;
}

/**
 * Mown grass makes up so much of it that the air told, which is that of stuff freshly laid, will not last: it
 * mats within days in layers of more than about 10 cm (common practice, no source; `reference/mix.json`, layers).
 */
function isGrassy({ ingredients, total }: WeighedMix): boolean {
  const grass = ingredients.filter(({ published }) => published.id === 'grass-clippings');
  const grassy = total.filter(({ volume_m3 }, i) => {
    const grass_m3 = grass.reduce((sum, { portions }) => sum + (portions[i]?.volume_m3 ?? 0), 0);
    return grass_m3 >= mixParameters.grassMats_shareOfVolume.value * volume_m3;
  });
  return grass.length > 0 && 2 * grassy.length > total.length;
}

/** More water was poured on than the dry stuff takes up. */
function overflows(mix: WeighedMix, draws: Draws): boolean {
  const room = roomInMix_L(mix, draws);
  const over = chance(
    mix.water_L.map((litres, i) => litres - (room[i] ?? Number.NaN)),
    (litres) => litres > 0,
  );
  return 2 * over.met > over.of;
}
