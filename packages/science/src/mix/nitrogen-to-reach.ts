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
import { nitrogenToReach as neededNitrogen } from './balance.ts';
import { type MixInput, mixShape, weighMix } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { mixCautionIds, mixSources } from './sources.ts';

export interface NitrogenToReachInput extends MixInput {
  /** C:N to reach. */
  readonly goal_ratio: number;
}

export interface NitrogenToReach {
  /** Nitrogen to add, kg; none in the draws that have enough. */
  readonly nitrogen_kg: Estimate;
  /** Draws in which nitrogen is lacking. */
  readonly lacks: Chance;
  /** The same as things that can be bought, kg of each alone. */
  readonly bought: readonly { readonly id: string; readonly mass_kg: Estimate }[];
  readonly cautions: readonly CautionId[];
}

const { fertilisers, nitrogenGoals } = mixParameters;

/** C:N to which nitrogen is commonly given: the least of use, and as much as does good; higher for woody stuff. */
export const nitrogenGoals_ratio: Readonly<Record<'leafy' | 'woody', { readonly high: number; readonly low: number }>> =
  nitrogenGoals;

/** Nitrogen in what is sold, % as it is. @throws RangeError for what is not in the table. */
export function nitrogenGrade_pctAsIs(id: string): number {
  const sold = fertilisers.find((one) => one.id === id);
  if (sold === undefined) throw new RangeError(`${id} is not among what is sold`);
  return sold.nitrogen_pctAsIs;
}

function run(input: NitrogenToReachInput, { draws }: { readonly draws: Draws }): Outcome<NitrogenToReach> {
  const mix = weighMix(input, draws);
  if (!mix.ok) return mix;
  const { goal_ratio } = input;
  const needed_kg = Float64Array.from(mix.value.total, ({ carbon_kg, nitrogen_kg }) =>
    neededNitrogen({ carbon: carbon_kg, nitrogen: nitrogen_kg, goal_ratio }),
  );
  const nitrogen_kg = needed_kg.map((kg) => Math.max(0, kg));
  return good({
    nitrogen_kg: summarise(nitrogen_kg),
    lacks: chance(needed_kg, (kg) => kg > 0),
    bought: fertilisers.map(({ id, nitrogen_pctAsIs }) => ({
      id,
      mass_kg: summarise(nitrogen_kg.map((kg) => (100 * kg) / nitrogen_pctAsIs)),
    })),
    cautions: inOrder(['ammonia', ...mix.value.ingredients.flatMap(({ cautions }) => cautions)]),
  });
}

export const nitrogenToReach: Calculation<NitrogenToReachInput, NitrogenToReach> = {
  id: 'nitrogen-to-reach',
  title: 'Nitrogen to add',
  summary:
    'Nitrogen that brings a woody or leafy heap to a C:N, in kilograms and as what the shop sells. Give half, mix, water, and give the rest after a week: at once much of it leaves as ammonia, and coarse wood gives its carbon slowly. Manure or grass do the same.',
  input: z.strictObject({ ...mixShape, goal_ratio: z.number().min(10).max(200) }),
  output: z.strictObject({
    nitrogen_kg: estimateSchema('Nitrogen to add, kg.'),
    lacks: chanceSchema,
    bought: z.array(z.strictObject({ id: z.string(), mass_kg: estimateSchema('Mass as sold, kg.') })),
    cautions: z.array(z.enum(mixCautionIds)),
  }),
  sources: [
    { source: 'japan-soil-making', place: 'C / R - N, as a share of the stuff', mark: 'seen' },
    ...fertilisers,
    ...mixSources,
  ],
  cautions: mixCautionIds,
  example: {
    ingredients: [{ material: 'wood-chips', amount: { measure: 'cubic-yard', count: 1 } }],
    goal_ratio: 60,
  },
  run,
};
