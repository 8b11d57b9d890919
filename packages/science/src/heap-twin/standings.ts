import table from '@loamwright/reference/heap-surroundings.json' with { type: 'json' };
import { z } from 'zod';
import type { Face, Standing } from './surroundings.ts';

/** What may lie on a heap. */
export const heapCoverIds = ['open', 'lid', 'fleece', 'tarpaulin', 'carpet', 'compost', 'straw'] as const;
export type HeapCoverId = (typeof heapCoverIds)[number];

/** What may stand around a heap. */
export const heapWallIds = ['none', 'pallet', 'timber', 'block', 'plastic', 'strawBales', 'insulated'] as const;
export type HeapWallId = (typeof heapWallIds)[number];

/** Whether a hedge or a house keeps the wind off. */
export const heapShelterIds = ['sheltered', 'open'] as const;
export type HeapShelterId = (typeof heapShelterIds)[number];

/** How a heap stands, in a grower's words; open, without walls and sheltered where nothing is said. */
export interface NamedStanding {
  readonly cover?: HeapCoverId | undefined;
  readonly walls?: HeapWallId | undefined;
  readonly shelter?: HeapShelterId | undefined;
}

export const namedStandingShape: Readonly<{
  cover: z.ZodOptional<z.ZodType<HeapCoverId>>;
  walls: z.ZodOptional<z.ZodType<HeapWallId>>;
  shelter: z.ZodOptional<z.ZodType<HeapShelterId>>;
}> = {
  cover: z.enum(heapCoverIds).optional().meta({ description: 'What lies on it; nothing when left out.' }),
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

/** The same in figures: `reference/heap-surroundings.json`. What draws in at the sides must go out at the top. */
export function standingOf({ cover = 'open', walls = 'none', shelter = 'sheltered' }: NamedStanding): Standing {
  const over = table.covers[cover];
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
