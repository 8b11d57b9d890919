import table from '@loamwright/reference/bands.json' with { type: 'json' };
import { z } from 'zod';
import type { Citation } from '../catalogue/index.ts';
import { type Chance, chance, chanceSchema, type Estimate, estimateSchema, summarise } from '../estimate/index.ts';

/** A band; an end that is absent is open. */
export interface Band {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

/** The quantities of a mix that sources give bands for. */
export const judgedQuantities = [
  'carbonToNitrogen_ratio',
  'moisture_pctWet',
  'freeAirSpace_pctVolume',
  'density_kgPerM3AsIs',
] as const;
export type JudgedQuantity = (typeof judgedQuantities)[number];

/** A band of one source. */
export interface PublishedBand extends Citation {
  readonly quantity: string;
  readonly reasonable?: Band | undefined;
  readonly preferred?: Band | undefined;
}

/** The band a mix is made for: preferred, and what is still reasonable. */
export interface Goal {
  readonly preferred: Band;
  readonly reasonable: Band;
}

interface BandTable {
  readonly softEdges: readonly (Citation & { readonly quantity: string; readonly width: number })[];
  readonly bands: readonly PublishedBand[];
  readonly effects: readonly (Citation & {
    readonly quantity: string;
    readonly side: 'low' | 'high';
    readonly at: number;
  })[];
  readonly goals: Readonly<Record<JudgedQuantity, Goal & Citation>>;
}

/** Every published band of the starting mix, what lies beyond each, and the bands the program aims for. */
export const bandTable: BandTable = table as unknown as BandTable;

/**
 * How soft a band's edge is. The sources state one handbook three ways, so an edge is no cliff: a value
 * within this width of one is told as lying on the edge.
 */
export function softEdge(quantity: JudgedQuantity): number {
  const row = bandTable.softEdges.find((edge) => edge.quantity === quantity);
  if (row === undefined) throw new RangeError(`no soft edge for ${quantity}`);
  return row.width;
}

export function isInBand(value: number, { low, high }: Band): boolean {
  return (low === undefined || value >= low) && (high === undefined || value <= high);
}

/** The band with its soft edges: half an edge wider at either end. Every word on a figure, and on a whole mix, goes by it. */
function softened({ low, high }: Band, edge: number): Band {
  return {
    low: low === undefined ? undefined : low - edge / 2,
    high: high === undefined ? undefined : high + edge / 2,
  };
}

/** Where a value lies against a band. */
export type Verdict = 'too-low' | 'in' | 'too-high';

/** In how many draws it lies in one source's band. */
export interface BandChance extends Citation {
  readonly kind: 'reasonable' | 'preferred';
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly chance: Chance;
}

/** A quantity of the mix, judged. */
export interface Judged {
  readonly value: Estimate;
  /** The likely value against the reasonable band aimed for, soft edges allowed. */
  readonly verdict: Verdict;
  /** True where the likely value lies within one soft edge of an end of that band. */
  readonly onEdge: boolean;
  /** The likely value against the preferred band aimed for, soft edges allowed. */
  readonly lean: Verdict;
  /** Draws below, in and above the reasonable band aimed for, as it is printed. */
  readonly chances: { readonly low: Chance; readonly in: Chance; readonly high: Chance };
  /** Every source's own band, each with its chance; they differ, and both are given. */
  readonly bands: readonly BandChance[];
}

export const citationShape: Readonly<{
  source: z.ZodType<string>;
  place: z.ZodType<string>;
  mark: z.ZodType<Citation['mark']>;
}> = { source: z.string(), place: z.string(), mark: z.enum(['seen', 'memory', 'derived']) };
const verdictSchema: z.ZodType<Verdict> = z.enum(['too-low', 'in', 'too-high']);

const bandSchema: z.ZodType<Band> = z
  .strictObject({ low: z.number().min(0).optional(), high: z.number().min(0).optional() })
  .refine(({ low, high }) => low === undefined || high === undefined || low <= high, 'low ≤ high');

export const goalSchema: z.ZodType<Goal> = z
  .strictObject({ preferred: bandSchema, reasonable: bandSchema })
  .refine(
    ({ preferred, reasonable }) =>
      (reasonable.low === undefined ||
        (preferred.low ?? preferred.high ?? Number.POSITIVE_INFINITY) >= reasonable.low) &&
      (reasonable.high === undefined ||
        (preferred.high ?? preferred.low ?? Number.NEGATIVE_INFINITY) <= reasonable.high),
    'the preferred band inside the reasonable one',
  );

export function judgedSchema(description: string): z.ZodType<Judged> {
  return z.strictObject({
    value: estimateSchema(description),
    verdict: verdictSchema,
    onEdge: z.boolean(),
    lean: verdictSchema,
    chances: z.strictObject({ low: chanceSchema, in: chanceSchema, high: chanceSchema }),
    bands: z.array(
      z.strictObject({
        ...citationShape,
        kind: z.enum(['reasonable', 'preferred']),
        low: z.number().optional(),
        high: z.number().optional(),
        chance: chanceSchema,
      }),
    ),
  });
}

/**
 * How judged figures stand together: the one rule for the word on a mix. `undefined` is a figure that a mix
 * without nitrogen lacks, which no band takes in.
 */
export function bandsMet(figures: readonly (Judged | undefined)[]): 'preferred' | 'reasonable' | 'neither' {
  if (figures.some((judged) => judged?.verdict !== 'in')) return 'neither';
  return figures.every((judged) => judged?.lean === 'in') ? 'preferred' : 'reasonable';
}

/** Judges a quantity's draws against every source's bands and against the goal. */
export function judge(quantity: JudgedQuantity, values: Float64Array, goal: Goal = bandTable.goals[quantity]): Judged {
  const value = summarise(values);
  const { low, high } = goal.reasonable;
  const edge = softEdge(quantity);
  return {
    value,
    verdict: verdictOf(value.p50, softened(goal.reasonable, edge)),
    onEdge: [low, high].some((end) => end !== undefined && Math.abs(value.p50 - end) <= edge),
    lean: verdictOf(value.p50, softened(goal.preferred, edge)),
    chances: {
      low: chance(values, (one) => verdictOf(one, goal.reasonable) === 'too-low'),
      in: chance(values, (one) => verdictOf(one, goal.reasonable) === 'in'),
      high: chance(values, (one) => verdictOf(one, goal.reasonable) === 'too-high'),
    },
    bands: bandTable.bands
      .filter((band) => band.quantity === quantity)
      .flatMap((band) => [...bandChance(band, 'reasonable', values), ...bandChance(band, 'preferred', values)]),
  };
}

function bandChance(
  published: PublishedBand,
  kind: 'reasonable' | 'preferred',
  values: Float64Array,
): readonly BandChance[] {
  const band = published[kind];
  if (band === undefined) return [];
  const { source, place, mark } = published;
  return [{ source, place, mark, kind, ...band, chance: chance(values, (value) => isInBand(value, band)) }];
}

function verdictOf(value: number, { low, high }: Band): Verdict {
  if (low !== undefined && value < low) return 'too-low';
  return high !== undefined && value > high ? 'too-high' : 'in';
}
