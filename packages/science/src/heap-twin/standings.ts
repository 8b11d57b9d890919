import table from '@loamwright/reference/heap-surroundings.json' with { type: 'json' };
import { z } from 'zod';
import type { Face, Standing } from './surroundings.ts';

/** What may lie on a heap. */
export const heapCoverIds = ['open', 'lid', 'fleece', 'tarpaulin', 'carpet', 'compost', 'straw'] as const;
export type HeapCoverId = (typeof heapCoverIds)[number];

/** Covers that lie as deep as they are heaped on. */
export const heapBlanketIds = ['compost', 'straw'] as const;
export type HeapBlanketId = (typeof heapBlanketIds)[number];

/** Whether a cover is one that has a depth. */
export function isBlanket(cover: HeapCoverId | undefined): cover is HeapBlanketId {
  return heapBlanketIds.some((id) => id === cover);
}

/** How deep a blanket may lie, m: more is another heap, less is none. */
export const blanketBounds_m: Readonly<Record<'least' | 'most', number>> = { least: 0.02, most: 1 };

/** How deep a blanket lies where nothing is said, m. */
export function usualBlanket_m(blanket: HeapBlanketId): number {
  return table.covers[blanket].depth_m;
}

/** What may stand around a heap. */
export const heapWallIds = ['none', 'pallet', 'timber', 'block', 'plastic', 'strawBales', 'insulated'] as const;
export type HeapWallId = (typeof heapWallIds)[number];

/** Whether a hedge or a house keeps the wind off. */
export const heapShelterIds = ['sheltered', 'open'] as const;
export type HeapShelterId = (typeof heapShelterIds)[number];

/** How a heap stands, in a grower's words; open, without walls and sheltered where nothing is said. */
export interface NamedStanding {
  readonly cover?: HeapCoverId | undefined;
  /** How deep a blanket of compost or straw lies; as told in `reference/heap-surroundings.json` where nothing is said. */
  readonly coverDepth_m?: number | undefined;
  readonly walls?: HeapWallId | undefined;
  readonly shelter?: HeapShelterId | undefined;
}

export const namedStandingShape: Readonly<{
  cover: z.ZodOptional<z.ZodType<HeapCoverId>>;
  coverDepth_m: z.ZodOptional<z.ZodNumber>;
  walls: z.ZodOptional<z.ZodType<HeapWallId>>;
  shelter: z.ZodOptional<z.ZodType<HeapShelterId>>;
}> = {
  cover: z.enum(heapCoverIds).optional().meta({ description: 'What lies on it; nothing when left out.' }),
  coverDepth_m: z
    .number()
    .min(blanketBounds_m.least)
    .max(blanketBounds_m.most)
    .optional()
    .meta({
      description: `How deep a blanket lies on it, m: ${heapBlanketIds.map((id) => `${id} ${usualBlanket_m(id)}`).join(', ')} when left out. Of no account for another cover.`,
    }),
  walls: z
    .enum(heapWallIds)
    .optional()
    .meta({ description: 'What stands around it; nothing, or wire, when left out.' }),
  shelter: z
    .enum(heapShelterIds)
    .optional()
    .meta({ description: 'Whether the wind is kept off; it is when left out.' }),
};

function faceOf({ insulation_m2KPerW, vapour_sPerM }: Face): Face {
  return { insulation_m2KPerW, vapour_sPerM };
}

/** A blanket deeper or thinner than its row in the table: what is in series adds up, what passes it is a share of a share. */
function overOf(cover: HeapCoverId, depth_m: number | undefined): (typeof table.covers)['open'] {
  const over = table.covers[cover];
  if (depth_m === undefined || !isBlanket(cover)) return over;
  const times = depth_m / usualBlanket_m(cover);
  return {
    ...over,
    insulation_m2KPerW: over.insulation_m2KPerW * times,
    vapour_sPerM: over.vapour_sPerM * times,
    open_share: over.open_share ** times,
    rain_share: over.rain_share ** times,
    sun_share: over.sun_share ** times,
  };
}

/** The same in figures: `reference/heap-surroundings.json`. What draws in at the sides must go out at the top. */
export function standingOf({
  cover = 'open',
  coverDepth_m,
  walls = 'none',
  shelter = 'sheltered',
}: NamedStanding): Standing {
  const over = overOf(cover, coverDepth_m);
  const around = table.walls[walls];
  return {
    top: faceOf(over),
    side: faceOf(around),
    open_share: 1 / (1 / over.open_share + 1 / around.open_share - 1),
    wind_share: table.shelter[shelter].wind_share,
    rain_share: over.rain_share,
    sun_share: over.sun_share,
  };
}
