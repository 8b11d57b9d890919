import fc from 'fast-check';
import { createDraws } from '../../estimate/index.ts';
import { allMaterials } from '../../material/index.ts';
import type { Ingredient } from '../../mix/ingredient.ts';
import { pailCover } from '../pail-cover.ts';
import type { DryStuff, FedLayer, PailCoverInput } from '../pail-input.ts';
import type { PailCover } from '../pail-output.ts';

const needs = { draws: createDraws() };

/** What goes with a pail; a mistake of the test where it can't be worked out. */
export function covered(input: PailCoverInput): PailCover {
  const outcome = pailCover.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const solids = allMaterials.filter(({ particle, carbonCounts }) => particle !== 'liquid' && carbonCounts);
const green = solids.filter((one) => one.class === 'nitrogen-rich').map(({ id }) => id);
const all = solids.map(({ id }) => id);
const dryIds = ['straw', 'autumn-leaves', 'wood-shavings', 'corrugated-cardboard', 'sawdust', 'hay-grass'];

const count = fc.double({ min: 0.25, max: 20, noNaN: true });
const measure = fc.constantFrom('pail', 'bucket-20l', 'barrow');

const ingredient = (ids: readonly string[]): fc.Arbitrary<Ingredient> =>
  fc
    .record({ material: fc.constantFrom(...ids), measure, count })
    .map((one) => ({ material: one.material, amount: { measure: one.measure, count: one.count } }));

const dry: fc.Arbitrary<DryStuff> = fc
  .record({ material: fc.constantFrom(...dryIds), count, plenty: fc.boolean() })
  .map((one) => ({
    material: one.material,
    ...(one.plenty ? {} : { amount: { measure: 'bucket-20l', count: one.count } }),
  }));

const layer: fc.Arbitrary<FedLayer> = fc
  .record({ one: ingredient(all), age_days: fc.integer({ min: 0, max: 900 }) })
  .map(({ one, age_days }) => ({ ...one, age_days }));

/** Pails of one to three materials, with what is on hand and the bin known or not. */
export const pails: fc.Arbitrary<PailCoverInput> = fc.record(
  {
    pail: fc.uniqueArray(ingredient([...green, 'kitchen-scraps']), {
      minLength: 1,
      maxLength: 3,
      selector: ({ material }) => material,
    }),
    dry: fc.uniqueArray(dry, { maxLength: 3, selector: ({ material }) => material }),
    layers: fc.array(layer, { maxLength: 6 }),
    bay: fc.constant({ width_m: 1, depth_m: 1, height_m: 1 }),
    bays: fc.constantFrom(1 as const, 2 as const, 3 as const),
    state: fc.constantFrom('working' as const, 'frozen' as const, 'thawing' as const),
    frozenFor_days: fc.integer({ min: 0, max: 120 }),
    smell: fc.constantFrom('none' as const, 'ammonia' as const, 'sour' as const),
    squeeze: fc.constantFrom('streams' as const, 'holds' as const, 'dusty' as const),
    wanted_inDays: fc.integer({ min: 0, max: 400 }),
    ahead: fc.constant({ pails_perWeek: 2, weeks: 12 }),
  },
  { requiredKeys: ['pail'] },
);
