import { z } from 'zod';
import type { CautionId } from '../caution/index.ts';
import { type Chance, chanceSchema, type Estimate, estimateSchema } from '../estimate/index.ts';
import { mixCautionIds } from '../mix/sources.ts';
import type { HeapShape } from './shape.ts';

/** What to bear in mind of a run; the message `twin.note.ID`. */
export const heapRunNotes = [
  'may-stay-cold',
  'taken-cold',
  'airless-core',
  'dries-out',
  'runs-off',
  'past-the-curve',
  'freezes',
  'loses-more-nitrogen',
  'stands-high',
] as const;
export type HeapRunNote = (typeof heapRunNotes)[number];

/** A line over time with its range. */
export interface Course {
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
}

/** How much a heap comes to where it lies from a day on, when it is fullest there. */
export interface PlaceFilled {
  readonly from_day: number;
  readonly form: HeapShape['form'];
  readonly volume_m3: Estimate;
  readonly height_m: Estimate;
}

/** What a heap would do. */
export interface HeapRunAnswer {
  /** Days after it was built, for every course. */
  readonly day: readonly number[];
  readonly core_degC: Course;
  /** Of the middle heap: each shell's temperature from the core outwards, at each time. */
  readonly shells_degC: readonly (readonly number[])[];
  readonly coreOxygen_pctVolume: Course;
  readonly moisture_pctWet: Course;
  readonly volume_m3: Course;
  /** Where it is built, then where it is turned into; none of what it lies in for less than it takes to look at it. */
  readonly places: readonly PlaceFilled[];
  /** In how many heaps the core comes to the temperature of a sanitising day. */
  readonly heats: Chance;
  readonly peak_degC: Estimate;
  readonly peak_day: Estimate;
  /** Days on which the core is at or above the temperature of a sanitising day. */
  readonly hotDays_day: Estimate;
  /** Of those heaps that heat: day on which the core first asks for a turn, by heat or by falling. */
  readonly firstTurn_day?: Estimate | undefined;
  readonly dryLost_pctDry: Estimate;
  readonly wetLost_pctWet: Estimate;
  readonly volumeLost_pctVolume: Estimate;
  readonly nitrogenLost_pctNitrogen: Estimate;
  /** What has been published of mixes of like C:N. */
  readonly publishedNitrogenLost_pctNitrogen: { readonly low: number; readonly high: number };
  /** Of those heaps that heat: where the heat goes that is made, as shares of it; the rest is still in the heap. */
  readonly heatThroughSurface_share?: Estimate | undefined;
  readonly heatWithAir_share?: Estimate | undefined;
  readonly waterEvaporated_L: Estimate;
  readonly waterRunOff_L: Estimate;
  readonly members: number;
  readonly notes: readonly HeapRunNote[];
  readonly cautions: readonly CautionId[];
}

const course: z.ZodType<Course> = z.strictObject({
  p10: z.array(z.number()),
  p50: z.array(z.number()),
  p90: z.array(z.number()),
});

export const heapRunAnswerSchema: z.ZodType<HeapRunAnswer> = z.strictObject({
  day: z.array(z.number()),
  core_degC: course,
  shells_degC: z.array(z.array(z.number())),
  coreOxygen_pctVolume: course,
  moisture_pctWet: course,
  volume_m3: course,
  places: z
    .array(
      z.strictObject({
        from_day: z.number().meta({ description: 'Day from which on it lies there.' }),
        form: z.enum(['box', 'dome', 'cone', 'long', 'drum', 'trench']),
        volume_m3: estimateSchema('Volume when it is fullest there, m³.'),
        height_m: estimateSchema('Height when it is fullest there, m.'),
      }),
    )
    .meta({ description: 'Where it is built, then where it is turned into.' }),
  heats: chanceSchema,
  peak_degC: estimateSchema('Highest of the core, °C.'),
  peak_day: estimateSchema('Day on which it is highest.'),
  hotDays_day: estimateSchema('Days at or above 55 °C in the core.'),
  firstTurn_day: estimateSchema('Day on which the core first asks for a turn, where it heats.').optional(),
  dryLost_pctDry: estimateSchema('Dry matter lost, %.'),
  wetLost_pctWet: estimateSchema('Wet mass lost, %.'),
  volumeLost_pctVolume: estimateSchema('Volume lost, %.'),
  nitrogenLost_pctNitrogen: estimateSchema('Nitrogen lost, %.'),
  publishedNitrogenLost_pctNitrogen: z.strictObject({ low: z.number(), high: z.number() }),
  heatThroughSurface_share: estimateSchema(
    'Share of the heat that leaves through surface and ground, where it heats.',
  ).optional(),
  heatWithAir_share: estimateSchema('Share of the heat that leaves with air and vapour, where it heats.').optional(),
  waterEvaporated_L: estimateSchema('Water that leaves with the air, litres.'),
  waterRunOff_L: estimateSchema('Water that runs off below, litres.'),
  members: z.int(),
  notes: z.array(z.enum(heapRunNotes)),
  cautions: z.array(z.enum(mixCautionIds)),
});
