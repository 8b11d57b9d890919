import { good, type Outcome } from '../catalogue/index.ts';
import type { Draws } from '../estimate/index.ts';
import type { MilpSolver } from '../solver/index.ts';
import { balanceFor, countsOf, fetchOf } from './answer.ts';
import { type Counted, type Extra, type Mending, mend } from './mend.ts';
import type { MixBalance } from './mix-balance.ts';
import { mixParameters } from './parameters.ts';
import type { Choice, Wanted } from './programme.ts';
import { costOf, type Found, roundWater, search } from './search.ts';
import type { Mend, MixSolveInput } from './solution.ts';
import { overfills, type Standing, standingOf } from './standing.ts';
import { type Shelf, type Step, stepMeasures, USUAL_MEASURE } from './stock.ts';

/** The best mix there is of the stock, which is to be mended. */
export interface ToMend {
  readonly shelves: readonly Shelf[];
  readonly wanted: Wanted;
  readonly best: Found;
}

interface With {
  readonly input: MixSolveInput;
  readonly draws: Draws;
  readonly solver: MilpSolver;
}

/** A mending in amounts that a person would fetch, with the figures of the mix there would be. */
interface Told extends Mending {
  readonly shelves: readonly Shelf[];
  readonly balance: MixBalance | undefined;
  readonly standing: Standing;
}

/**
 * What would mend a mix that does not stand well. A poor mix is mended as it stands, with the least of
 * one material that brings it into its bands, if there is one and the bay has room for it; else, and where a mix is
 * right but too little, anew: what to have besides so that the best mix fills the bay. Each is told by the figures
 * of the mix there would be, as that mix would be if it were asked about.
 */
export function mendsFor(
  solved: ToMend,
  standing: Standing,
  candidates: readonly Extra[],
  { input, draws, solver }: With,
): Outcome<readonly Mend[]> {
  if (input.mend === false) return good([]);
  const told = new Map<Mending, Outcome<Told>>();
  const then = (mending: Mending, shelves: readonly Shelf[]): Outcome<Told> => {
    const before = told.get(mending);
    if (before !== undefined) return before;
    const now = inRoundCounts(mending, shelves, solved.wanted, { input, draws, solver });
    told.set(mending, now);
    return now;
  };
  const tell = (mendings: readonly Mending[], shelves: readonly Shelf[]): Outcome<readonly Mend[]> => {
    const all: Told[] = [];
    for (const mending of mendings) {
      const one = then(mending, shelves);
      if (!one.ok) return one;
      all.push(one.value);
    }
    return good(all.map(mendOf));
  };
  const common = { candidates, solver };
  if (standing === 'poor') {
    const shelves = solved.shelves.map((shelf, i) => asUsed(shelf, solved.best.steps[i] ?? 0));
    const isEnough = (mending: Mending): boolean => {
      const one = then(mending, shelves);
      return one.ok && one.value.standing !== 'poor' && !overfills({ ...one.value, wanted: solved.wanted });
    };
    const wanted = { ...solved.wanted, fills: false };
    const cost = costOf(
      shelves.map(({ choice }) => choice),
      solved.best,
      wanted,
    );
    const mended = mend({ ...common, shelves, wanted, best: { ...solved.best, cost }, isEnough, pairs: false });
    if (!mended.ok) return mended;
    const enough = mended.value.filter(isEnough);
    if (enough.length > 0) return tell(enough, shelves);
  }
  const isEnough = (mending: Mending): boolean => {
    const one = then(mending, solved.shelves);
    return one.ok && one.value.standing === 'good';
  };
  const mended = mend({ ...common, ...solved, isEnough, pairs: true });
  return mended.ok ? tell(mended.value, solved.shelves) : mended;
}

function mendOf(told: Told): Mend {
  const { extras, found, shelves, standing } = told;
  return {
    fetch: extras.map(({ extra, steps }) => fetchOf(extra, steps)),
    counts: countsOf({ shelves, extras: extras.map(({ extra }) => extra), found }),
    water_L: found.water_L,
    standing,
  };
}

/** A shelf of which just so many steps go in. */
function asUsed(shelf: Shelf, steps: number): Shelf {
  return { ...shelf, choice: { ...shelf.choice, lowest: steps, highest: steps } };
}

/** The same with counts that a person would fetch, and the rest of the mix fitted to them. */
function inRoundCounts(
  mending: Mending,
  shelves: readonly Shelf[],
  wanted: Wanted,
  { input, draws, solver }: With,
): Outcome<Told> {
  const extras = mending.extras.map(({ extra, steps }) => ({ extra, steps: roundSteps(extra, steps) }));
  const fixed = extras.map(({ extra, steps }): Choice => ({ ...extra.choice, lowest: steps, highest: steps }));
  const choices = [...shelves.map(({ choice }) => choice), ...fixed];
  const sought = search(choices, wanted, solver);
  if (!sought.ok) return sought;
  const found = roundWater(sought.value, wanted);
  const chosen = { shelves, extras: extras.map(({ extra }) => extra), choices, wanted, found };
  const balance = balanceFor(chosen, input, draws);
  if (!balance.ok) return balance;
  const standing = standingOf({ ...chosen, balance: balance.value });
  return good({ extras, found, choices, shelves, balance: balance.value, standing });
}

/** Halves of a few, whole ones of some, fives of many. */
function roundSteps({ measuresPerStep }: Extra, steps: number): number {
  const count = steps * measuresPerStep;
  const to = count < FEW ? measuresPerStep : count < MANY ? 1 : FIVE;
  return Math.max(1, Math.round((Math.round(count / to) * to) / measuresPerStep));
}

const FEW = 5;
const MANY = 20;
const FIVE = 5;

/**
 * What a person counts in who fetches a material: barrows of bulky stuff and buckets of the rest, such as the grower
 * counts in; where the heap is small, all of it in buckets.
 */
export function fetching(
  { shelves, wanted, best }: ToMend,
  { step, standing }: { readonly step: Step; readonly standing: Standing },
): (material: string) => Counted {
  const ofKind = (kind: string): string | undefined =>
    shelves.map(({ counting }) => counting.measure).find((measure) => measure.startsWith(kind));
  const bucket = ofKind('bucket') ?? USUAL_MEASURE;
  const laid_m3 = shelves.reduce((sum, { choice }, i) => sum + (best.steps[i] ?? 0) * choice.step.volume_m3, 0);
  const isLarge = (standing === 'poor' ? laid_m3 : wanted.volume_m3) >= mixParameters.barrowsFrom_m3.value;
  const barrow = ofKind('barrow') ?? (isLarge ? 'barrow' : bucket);
  const byBucket = (material: string): boolean => mixParameters.byTheBucket.some((row) => row.material === material);
  return (material) => ({
    measure: byBucket(material) ? bucket : barrow,
    measuresPerStep: stepMeasures[step],
  });
}
