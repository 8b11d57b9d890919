import type { z } from 'zod';

/** What an entry can be about, first set. Brews and worm beds come with their models. */
export type SubjectType = 'material' | 'bay' | 'heap' | 'bed' | 'clause';

/** One kind of entry: what its body holds and what it must be about. */
export interface Kind<Body> {
  /** Kebab-case; stands in the entry as `kind`. */
  readonly id: string;
  /** Version of the body; stands in the entry as `kv`. Raised when a body gains or changes a field. */
  readonly kv: number;
  readonly body: z.ZodType<Body>;
  /**
   * `about` must hold exactly one of this type: the subject. Others may stand beside it.
   * Null: it may be about anything, or nothing.
   */
  readonly subject: SubjectType | null;
}
