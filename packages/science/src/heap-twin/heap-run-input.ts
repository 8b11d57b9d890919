import { z } from 'zod';
import { type MixInput, mixShape } from '../mix/mix-input.ts';
import type { HeapShape } from './shape.ts';
import { type NamedStanding, namedStandingShape } from './standings.ts';
import { type ToldWeather, toldWeatherSchema } from './weather-input.ts';

const side = z.number().min(0.05).max(30);
const length = z.number().min(0.05).max(200);

/** The outline of a heap; what its volume asks of height is worked out. */
const heapShapeSchema: z.ZodType<HeapShape> = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('box'), width_m: side, depth_m: side, height_m: side }),
  z.strictObject({ form: z.literal('dome'), diameter_m: side, height_m: side }),
  z.strictObject({ form: z.literal('cone'), diameter_m: side, height_m: side }),
  z.strictObject({ form: z.literal('long'), width_m: side, height_m: side, length_m: length }),
  z.strictObject({ form: z.literal('drum'), diameter_m: side, length_m: length }),
  z.strictObject({ form: z.literal('trench'), width_m: side, depth_m: side, length_m: length }),
]);

/** Something done to the heap, on a day after it was built. */
export type ToldAct = { readonly at_day: number } & (
  | {
      readonly act: 'turn';
      readonly care?: 'thorough' | 'rough' | undefined;
      readonly insideOut?: boolean | undefined;
      /** The bay or form it is turned into; a box takes its height from the volume then, as when it is built. */
      readonly into?: HeapShape | undefined;
    }
  | { readonly act: 'water'; readonly water_L: number; readonly where?: 'through' | 'top' | undefined }
  | { readonly act: 'add'; readonly mix: MixInput; readonly mixed?: boolean | undefined }
  | ({ readonly act: 'stand' } & NamedStanding)
);

const at_day = z.number().min(0).max(800);

const actSchema: z.ZodType<ToldAct> = z.discriminatedUnion('act', [
  z.strictObject({
    at_day,
    act: z.literal('turn'),
    care: z.enum(['thorough', 'rough']).optional().meta({ description: 'Forked right through, or lifted over.' }),
    insideOut: z.boolean().optional().meta({ description: 'Whether the outside comes inside; it does when left out.' }),
    into: heapShapeSchema.optional().meta({
      description: 'The bay or form it is turned into, as `shape` is told; where it lies when left out.',
    }),
  }),
  z.strictObject({
    at_day,
    act: z.literal('water'),
    water_L: z.number().min(0).max(1e5),
    where: z.enum(['through', 'top']).optional().meta({ description: 'While forking, or over the top.' }),
  }),
  z.strictObject({
    at_day,
    act: z.literal('add'),
    mix: z.strictObject(mixShape),
    mixed: z.boolean().optional().meta({ description: 'Forked in, or laid over the top when left out.' }),
  }),
  z.strictObject({ at_day, act: z.literal('stand'), ...namedStandingShape }),
]);

/** A mix, where and when it is built, and what is done to it. */
export interface HeapRunInput extends MixInput, NamedStanding {
  /** A box takes its height from the volume, the other forms their size; a dome when left out. */
  readonly shape?: HeapShape | undefined;
  readonly weather: ToldWeather;
  /** Temperature of the stuff when built, °C; as the air when left out. */
  readonly start_degC?: number | undefined;
  /** Whether everything was chopped or shredded besides what it is. */
  readonly chopped?: boolean | undefined;
  readonly days?: number | undefined;
  readonly acts?: readonly ToldAct[] | undefined;
  /** How many of the heaps that it may be are run. */
  readonly members?: number | undefined;
  readonly shells?: number | undefined;
}

/** Between what temperatures stuff can come, °C: from a hard frost to as hot as a heap gets by itself. */
export const startBounds_degC: { readonly least: number; readonly most: number } = { least: -40, most: 75 };

export const startSchema: z.ZodOptional<z.ZodNumber> = z
  .number()
  .min(startBounds_degC.least)
  .max(startBounds_degC.most)
  .optional()
  .meta({ description: 'Of the stuff when built, °C; as the air when left out.' });

const LEAST_MEMBERS = 8;
const MOST_MEMBERS = 256;
const MOST_ACTS = 120;

const heapRunShape: Readonly<Record<string, z.ZodType>> = {
  ...mixShape,
  ...namedStandingShape,
  shape: heapShapeSchema.optional(),
  weather: toldWeatherSchema,
  start_degC: startSchema,
  chopped: z.boolean().optional().meta({ description: 'Whether all of it was chopped or shredded as well.' }),
  days: z.number().min(1).max(400).optional().meta({ description: 'How long it is followed; 60 when left out.' }),
  acts: z.array(actSchema).max(MOST_ACTS).optional().meta({
    description:
      'What is done to it, by the day: turned, perhaps into another bay; watered; added to; covered otherwise.',
  }),
  members: z
    .int()
    .min(LEAST_MEMBERS)
    .max(MOST_MEMBERS)
    .optional()
    .meta({ description: 'Heaps that it may be; 64 when left out.' }),
  shells: z.int().min(3).max(40).optional().meta({ description: 'Shells from core to surface; 8 when left out.' }),
};

export const heapRunInputSchema: z.ZodType<HeapRunInput> = z.strictObject(
  heapRunShape,
) as unknown as z.ZodType<HeapRunInput>;
