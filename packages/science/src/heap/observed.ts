import { z } from 'zod';
import { freeQuantity, positiveQuantity, type Quantity } from '../estimate/index.ts';

/** Where in the heap the probe was. */
export type ProbePoint = 'core' | 'middle' | 'edge' | 'top' | 'bottom';
/** A handful squeezed hard, from soaking to dusty (common practice, no source). */
export type SqueezeGrade = 'streams' | 'drops' | 'holds' | 'crumbles' | 'dusty';
/** What it smells of. */
export type HeapSmell = 'none' | 'earthy' | 'ammonia' | 'sour' | 'rotten' | 'musty' | 'smoke';

/** A reading taken before this one. */
export interface EarlierReading {
  /** How many days before this reading; parts of a day count. */
  readonly before_days: number;
  readonly temp_degC: Quantity;
  readonly point?: ProbePoint | undefined;
}

/** A reading, and what else is known of the heap: everything but the temperature may be left out. */
export interface ReadingInput {
  readonly temp_degC: Quantity;
  readonly point?: ProbePoint | undefined;
  readonly depth_m?: Quantity | undefined;
  /** The probe is right within this, nine times in ten. */
  readonly probeError_K?: number | undefined;
  readonly air_degC?: Quantity | undefined;
  readonly earlier?: readonly EarlierReading[] | undefined;
  /** Days since the heap was built or begun. */
  readonly age_days?: number | undefined;
  readonly sinceTurn_days?: number | undefined;
  readonly sinceWater_days?: number | undefined;
  readonly sinceFeed_days?: number | undefined;
  readonly squeeze?: SqueezeGrade | undefined;
  readonly smell?: HeapSmell | undefined;
  /** Whether scraps or green stuff can still be told apart in it. */
  readonly freshFood?: boolean | undefined;
  readonly volume_m3?: Quantity | undefined;
  readonly carbonToNitrogen?: Quantity | undefined;
  /** Whether manure went in. */
  readonly holdsManure?: boolean | undefined;
}

export const squeezeSchema: z.ZodType<SqueezeGrade> = z.enum(['streams', 'drops', 'holds', 'crumbles', 'dusty']);
export const heapSmellSchema: z.ZodType<HeapSmell> = z.enum([
  'none',
  'earthy',
  'ammonia',
  'sour',
  'rotten',
  'musty',
  'smoke',
]);

const probePointSchema: z.ZodType<ProbePoint> = z.enum(['core', 'middle', 'edge', 'top', 'bottom']);

const ONE_MINUTE_DAYS = 1 / 1440;
const days = z.number().min(0).max(36_500);
const earlierReading: z.ZodType<EarlierReading> = z.strictObject({
  before_days: days.min(ONE_MINUTE_DAYS).meta({ description: 'Days before this reading' }),
  temp_degC: freeQuantity('Temperature then, °C'),
  point: probePointSchema.optional(),
});

const MOST_EARLIER = 1000;

export const readingInput: z.ZodType<ReadingInput> = z.strictObject({
  temp_degC: freeQuantity('Temperature read, °C; a plain number takes the probe’s error'),
  point: probePointSchema.optional().meta({ description: 'Where the probe was; left out, the core' }),
  depth_m: positiveQuantity('How deep the probe was, m').optional(),
  probeError_K: z
    .number()
    .gt(0)
    .max(50)
    .optional()
    .meta({ description: 'The probe is right within this, nine times in ten' }),
  air_degC: freeQuantity('Temperature of the air, °C').optional(),
  earlier: z.array(earlierReading).max(MOST_EARLIER).optional(),
  age_days: days.optional(),
  sinceTurn_days: days.optional(),
  sinceWater_days: days.optional(),
  sinceFeed_days: days.optional(),
  squeeze: squeezeSchema.optional(),
  smell: heapSmellSchema.optional(),
  freshFood: z
    .boolean()
    .optional()
    .meta({ description: 'Whether scraps or green stuff can still be told apart in it' }),
  volume_m3: positiveQuantity('Volume of the heap, m³').optional(),
  carbonToNitrogen: positiveQuantity('Carbon to nitrogen as built, by mass').optional(),
  holdsManure: z.boolean().optional(),
});
