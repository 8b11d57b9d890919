import { bad, type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { materialAt } from '../material/index.ts';
import type { MilpSolver } from '../solver/index.ts';
import { alternativesTo } from './alternatives.ts';
import { balanceFor, type Chosen, usedOf } from './answer.ts';
import { bandTable, type Goal, type JudgedQuantity } from './bands.ts';
import { candidatesOf } from './mend.ts';
import { fetching, mendsFor } from './mends.ts';
import type { Goals } from './mix-input.ts';
import { mixParameters } from './parameters.ts';
import { type Choice, referenceDryOf_kgPerM3, type Wanted } from './programme.ts';
import { type Found, roundWater, search, searchNearest } from './search.ts';
import { commonMends } from './season.ts';
import { type MixSolution, type MixSolveInput, mixSolutionSchema, mixSolveInputSchema } from './solution.ts';
import { mixCautionIds, mixSources } from './sources.ts';
import { lacksOf, type Standing, standingOf } from './standing.ts';
import { type Shelf, type Step, shelve } from './stock.ts';

/** The quantities the solver judges together with the volume, unless the grower names others too. */
const solvedFor: readonly JudgedQuantity[] = ['carbonToNitrogen_ratio', 'moisture_pctWet', 'freeAirSpace_pctVolume'];

function goalsOf(goals: Goals | undefined): Wanted['goals'] {
  const own = (Object.keys(goals ?? {}) as JudgedQuantity[]).filter((quantity) => !solvedFor.includes(quantity));
  return [...solvedFor, ...own].map((quantity): readonly [JudgedQuantity, Goal] => {
    const { preferred, reasonable } = goals?.[quantity] ?? bandTable.goals[quantity];
    return [quantity, { preferred, reasonable }];
  });
}

function wantedOf(input: MixSolveInput, choices: readonly Choice[]): Wanted {
  const { bay } = input;
  const packing_share = input.packing_share ?? mixParameters.packing_share.estimate.p50;
  const ofBay = bay === undefined ? undefined : bay.width_m * bay.depth_m * bay.height_m;
  return {
    volume_m3: input.wanted_m3 ?? ofBay ?? mixParameters.wantedVolume_m3.value,
    goals: goalsOf(input.goals),
    packing_share,
    mostWater_L: input.mostWater_L ?? Number.POSITIVE_INFINITY,
    floor_m3: 0,
    fills: true,
    referenceDry_kgPerM3: referenceDryOf_kgPerM3(choices, packing_share),
  };
}

interface Solved {
  readonly shelves: readonly Shelf[];
  readonly choices: readonly Choice[];
  readonly wanted: Wanted;
  readonly step: Step;
  readonly best: Found;
}

/** The best mix in the wanted steps; where whole measures give nothing, in half ones; else the nearest. */
function solveStock(input: MixSolveInput, solver: MilpSolver): Outcome<Solved> {
  const steps: readonly Step[] = input.step === 'half' ? ['half'] : ['whole', 'half'];
  let solved: Solved | undefined;
  for (const step of steps) {
    const shelved = shelve(input.stock, step, input.ownSizes);
    if (!shelved.ok) return shelved;
    const shelves = shelved.value;
    const choices = shelves.map(({ choice }) => choice);
    const wanted = wantedOf(input, choices);
    const found = search(choices, wanted, solver);
    if (!found.ok) return found;
    if (found.value.steps.some((count) => count > 0)) {
      return good({ shelves, choices, wanted, step, best: roundWater(found.value, wanted) });
    }
    solved ??= { shelves, choices, wanted, step, best: found.value };
  }
  if (solved === undefined) throw new RangeError('there is always a step to solve in');
  const nearest = searchNearest(solved.choices, solved.wanted, solver);
  if (!nearest.ok) return nearest;
  return good({ ...solved, best: roundWater(nearest.value ?? solved.best, solved.wanted) });
}

/** The mix that fits the wanted bands and volume best, from what is on hand; always an answer. */
function solve(input: MixSolveInput, needs: Needs): Outcome<MixSolution> {
  const { solver, draws } = needs;
  if (solver === undefined) return bad({ code: 'no-solver', path: 'mix-solve', found: '', wanted: 'a solver' });
  const unknown = (input.candidates ?? []).map((id, i) => materialAt(id, `candidates[${i}]`)).find(({ ok }) => !ok);
  if (unknown !== undefined && !unknown.ok) return unknown;
  const solved = solveStock(input, solver);
  if (!solved.ok) return solved;
  const { shelves, choices, wanted, best } = solved.value;
  const first: Chosen = { shelves, extras: [], choices, wanted, found: best };
  const balance = balanceFor(first, input, draws);
  if (!balance.ok) return balance;
  const stood = { ...first, balance: balance.value };
  const standing = standingOf(stood);
  const isSizeSaid = input.bay !== undefined || input.wanted_m3 !== undefined;
  const { mends: common, outOfSeason } = commonMends(input.season);
  const onHand = shelves.map(({ published }) => published.id);
  const candidates = candidatesOf({
    ids: input.candidates ?? common,
    onHand,
    countedIn: fetching(solved.value, { step: solved.value.step, standing }),
    wanted,
    ownSizes: input.ownSizes,
  });
  if (!candidates.ok) return candidates;
  const mends = isWellOff(standing)
    ? good([])
    : mendsFor(solved.value, standing, candidates.value, { input, draws, solver });
  if (!mends.ok) return mends;
  const others =
    balance.value === undefined || !isWellOff(standing) || input.alternatives === false
      ? good([])
      : alternativesTo({ first, balance: balance.value, candidates: candidates.value, input, draws, solver });
  if (!others.ok) return others;
  const isToFetch = mends.value.length > 0 || others.value.some(({ fetch }) => fetch.length > 0);
  return good({
    standing,
    wanted_m3: wanted.volume_m3,
    sizeSaid: isSizeSaid,
    use: usedOf(first, input, draws),
    fetch: [],
    water_L: best.water_L,
    ...(balance.value === undefined ? {} : { balance: balance.value }),
    lacks: lacksOf(stood, isSizeSaid),
    mends: mends.value,
    alternatives: others.value,
    outOfSeason: isToFetch && input.candidates === undefined ? outOfSeason.filter((id) => !onHand.includes(id)) : [],
    cost: best.cost,
  });
}

function isWellOff(standing: Standing): boolean {
  return standing === 'good' || standing === 'fair';
}

export const mixSolve: Calculation<MixSolveInput, MixSolution> = {
  id: 'mix-solve',
  title: 'The best mix from what is on hand',
  summary:
    'How many measures of each material on hand, and how much water, to come nearest to the wanted C:N, moisture, air space and volume together; what that leaves over or lacks; and which other material would mend it. Bands are soft, the grower’s limits are hard, and there is always an answer.',
  input: mixSolveInputSchema,
  output: mixSolutionSchema,
  sources: mixSources,
  cautions: mixCautionIds,
  example: {
    stock: [
      { material: 'straw', amount: { measure: 'barrow', count: 8 } },
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 4 } },
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 3 } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: 3 } },
      { material: 'apple-pomace', amount: { measure: 'bucket-20l', count: 6 } },
    ],
    bay: { width_m: 1, depth_m: 1, height_m: 1 },
  },
  run: solve,
};
