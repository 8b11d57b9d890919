import { z } from 'zod';
import { bad, type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import { type Chance, chance, chanceSchema } from '../estimate/index.ts';
import { mildAir_degC } from '../heap/index.ts';
import { type MixInput, mixShape, weighMix } from '../mix/mix-input.ts';
import { mixSources } from '../mix/sources.ts';
import { type Member, membersOf } from './ensemble.ts';
import { sureToEnd } from './heap-follow.ts';
import type { HeapRunNote } from './heap-run-answer.ts';
import { startSchema } from './heap-run-input.ts';
import { DAY_S } from './parameters.ts';
import { runHeap, USUAL_PACE, USUAL_SHELLS } from './run.ts';
import type { HeapShape } from './shape.ts';
import { type NamedStanding, namedStandingShape, standingOf } from './standings.ts';
import { shellTemperature_degC } from './state.ts';
import type { Stuff } from './stuff.ts';
import { noWeather } from './surroundings.ts';
import { type ToldWeather, toldWeatherSchema, weatherOf } from './weather-input.ts';

export interface HeapSizeInput extends MixInput, NamedStanding {
  readonly weather: ToldWeather;
  /** Temperature of the stuff when built, °C; as the air when left out. */
  readonly start_degC?: number | undefined;
  /** What the core is to stay above, °C. */
  readonly above_degC?: number | undefined;
  /** For so many days of the fortnight after it was built. */
  readonly days?: number | undefined;
  /** The share of the heaps it may be that must. */
  readonly enough_share?: number | undefined;
}

/** A size that was tried. */
export interface TriedSize {
  readonly volume_m3: number;
  readonly holds: Chance;
}

/** Where nobody said how warm the stuff comes, and the air is cold. */
type HeapSizeNote = Extract<HeapRunNote, 'taken-cold'>;

export interface HeapSize {
  /** The smallest that does; absent where none of the sizes tried does. */
  readonly volume_m3?: number | undefined;
  /** The side of a cube of it. */
  readonly side_m?: number | undefined;
  readonly tried: readonly TriedSize[];
  /** What the stuff was taken to have when built, °C. */
  readonly start_degC: number;
  /** What to bear in mind; the message `twin.note.ID`. */
  readonly notes: readonly HeapSizeNote[];
  readonly cautions: readonly CautionId[];
}

const output: z.ZodType<HeapSize> = z.strictObject({
  volume_m3: z.number().optional(),
  side_m: z.number().optional(),
  tried: z.array(z.strictObject({ volume_m3: z.number(), holds: chanceSchema })),
  start_degC: z.number().meta({ description: 'What the stuff was taken to have when built, °C.' }),
  notes: z.array(z.literal('taken-cold')),
  cautions: z.array(z.enum(['fire', 'ammonia', 'local-rules'])),
});

const USUAL_ABOVE_degC = 55;
const USUAL_DAYS = 3;
const USUAL_ENOUGH = 0.5;
const MEMBERS = 32;
const FOLLOWED_DAYS = 14;
const SMALLEST_M3 = 0.05;
const LARGEST_M3 = 30;
/** Each size is so many times the one before: a tenth more side. */
const STEP = 1.331;
/** Every fourth size is tried first, then those below the first that does. */
const STRIDE = 4;

function scaled(stuff: Stuff, by: number): Stuff {
  const { temp_degC, pH, activity_share, ...amounts } = stuff;
  const more = Object.fromEntries(Object.entries(amounts).map(([key, amount]) => [key, amount * by]));
  return { ...(more as unknown as typeof amounts), temp_degC, pH, activity_share };
}

function hotDays(member: Member, volume_m3: number, input: HeapSizeInput): number {
  const side_m = Math.cbrt(volume_m3);
  const shape: HeapShape = { form: 'box', width_m: side_m, depth_m: side_m, height_m: side_m };
  const above_degC = input.above_degC ?? USUAL_ABOVE_degC;
  let hot = 0;
  runHeap(
    {
      shape,
      stuff: scaled(member.stuff, volume_m3 / member.stuff.volume_m3),
      traits: member.traits,
      standing: standingOf(input),
      weatherAt: weatherOf(input.weather),
      acts: [],
      days: FOLLOWED_DAYS,
      shellCount: USUAL_SHELLS,
      pace: USUAL_PACE,
    },
    DAY_S,
    ({ state, time_day }) => {
      // What it has when it is built it has not come to by itself.
      if (time_day > 0 && shellTemperature_degC(state, 0) >= above_degC) hot++;
    },
  );
  return hot;
}

/** Problems: those of the mix, `too-small`, `cannot-be-followed`. */
function run(input: HeapSizeInput, needs: Needs): Outcome<HeapSize> {
  const sized = sureToEnd(() => sizeOf(input, needs));
  return sized.ok ? sized.value : sized;
}

function sizeOf(input: HeapSizeInput, { draws }: Needs): Outcome<HeapSize> {
  const days = input.days ?? USUAL_DAYS;
  const above_degC = input.above_degC ?? USUAL_ABOVE_degC;
  const now = noWeather();
  weatherOf(input.weather)(0, now);
  if (above_degC <= now.temp_degC) {
    return bad({ code: 'too-small', path: 'above_degC', found: String(above_degC), wanted: `> ${now.temp_degC}` });
  }
  const mix = weighMix(input, draws);
  if (!mix.ok) return mix;
  const start_degC = input.start_degC ?? now.temp_degC;
  const members = membersOf(mix.value, draws, { count: MEMBERS, temp_degC: start_degC });
  const tried: TriedSize[] = [];
  const does = (size_m3: number): boolean => {
    const hot = members.map((member) => hotDays(member, size_m3, input));
    const holds = chance(hot, (count) => count >= days);
    tried.push({ volume_m3: size_m3, holds });
    return holds.met >= (input.enough_share ?? USUAL_ENOUGH) * holds.of;
  };
  // From the smallest up, for a larger heap is not sure to do better: it holds its heat, but its core has less air.
  const far = sizes_m3.findIndex((size_m3, place) => place % STRIDE === STRIDE - 1 && does(size_m3));
  const volume_m3 = far < 0 ? undefined : (sizes_m3.slice(far - STRIDE + 1, far).find(does) ?? sizes_m3[far]);
  return good({
    ...(volume_m3 === undefined ? {} : { volume_m3, side_m: Math.cbrt(volume_m3) }),
    tried: tried.sort((a, b) => a.volume_m3 - b.volume_m3),
    start_degC,
    notes: input.start_degC === undefined && start_degC < mildAir_degC ? ['taken-cold'] : [],
    cautions: inOrder(['fire', 'ammonia', 'local-rules']),
  });
}

const sizes_m3: readonly number[] = Array.from(
  { length: Math.ceil(Math.log(LARGEST_M3 / SMALLEST_M3) / Math.log(STEP) / STRIDE) * STRIDE },
  (_, place) => Number((SMALLEST_M3 * STEP ** place).toPrecision(3)),
);

/** The smallest heap of a mix that gets and stays hot here and now. */
export const heapSize: Calculation<HeapSizeInput, HeapSize> = {
  id: 'heap-size',
  title: 'The smallest heap of a mix that gets hot',
  summary:
    'Runs cubes of a mix, smaller and larger, in the weather given, and finds the smallest whose core is above a temperature for some days of its first fortnight in enough of the heaps it may be. A poor or cold mix may have none.',
  input: z.strictObject({
    ...mixShape,
    ...namedStandingShape,
    weather: toldWeatherSchema,
    start_degC: startSchema,
    above_degC: z
      .number()
      .min(20)
      .max(70)
      .optional()
      .meta({ description: 'The core is to be above it, °C; 55 when left out.' }),
    days: z.int().min(1).max(12).optional().meta({ description: 'Days of the first 14; 3 when left out.' }),
    enough_share: z
      .number()
      .min(0.05)
      .max(0.95)
      .optional()
      .meta({ description: 'Share of the heaps; 0.5 when left out.' }),
  }) as unknown as z.ZodType<HeapSizeInput>,
  output,
  sources: mixSources,
  cautions: ['fire', 'ammonia', 'local-rules'],
  example: {
    ingredients: [
      { material: 'horse-manure-straw', amount: { measure: 'barrow', count: 6 } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: 2 } },
    ],
    water_L: 30,
    walls: 'pallet',
    weather: { still: { temp_degC: 10 } },
  },
  run,
};
