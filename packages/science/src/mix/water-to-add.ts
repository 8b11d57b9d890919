import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  type Estimate,
  estimateSchema,
  summarise,
} from '../estimate/index.ts';
import { countInMeasure, type OwnSizes, propertyDraws } from '../material/index.ts';
import { secondForMoisture_kg, waterToReach_kg } from './balance.ts';
import { softEdge } from './bands.ts';
import { resolve, weigh } from './ingredient.ts';
import { type MixInput, mixShape, type WeighedMix, weighMix } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { portionMoisture_pctWet } from './portion.ts';
import { mixCautionIds, mixSources } from './sources.ts';
import { USUAL_MEASURE } from './stock.ts';
import { roomInMix_L } from './water.ts';

export interface WaterToAddInput extends MixInput {
  /** Moisture to reach, percent of wet mass; 55 by default. */
  readonly goal_pctWet?: number | undefined;
  /** The bucket the water is carried in. */
  readonly measure?: string | undefined;
  /** Dry materials to think of when it is too wet. */
  readonly driers?: readonly string[] | undefined;
}

/** So much of one dry material would bring a wet mix to the goal. */
export interface Drier {
  readonly material: string;
  readonly wet_kg: Estimate;
  readonly volume_m3: Estimate;
  /** In measures of the grower's own. */
  readonly count: Estimate;
  /** In how many draws it is dry enough to do it at all; the amounts are of those draws. */
  readonly does: Chance;
}

export interface WaterToAdd {
  /** `right`: the likely moisture lies within half a soft edge of the goal. */
  readonly decision: 'add-water' | 'right' | 'too-wet';
  readonly goal_pctWet: number;
  readonly moisture_pctWet: Estimate;
  /** Water to pour, litres; none in the draws that are wet enough. */
  readonly water_L: Estimate;
  readonly measure: string;
  /** The same in the bucket it is carried in. */
  readonly count: Estimate;
  /** Water it can take up before it drips, litres. */
  readonly room_L: Estimate;
  /** True where the water asked for is likely more than it takes up: pour some, wait a day, pour again. */
  readonly inTurns: boolean;
  /** Draws in which it lacks water. */
  readonly lacksWater: Chance;
  /** When too wet: dry stuff that would mend it. */
  readonly driers: readonly Drier[];
  readonly cautions: readonly CautionId[];
}

const outputSchema: z.ZodType<WaterToAdd> = z.strictObject({
  decision: z.enum(['add-water', 'right', 'too-wet']),
  goal_pctWet: z.number(),
  moisture_pctWet: estimateSchema('Moisture now, % of wet mass.'),
  water_L: estimateSchema('Water to pour, litres.'),
  measure: z.string(),
  count: estimateSchema('Water to pour, in the measure.'),
  room_L: estimateSchema('Water it can take up before it drips, litres.'),
  inTurns: z.boolean(),
  lacksWater: chanceSchema,
  driers: z.array(
    z.strictObject({
      material: z.string(),
      wet_kg: estimateSchema('Wet mass, kg.'),
      volume_m3: estimateSchema('Volume as it lies, m³.'),
      count: estimateSchema('In the measure.'),
      does: chanceSchema,
    }),
  ),
  cautions: z.array(z.enum(mixCautionIds)),
});

/** A goal so wet that no heap keeps its air lies beyond what is asked. */
const WETTEST_GOAL_PCT = 80;
const MOST_DRIERS = 8;
const LITRES_PER_M3 = 1000;

function run(input: WaterToAddInput, { draws }: { readonly draws: Draws }): Outcome<WaterToAdd> {
  const mix = weighMix(input, draws);
  if (!mix.ok) return mix;
  const goal_pctWet = input.goal_pctWet ?? mixParameters.goalMoisture_pctWet.value;
  const measure = input.measure ?? USUAL_MEASURE;
  const { total } = mix.value;
  const moisture = Float64Array.from(total, (portion) => portionMoisture_pctWet(portion) ?? 0);
  const lacking_L = Float64Array.from(total, ({ wet_kg, dry_kg }) => waterToReach_kg({ wet_kg, dry_kg, goal_pctWet }));
  const water_L = lacking_L.map((litres) => Math.max(0, litres));
  const counted = countInMeasure(
    water_L.map((litres) => litres / LITRES_PER_M3),
    measure,
    { draws, ownSizes: input.ownSizes, path: 'measure' },
  );
  if (!counted.ok) return counted;
  const room_L = roomInMix_L(mix.value, draws).map((room, i) => Math.max(0, room - (mix.value.water_L[i] ?? 0)));
  const moisture_pctWet = summarise(moisture);
  const decision = decide(moisture_pctWet.p50, goal_pctWet);
  const driers = decision === 'too-wet' ? driersFor(mix.value, input, goal_pctWet, measure, draws) : good([]);
  if (!driers.ok) return driers;
  return good({
    decision,
    goal_pctWet,
    moisture_pctWet,
    water_L: summarise(water_L),
    measure,
    count: summarise(counted.value),
    room_L: summarise(room_L),
    inTurns: decision === 'add-water' && summarise(room_L).p50 < summarise(water_L).p50,
    lacksWater: chance(lacking_L, (litres) => litres > 0),
    driers: driers.value,
    cautions: inOrder(mix.value.ingredients.flatMap(({ cautions }) => cautions)),
  });
}

function decide(likely_pctWet: number, goal_pctWet: number): WaterToAdd['decision'] {
  if (Math.abs(likely_pctWet - goal_pctWet) <= softEdge('moisture_pctWet') / 2) return 'right';
  return likely_pctWet < goal_pctWet ? 'add-water' : 'too-wet';
}

/** The dry materials that bring the mix to the goal in most draws, least volume first. */
function driersFor(
  mix: WeighedMix,
  input: WaterToAddInput,
  goal_pctWet: number,
  measure: string,
  draws: Draws,
): Outcome<readonly Drier[]> {
  const driers: Drier[] = [];
  for (const [i, material] of (input.driers ?? mixParameters.driers).entries()) {
    const drier = drierFor(
      mix,
      { material, path: `driers[${i}]`, goal_pctWet, measure, ownSizes: input.ownSizes },
      draws,
    );
    if (!drier.ok) return drier;
    if (drier.value !== undefined) driers.push(drier.value);
  }
  return good(driers.sort((a, b) => a.volume_m3.p50 - b.volume_m3.p50));
}

interface DrierAsked {
  readonly material: string;
  readonly path: string;
  readonly goal_pctWet: number;
  readonly measure: string;
  readonly ownSizes: OwnSizes | undefined;
}

/** How much of one material dries the mix; `undefined` where in most draws it is too wet itself. */
function drierFor(mix: WeighedMix, asked: DrierAsked, draws: Draws): Outcome<Drier | undefined> {
  const { material, path, goal_pctWet, measure, ownSizes } = asked;
  const resolved = resolve({ material }, path);
  if (!resolved.ok) return resolved;
  const moisture = propertyDraws(draws, resolved.value.known, 'moisture_pctWet');
  const one = weigh(resolved.value, { mass_kg: 1 }, material, { draws, ownSizes, path });
  if (!one.ok) return one;
  const needed_kg = Float64Array.from(mix.total, (first, i) => {
    const moisture_pctWet = portionMoisture_pctWet(first) ?? Number.NaN;
    if (moisture_pctWet <= goal_pctWet) return 0;
    const second = { moisture_pctWet: moisture?.[i] ?? Number.NaN };
    return (
      secondForMoisture_kg({ first: { wet_kg: first.wet_kg, moisture_pctWet }, second, goal_pctWet }) ?? Number.NaN
    );
  });
  const does = chance(needed_kg, Number.isFinite);
  if (2 * does.met <= does.of) return good(undefined);
  const volume_m3 = needed_kg.map((kg, i) => kg * (one.value[i]?.volume_m3 ?? Number.NaN));
  const counted = countInMeasure(volume_m3, measure, { draws, ownSizes, path: 'measure' });
  if (!counted.ok) return counted;
  const able = (values: Float64Array): Estimate => summarise(values.filter(Number.isFinite));
  return good({ material, wet_kg: able(needed_kg), volume_m3: able(volume_m3), count: able(counted.value), does });
}

export const waterToAdd: Calculation<WaterToAddInput, WaterToAdd> = {
  id: 'water-to-add',
  title: 'Water to add',
  summary:
    'Litres and buckets of water that bring a mix to a goal moisture, and whether it can take them up at once before it drips; or, when it is too wet already, how much of which dry stuff would do. Stop when a squeezed handful drips.',
  input: z.strictObject({
    ...mixShape,
    goal_pctWet: z.number().min(20).max(WETTEST_GOAL_PCT).optional(),
    measure: z.string().min(1).optional(),
    driers: z.array(z.string()).max(MOST_DRIERS).optional(),
  }),
  output: outputSchema,
  sources: [
    ...mixSources,
    ...mixParameters.waterCapacity,
    mixParameters.waterCapacityOther,
    mixParameters.squeezeLimit_pctWet,
  ],
  cautions: mixCautionIds,
  example: {
    ingredients: [{ material: 'autumn-leaves', amount: { measure: 'leaf-bag-30gal', count: 10 } }],
    measure: 'bucket-20l',
  },
  run,
};
