import table from '@loamwright/reference/droppings.json' with { type: 'json' };
import { convert } from '@loamwright/units';
import { z } from 'zod';
import { type Calculation, type Citation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { drawsOf, type Estimate, estimateSchema, positive, summarise, withSpread } from '../estimate/index.ts';

/** Animals whose droppings a table has; the message `droppings.animal.ID`. */
export const dungAnimals = ['laying-hen', 'broiler', 'turkey', 'dairy-cow', 'beef-cow'] as const;
export type DungAnimal = (typeof dungAnimals)[number];

export interface DroppingsInput {
  readonly animal: DungAnimal;
  readonly count: number;
  readonly days: number;
}

interface Held {
  readonly nitrogen: number;
  readonly phosphorus: number;
  readonly potassium: number;
}

const { animals, spread_factor, ...whole } = table as unknown as Citation & {
  readonly animals: readonly {
    readonly id: DungAnimal;
    readonly animalsPerUnit: number;
    readonly tonsPerUnitYear: number;
    readonly fresh_lbPerTon: Held;
    readonly kept_lbPerTon: Held;
  }[];
  readonly spread_factor: Citation & { readonly value: number };
};

/** What animals leave behind, and what of it is left after usual storage. */
export interface Droppings {
  readonly wet_kg: Estimate;
  readonly nitrogen_kg: Estimate;
  readonly phosphorus_kg: Estimate;
  readonly potassium_kg: Estimate;
  readonly keptNitrogen_kg: Estimate;
  readonly keptPhosphorus_kg: Estimate;
  readonly keptPotassium_kg: Estimate;
}

const DAYS_PER_YEAR = 365;
const LB_PER_TON = 2000;

function run({ animal, count, days }: DroppingsInput, { draws }: Needs): Outcome<Droppings> {
  const row = animals.find(({ id }) => id === animal);
  if (row === undefined) throw new RangeError(`no droppings of ${animal}`);
  const lb = (row.tonsPerUnitYear * LB_PER_TON * count * days) / row.animalsPerUnit / DAYS_PER_YEAR;
  const spread = withSpread(convert(lb, 'lb', 'kg'), Math.log(spread_factor.value), positive);
  const wet = drawsOf(draws, `droppings-${animal}/mass_kg`, spread, positive);
  const of = (lbPerTon: number): Estimate => summarise(wet.map((kg) => (kg * lbPerTon) / LB_PER_TON));
  const { fresh_lbPerTon: fresh, kept_lbPerTon: kept } = row;
  return good({
    wet_kg: summarise(wet),
    nitrogen_kg: of(fresh.nitrogen),
    phosphorus_kg: of(fresh.phosphorus),
    potassium_kg: of(fresh.potassium),
    keptNitrogen_kg: of(kept.nitrogen),
    keptPhosphorus_kg: of(kept.phosphorus),
    keptPotassium_kg: of(kept.potassium),
  });
}

/** How much animals leave behind. */
export const droppings: Calculation<DroppingsInput, Droppings> = {
  id: 'droppings',
  title: 'How much animals leave behind',
  summary:
    'Takes animals and days and tells how much they leave behind, without bedding, and its nitrogen, phosphorus and potassium, fresh and after usual storage. It is what a stall gives, not what a grower picks up.',
  input: z.strictObject({
    animal: z.enum(dungAnimals),
    count: z.number().min(0.1).max(10_000),
    days: z.number().min(0.1).max(3660),
  }),
  output: z.strictObject({
    wet_kg: estimateSchema('Wet mass as excreted.'),
    nitrogen_kg: estimateSchema('Nitrogen, fresh.'),
    phosphorus_kg: estimateSchema('Phosphorus as the element, fresh.'),
    potassium_kg: estimateSchema('Potassium as the element, fresh.'),
    keptNitrogen_kg: estimateSchema('Nitrogen after storage and handling.'),
    keptPhosphorus_kg: estimateSchema('Phosphorus after storage and handling.'),
    keptPotassium_kg: estimateSchema('Potassium after storage and handling.'),
  }),
  sources: [whole, spread_factor],
  cautions: ['manure-pathogens', 'local-rules'],
  example: { animal: 'laying-hen', count: 12, days: 30 },
  run,
};
