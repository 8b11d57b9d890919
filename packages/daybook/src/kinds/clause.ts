import { z } from 'zod';
import { nameSchema } from '../entry/header.ts';
import { longText, shortText } from './amount.ts';
import type { Kind } from './kind.ts';

/** What a clause limits. A distance is from the thing named in `from`. */
export type ClauseQuantity = 'height_m' | 'volume_m3' | 'area_m2' | 'distance_m';

/** One limit a clause sets. */
export interface ClauseLimit {
  readonly quantity: ClauseQuantity;
  readonly atMost?: number | undefined;
  readonly atLeast?: number | undefined;
  /** What a distance is measured from: the lot line, a well, a dwelling. */
  readonly from?: string | undefined;
}

/** A clause of the place's own law or lease, as the keeper read it: `local-clause`. A later one replaces an earlier one. */
export interface LocalClause {
  readonly title: string;
  /** The wording, as far as it matters. */
  readonly text: string;
  /** Where it stands: code and section, lease, site rules. */
  readonly source: string;
  readonly limits?: readonly ClauseLimit[] | undefined;
  /** Materials it forbids. */
  readonly forbids?: readonly string[] | undefined;
}

const limitSchema: z.ZodType<ClauseLimit> = z
  .strictObject({
    quantity: z.enum(['height_m', 'volume_m3', 'area_m2', 'distance_m']),
    atMost: z.number().min(0).optional(),
    atLeast: z.number().min(0).optional(),
    from: shortText.optional(),
  })
  .refine((limit) => limit.atMost !== undefined || limit.atLeast !== undefined, {
    params: { wanted: 'atMost or atLeast' },
  });

export const localClause: Kind<LocalClause> = {
  id: 'local-clause',
  kv: 1,
  subject: 'clause',
  body: z.strictObject({
    title: shortText,
    text: longText,
    source: shortText,
    limits: z.array(limitSchema).max(32).optional(),
    forbids: z.array(nameSchema).max(200).optional(),
  }),
};
