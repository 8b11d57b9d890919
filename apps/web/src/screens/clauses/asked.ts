import { type Clause, clauseKinds, type NamedId } from '@loamwright/science';

/** What a clause may be about, as it is asked: what alone is allowed is a question of its own. */
export const askedKinds = [...clauseKinds, 'allows-only'] as const;
export type AskedKind = (typeof askedKinds)[number];

/** A figure of a clause. */
export type FigureName = 'limit' | 'perLot_m2' | 'short_m';

/** What was filled in, in SI; null where nothing was, or nothing that can be read. */
export interface Figures {
  readonly limit: number | null;
  /** The lot for each so much of which a volume holds. */
  readonly perLot_m2: number | null;
  readonly short_m: number | null;
  readonly stuff: readonly NamedId[];
  /** Those where something stands that can't be read: they are no figures left empty. */
  readonly unread: readonly FigureName[];
}

export const NO_FIGURES: Figures = { limit: null, perLot_m2: null, short_m: null, stuff: [], unread: [] };

/** The figures with one of them filled in anew. */
export function withFigure(figures: Figures, name: FigureName, value: number | null, isWrong: boolean): Figures {
  const others = figures.unread.filter((one) => one !== name);
  return { ...figures, [name]: value, unread: isWrong ? [...others, name] : others };
}

/** The clause that was asked; null while something that it needs is missing or can't be read. Without a figure it names none. */
export function clauseOf(kind: AskedKind, { limit, perLot_m2, short_m, stuff, unread }: Figures): Clause | null {
  if (unread.length > 0) return null;
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
