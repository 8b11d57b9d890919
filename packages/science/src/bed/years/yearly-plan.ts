import { z } from 'zod';
import { bad, good, type Outcome } from '../../catalogue/index.ts';
import type { CautionId } from '../../caution/index.ts';
import { type Draws, summarise } from '../../estimate/index.ts';
import { type Amount, amountSchema, type OwnSizes } from '../../material/index.ts';
import { resolve, type Stuffed, stuffedShape, weigh } from '../../mix/ingredient.ts';
import type { Portion } from '../../mix/portion.ts';
import { budgetParameters } from '../budget-parameters.ts';
import { type KindRow, kindOf } from '../release.ts';

/** Something that goes on a bed every year. */
export interface Yearly extends Stuffed {
  readonly amount: Amount;
}

const MOST_STUFFS = 20;

export const planSchema: z.ZodType<readonly Yearly[]> = z
  .array(z.strictObject({ ...stuffedShape, amount: amountSchema }))
  .max(MOST_STUFFS)
  .meta({ description: 'What goes on every year.' });

/** One stuff of the plan, draw by draw. */
export interface Weighed {
  readonly material: string;
  readonly published: string;
  readonly kind: KindRow;
  readonly portions: readonly Portion[];
  readonly cautions: readonly CautionId[];
}

interface Weighing {
  readonly draws: Draws;
  readonly area_m2: number;
  readonly ownSizes?: OwnSizes | undefined;
}

/**
 * A year of the plan. Problems: as of looking up and weighing an ingredient; `bed-absurd-rate` where a year's layer is
 * deeper than beds are.
 */
export function weighPlan(
  plan: readonly Yearly[],
  { draws, area_m2, ownSizes }: Weighing,
): Outcome<readonly Weighed[]> {
  const weighed: Weighed[] = [];
  for (const [i, { amount, ...stuff }] of plan.entries()) {
    const path = `plan[${i}]`;
    const resolved = resolve(stuff, path);
    if (!resolved.ok) return resolved;
    const portions = weigh(resolved.value, amount, stuff.material, { draws, ownSizes, path });
    if (!portions.ok) return portions;
    const { published, cautions } = resolved.value;
    weighed.push({
      material: stuff.material,
      published: published.id,
      kind: kindOf(published.id),
      portions: portions.value,
      cautions,
    });
  }
  const deep_m = Float64Array.from({ length: draws.count }, (_, i) =>
    weighed.reduce((sum, { portions }) => sum + (portions[i]?.volume_m3 ?? 0) / area_m2, 0),
  );
  const deepest_m = summarise(deep_m).p50;
  const most_m = budgetParameters.absurd_m.value;
  return deepest_m > most_m
    ? bad({ code: 'bed-absurd-rate', path: 'plan', found: deepest_m.toPrecision(3), wanted: String(most_m) })
    : good(weighed);
}
