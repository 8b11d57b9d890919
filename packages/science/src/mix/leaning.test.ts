import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { highsSolver, type MilpSolver } from '../solver/index.ts';
import { type Aim, aims, type Leaning } from './leaning.ts';
import { mixParameters } from './parameters.ts';
import type { Portion } from './portion.ts';
import type { Choice } from './programme.ts';
import { portionOf, search, searchLeaning } from './search.ts';
import { anyProgramme, combinations, leastOverWater, objective } from './testing/programmes.ts';

const solver: MilpSolver = highsSolver(await loadHighs());

/** Dry mass in common by its definition: for each kind the lesser of the two. */
function common_kg(
  ours: readonly number[],
  theirs: readonly number[],
  choices: readonly Choice[],
  kinds: readonly string[],
): number {
  const dryOf = (steps: readonly number[], kind: string): number =>
    choices.reduce((sum, { step }, i) => sum + (kinds[i] === kind ? step.dry_kg * (steps[i] ?? 0) : 0), 0);
  return [...new Set(kinds)].reduce((sum, kind) => sum + Math.min(dryOf(ours, kind), dryOf(theirs, kind)), 0);
}

function dry_kg(steps: readonly number[], choices: readonly Choice[]): number {
  return choices.reduce((sum, { step }, i) => sum + step.dry_kg * (steps[i] ?? 0), 0);
}

/**
 * The leaning objective worked out afresh from `docs/models/mix-solve.md`: the plain one, less 5 times the rotting
 * carbon over the first's, or plus 10 times the nitrogen at risk over the first's nitrogen (spare beyond 1 in 30 of
 * the rotting carbon, or beyond 1 in 17 of the carbon that stays).
 */
function leaningObjective(aim: Aim, first: Portion, steps: readonly number[], choices: readonly Choice[]): number {
  const of = (key: keyof Portion): number => choices.reduce((sum, { step }, i) => sum + step[key] * (steps[i] ?? 0), 0);
  if (aim === 'hottest') return (-5 * of('degradableCarbon_kg')) / first.degradableCarbon_kg;
  const early = of('availableNitrogen_kg') - of('degradableCarbon_kg') / 30;
  const late = of('nitrogen_kg') - (of('carbon_kg') - of('degradableCarbon_kg')) / 17;
  return (10 * Math.max(0, early, late)) / first.nitrogen_kg;
}

/** What the search may stop short of, and a millionth for the solver's own tolerance. */
const GAP = mixParameters.alternatives.gap.value;
const TOLERANCE = 1e-6;

describe('another answer', () => {
  /** In the first eleven of these stocks there is one to be found, in the last three none; 40 were looked through. */
  const seeds = [2, 4, 6, 8, 10, 11, 14, 19, 20, 29, 36, 1, 3, 13];
  const cases = seeds.flatMap((seed) => aims.map((aim): [Aim, number] => [aim, seed]));

  it.each(cases)('%s: nothing that differs enough is better by more than the gap (seed %i)', (aim, seed) => {
    const { choices, wanted } = anyProgramme(seed, 4, 5);
    const found = search(choices, wanted, solver);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    const first = portionOf(choices, found.value);
    // The second and third choice are two lots of one stuff.
    const kinds = ['a', 'b', 'b', 'c'];
    const apartFrom = [found.value.steps];
    const leaning: Leaning = { aim, first, kinds, apartFrom, fetchedFrom: choices.length };
    const other = searchLeaning(choices, wanted, leaning, solver);
    if (!other.ok) throw new Error(JSON.stringify(other.problems));
    const isApart = (steps: readonly number[]): boolean =>
      common_kg(steps, found.value.steps, choices, kinds) <=
      (2 / 3) * Math.min(dry_kg(steps, choices), dry_kg(found.value.steps, choices)) + TOLERANCE;
    const costOf = (steps: readonly number[]): number =>
      leastOverWater((water_L) => objective(steps, water_L, choices, wanted), wanted.mostWater_L) +
      leaningObjective(aim, first, steps, choices);
    const apart = combinations(choices).filter(isApart);
    if (other.value === undefined) expect(apart).toEqual([]);
    else {
      expect(isApart(other.value.steps)).toBe(true);
      const least = Math.min(...apart.map(costOf));
      expect(costOf(other.value.steps)).toBeLessThanOrEqual(least + GAP + TOLERANCE);
    }
  });

  it('the weights are those this test was written with', () => {
    const { heatWeight, nitrogenWeight, apart_share, gap } = mixParameters.alternatives;
    expect([heatWeight.value, nitrogenWeight.value, gap.value]).toEqual([5, 10, 0.1]);
    expect(apart_share.value).toBeCloseTo(1 / 3, 12);
    expect([mixParameters.availableRatio.value, mixParameters.finalRatio.high]).toEqual([30, 17]);
  });
});
