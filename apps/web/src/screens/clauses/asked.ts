import { type Clause, clauseKinds, type NamedId } from '@loamwright/science';

/** What a clause may be about, as it is asked: what alone is allowed is a question of its own. */
export const askedKinds = [...clauseKinds, 'allows-only'] as const;
export type AskedKind = (typeof askedKinds)[number];

/** What was filled in, in SI; null where nothing was, or nothing that can be read. */
export interface Figures {
  readonly limit: number | null;
  /** The lot for each so much of which a volume holds. */
  readonly perLot_m2: number | null;
  readonly short_m: number | null;
  readonly stuff: readonly NamedId[];
}

export const NO_FIGURES: Figures = { limit: null, perLot_m2: null, short_m: null, stuff: [] };

/** The clause that was asked; null while something that it needs is missing. Without a figure it names none. */
export function clauseOf(kind: AskedKind, { limit, perLot_m2, short_m, stuff }: Figures): Clause | null {
  switch (kind) {
    case 'volume':
      if (limit === null) return { kind };
      return { kind, most_m3: limit, ...(perLot_m2 !== null && { perLot_m2 }) };
    case 'height':
      return limit === null ? { kind } : { kind, most_m: limit };
    case 'footprint':
      return limit === null ? { kind } : { kind, most_m2: limit };
    case 'lot-share':
      return limit === null ? { kind } : { kind, most_pctOfLot: limit };
    case 'sides':
      if (limit === null || short_m === null) return null;
      return { kind, long_m: Math.max(limit, short_m), short_m: Math.min(limit, short_m) };
    case 'from-line':
    case 'from-house':
    case 'from-water':
      return limit === null ? { kind } : { kind, least_m: limit };
    case 'bars':
    case 'allows':
      return stuff.length === 0 ? null : { kind, stuff };
    case 'allows-only':
      return stuff.length === 0 ? null : { kind: 'allows', stuff, only: true };
    default:
      return { kind };
  }
}
