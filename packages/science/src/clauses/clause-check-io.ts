import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import { type NamedId, namedIds, type StuffId, stuffIds } from './stuff.ts';

/** A greatest size or a least distance. The figure is left out where the clause names none ("a fair distance"). */
export type Clause =
  | { readonly kind: 'volume'; readonly most_m3?: number | undefined; readonly perLot_m2?: number | undefined }
  | { readonly kind: 'height'; readonly most_m?: number | undefined }
  | { readonly kind: 'footprint'; readonly most_m2?: number | undefined }
  | { readonly kind: 'lot-share'; readonly most_pctOfLot?: number | undefined }
  | { readonly kind: 'sides'; readonly long_m: number; readonly short_m: number }
  | { readonly kind: DistanceKind; readonly least_m?: number | undefined }
  | { readonly kind: 'bars'; readonly stuff: readonly NamedId[] }
  | { readonly kind: 'allows'; readonly stuff: readonly NamedId[]; readonly only?: boolean | undefined }
  | { readonly kind: PlainKind };

export const distanceKinds = ['from-line', 'from-house', 'from-water'] as const;
/** From the lot's line, from a neighbour's house, from one's own well or open water. */
export type DistanceKind = (typeof distanceKinds)[number];

export const plainKinds = ['rear-yard', 'covered', 'enclosed', 'scraps-buried'] as const;
export type PlainKind = (typeof plainKinds)[number];

export const clauseKinds = [
  'volume',
  'height',
  'footprint',
  'lot-share',
  'sides',
  'from-line',
  'from-house',
  'from-water',
  'bars',
  'allows',
  'rear-yard',
  'covered',
  'enclosed',
  'scraps-buried',
] as const;
export type ClauseKind = (typeof clauseKinds)[number];

export const whoseIds = ['town', 'landlord', 'market', 'other'] as const;
export type WhoseId = (typeof whoseIds)[number];

/** The clauses of one town, landlord or market, as the grower wrote them down. */
export interface LocalCode {
  readonly of: string;
  readonly whose: WhoseId;
  readonly clauses: readonly Clause[];
}

/** What is known of a heap; what is left out was not said. */
export interface HeapFacts {
  readonly width_m?: number | undefined;
  readonly depth_m?: number | undefined;
  readonly height_m?: number | undefined;
  /** Where it is not told, width times depth times height: a full bay. */
  readonly volume_m3?: number | undefined;
  readonly lot_m2?: number | undefined;
  readonly fromLine_m?: number | undefined;
  readonly fromHouse_m?: number | undefined;
  readonly fromWater_m?: number | undefined;
  /** Every sort that is in it or is to go in. */
  readonly stuff?: readonly StuffId[] | undefined;
  readonly rearYard?: boolean | undefined;
  readonly covered?: boolean | undefined;
  readonly enclosed?: boolean | undefined;
  readonly scrapsBuried?: boolean | undefined;
}

export interface ClauseCheckInput {
  readonly codes: readonly LocalCode[];
  readonly heap: HeapFacts;
  /** Whether the heap's log meets a rule, where that was asked as well. It never makes up for a clause. */
  readonly logMeets?: boolean | undefined;
}

export const clauseVerdicts = ['pass', 'fail', 'not-stated'] as const;
export type ClauseVerdict = (typeof clauseVerdicts)[number];

export const clauseWhys = [
  'within',
  'beyond',
  'as-asked',
  'otherwise',
  'none-of-it',
  'barred',
  'named',
  'not-named',
  'unclear',
  'code-silent',
  'grower-silent',
] as const;
/**
 * `code-silent`: the clause, or the whole code, does not say. `unclear`: its word can be read either way.
 * `grower-silent`: the fact about the heap was not told.
 */
export type ClauseWhy = (typeof clauseWhys)[number];

export interface ClauseFinding {
  /** `silence`: stuff of the heap that no clause of the code speaks of. */
  readonly kind: ClauseKind | 'silence';
  readonly verdict: ClauseVerdict;
  readonly why: ClauseWhy;
  /** The heap's own figure, in the unit of the kind: m³, m, m² or percent of the lot. */
  readonly have?: number | undefined;
  readonly limit?: number | undefined;
  /** The sorts of stuff that it turns on. */
  readonly stuff?: readonly StuffId[] | undefined;
}

export interface CodeVerdict {
  readonly of: string;
  readonly whose: WhoseId;
  /** Fail where any clause fails; else not stated where any is; else pass. */
  readonly verdict: ClauseVerdict;
  readonly findings: readonly ClauseFinding[];
}

export const standings = ['clause-fails', 'ask-first', 'log-falls-short', 'clauses-pass'] as const;
/** What leads: a failed clause before anything the log shows. */
export type Standing = (typeof standings)[number];

export interface ClauseCheck {
  readonly standing: Standing;
  readonly codes: readonly CodeVerdict[];
  readonly cautions: readonly CautionId[];
}

/** No compost heap, lot or distance that a town code means is larger. */
const length = z.number().min(0.001).max(10_000);
const area = z.number().min(0.001).max(1e8);
const volume = z.number().min(1e-6).max(1e6);
const distance = z.number().min(0).max(100_000);
const named = z.array(z.enum(namedIds)).min(1).max(namedIds.length);

const clauseSchema: z.ZodType<Clause> = z.union([
  z.strictObject({ kind: z.literal('volume'), most_m3: volume.optional(), perLot_m2: area.optional() }),
  z.strictObject({ kind: z.literal('height'), most_m: length.optional() }),
  z.strictObject({ kind: z.literal('footprint'), most_m2: area.optional() }),
  z.strictObject({ kind: z.literal('lot-share'), most_pctOfLot: z.number().min(1e-6).max(100).optional() }),
  z.strictObject({ kind: z.literal('sides'), long_m: length, short_m: length }),
  z.strictObject({ kind: z.enum(distanceKinds), least_m: distance.optional() }),
  z.strictObject({ kind: z.literal('bars'), stuff: named }),
  z.strictObject({ kind: z.literal('allows'), stuff: named, only: z.boolean().optional() }),
  z.strictObject({ kind: z.enum(plainKinds) }),
]);

export const clauseCheckInputSchema: z.ZodType<ClauseCheckInput> = z.strictObject({
  codes: z
    .array(
      z.strictObject({
        of: z.string().min(1).max(200),
        whose: z.enum(whoseIds),
        clauses: z.array(clauseSchema).min(1).max(100),
      }),
    )
    .min(1)
    .max(20),
  heap: z.strictObject({
    width_m: length.optional(),
    depth_m: length.optional(),
    height_m: length.optional(),
    volume_m3: volume.optional(),
    lot_m2: area.optional(),
    fromLine_m: distance.optional(),
    fromHouse_m: distance.optional(),
    fromWater_m: distance.optional(),
    stuff: z.array(z.enum(stuffIds)).min(1).max(stuffIds.length).optional(),
    rearYard: z.boolean().optional(),
    covered: z.boolean().optional(),
    enclosed: z.boolean().optional(),
    scrapsBuried: z.boolean().optional(),
  }),
  logMeets: z.boolean().optional(),
});

export const clauseCheckSchema: z.ZodType<ClauseCheck> = z.strictObject({
  standing: z.enum(standings),
  codes: z.array(
    z.strictObject({
      of: z.string(),
      whose: z.enum(whoseIds),
      verdict: z.enum(clauseVerdicts),
      findings: z.array(
        z.strictObject({
          kind: z.enum([...clauseKinds, 'silence']),
          verdict: z.enum(clauseVerdicts),
          why: z.enum(clauseWhys),
          have: z.number().min(0).optional(),
          limit: z.number().min(0).optional(),
          stuff: z.array(z.enum(stuffIds)).optional(),
        }),
      ),
    }),
  ),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});
