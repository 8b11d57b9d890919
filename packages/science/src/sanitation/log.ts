import { z } from 'zod';
import { type Day, daySchema } from '../calendar/index.ts';
import { positiveQuantity, type Quantity } from '../estimate/index.ts';
import { type HeapMethod, heapMethods, type WormKind, wormKinds } from './parameters.ts';

/** Where the probe was; the edge, the top and the bottom are where it is coldest. */
export const logPoints = ['core', 'middle', 'edge', 'top', 'bottom'] as const;
export type LogPoint = (typeof logPoints)[number];

/** A reading of a heap on one day. */
export interface LogReading {
  readonly day: Day;
  readonly temp_degC: number;
  /** Left out, it was taken in the hot middle. */
  readonly point?: LogPoint | undefined;
  /** How long it was at least so warm that day, hours; only one rule asks. */
  readonly held_h?: number | undefined;
}

/** What is known of a heap's heat: its log. What is left out was not written down. */
export interface SanitationLog {
  readonly method: HeapMethod;
  readonly readings: readonly LogReading[];
  readonly turned: readonly Day[];
  /** Whether manure or any other animal matter went in. */
  readonly animalMatter: boolean;
  readonly begun_day?: Day | undefined;
  /** The last time anything raw went in: only days after it count. */
  readonly lastRaw_day?: Day | undefined;
  readonly stillFed?: boolean | undefined;
  /** Of the mix as it was built. */
  readonly carbonToNitrogen?: Quantity | undefined;
  /** Of the wet mass, while it was hot. */
  readonly moisture_pctWet?: Quantity | undefined;
  /** Whether it was seen to that everything came into the heat, by turning outside in or by insulation. */
  readonly allMaterial?: boolean | undefined;
  readonly curing?:
    | {
        readonly from_day: Day;
        readonly warmest_degC?: number | undefined;
        readonly asWarmAsAir?: boolean | undefined;
      }
    | undefined;
}

/** A worm bed, from the first feed to the harvest. */
export interface WormLog {
  readonly kind: WormKind;
  readonly from_day: Day;
  readonly to_day: Day;
  readonly moisture_pctWet?: Quantity | undefined;
  readonly fedEvery_days?: number | undefined;
}

/** Ice and boiling water, with room for a probe that is off: what lies outside is a slip of the pen. */
const COLDEST_DEGC = -40;
const HOTTEST_DEGC = 110;
const MOST_READINGS = 20_000;

/** Whether a reading can stand in a log. */
export function isLoggable(temp_degC: number): boolean {
  return temp_degC >= COLDEST_DEGC && temp_degC <= HOTTEST_DEGC;
}

const temperature = z.number().min(COLDEST_DEGC).max(HOTTEST_DEGC);
const ratio = positiveQuantity('Carbon to nitrogen of the mix as built.');
const moisture = positiveQuantity('Water, % of wet mass.').refine((value) => highest(value) <= 100, {
  params: { wanted: 'at most 100' },
});

function highest(quantity: Quantity): number {
  return typeof quantity === 'number' ? quantity : quantity.p90;
}

export const sanitationLogSchema: z.ZodType<SanitationLog> = z.strictObject({
  method: z.enum(heapMethods),
  readings: z
    .array(
      z.strictObject({
        day: daySchema,
        temp_degC: temperature,
        point: z.enum(logPoints).optional(),
        held_h: z.number().min(0).max(24).optional(),
      }),
    )
    .max(MOST_READINGS),
  turned: z.array(daySchema).max(2000),
  animalMatter: z.boolean(),
  begun_day: daySchema.optional(),
  lastRaw_day: daySchema.optional(),
  stillFed: z.boolean().optional(),
  carbonToNitrogen: ratio.optional(),
  moisture_pctWet: moisture.optional(),
  allMaterial: z.boolean().optional(),
  curing: z
    .strictObject({
      from_day: daySchema,
      warmest_degC: temperature.optional(),
      asWarmAsAir: z.boolean().optional(),
    })
    .optional(),
});

export const wormLogSchema: z.ZodType<WormLog> = z
  .strictObject({
    kind: z.enum(wormKinds),
    from_day: daySchema,
    to_day: daySchema,
    moisture_pctWet: moisture.optional(),
    fedEvery_days: z.number().min(0).max(365).optional(),
  })
  .refine(({ from_day, to_day }) => from_day <= to_day, {
    path: ['to_day'],
    params: { wanted: 'a day not before from_day' },
  });
