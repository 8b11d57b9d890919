import { type CuringInput, curingCheck } from '@loamwright/science';
import { z } from 'zod';
import { longText } from './amount.ts';
import type { Kind } from './kind.ts';

/** What was smelt, seen or measured of how ripe a heap is: `ripeness-tested`. A later one adds to it, and replaces what it measures anew. */
export interface RipenessTested {
  /** As `curing-check` takes it; at least one thing. */
  readonly seen: CuringInput;
  readonly note?: string | undefined;
}

export const ripenessTested: Kind<RipenessTested> = {
  id: 'ripeness-tested',
  kv: 1,
  subject: 'heap',
  body: z
    .strictObject({ seen: curingCheck.input, note: longText.optional() })
    .refine(({ seen: { measured, ...others } }) => Object.keys({ ...measured, ...others }).length > 0, {
      params: { wanted: 'a smell, what is seen of the stuff, a temperature after a turn, or a measurement' },
    }),
};
