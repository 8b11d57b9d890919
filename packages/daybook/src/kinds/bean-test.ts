import { type BeanTestInput, beanTestCalculation } from '@loamwright/science';
import { z } from 'zod';
import { longText } from './amount.ts';
import type { Kind } from './kind.ts';

/** Beans grown in suspect stuff beside controls: `bean-tested`. About the heap or the material that was tried. */
export interface BeanTested {
  /** What was sown and seen, as `bean-test` takes it. */
  readonly seen: BeanTestInput;
  readonly note?: string | undefined;
}

export const beanTested: Kind<BeanTested> = {
  id: 'bean-tested',
  kv: 1,
  subject: null,
  body: z.strictObject({ seen: beanTestCalculation.input, note: longText.optional() }),
};
