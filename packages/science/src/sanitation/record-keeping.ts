import table from '@loamwright/reference/record-keeping.json' with { type: 'json' };
import { z } from 'zod';
import type { Citation } from '../catalogue/index.ts';

const keepingIds = ['us-produce', 'us-organic'] as const;

/** How long a rule asks sellers to keep the records of their compost. */
export interface RecordKeeping extends Citation {
  readonly id: (typeof keepingIds)[number];
  /** Years from when the record was made. */
  readonly years: number;
}

const rowsSchema: z.ZodType<readonly RecordKeeping[]> = z.array(
  z.strictObject({
    id: z.enum(keepingIds),
    years: z.number().int().positive(),
    source: z.string(),
    place: z.string(),
    mark: z.enum(['seen', 'memory', 'derived']),
  }),
);

/** Rows of `reference/record-keeping.json`: 21 CFR 112.164 and 7 CFR 205.103, both recalled. */
export const recordKeeping: readonly RecordKeeping[] = rowsSchema.parse(table);
