import { z } from 'zod';
import type { Citation } from '../catalogue/index.ts';
import { citationShape } from './bands.ts';
import type { WeighedMix } from './mix-input.ts';
import { type Evidence, evidenceGrades, mixParameters } from './parameters.ts';

/** Something in the mix that is said to start a heap, and what trials bear out; its words are the message `mix.starter.ID`. */
export interface StarterNote {
  readonly id: string;
  /** The ingredients it is about; empty for what is bought. */
  readonly materials: readonly string[];
  readonly evidence: Evidence;
  readonly sources: readonly Citation[];
}

export const starterNoteSchema: z.ZodType<StarterNote> = z.strictObject({
  id: z.string(),
  materials: z.array(z.string()),
  evidence: z.enum(evidenceGrades),
  sources: z.array(z.strictObject(citationShape)),
});

/** The starters in a mix, and after them what is bought to do the same; nothing where there is no starter. */
export function startersIn({ ingredients }: WeighedMix): readonly StarterNote[] {
  const notes = mixParameters.starters.map((row) => ({
    ...row,
    materials: [
      ...new Set(
        ingredients.filter(({ published }) => row.materials.includes(published.id)).map(({ given }) => given.material),
      ),
    ],
  }));
  const used = notes.filter(({ materials }) => materials.length > 0);
  return used.length > 0 ? [...used, ...notes.filter(({ id }) => id === 'bought')] : [];
}
