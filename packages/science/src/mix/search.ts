import { bad, good, type Outcome } from '../catalogue/index.ts';
import type { MilpResult, MilpSolver } from '../solver/index.ts';
import type { JudgedQuantity } from './bands.ts';
import { type Leaning, leaningProgramme } from './leaning.ts';
import { mixParameters } from './parameters.ts';
import { type Portion, poured, scaled, together } from './portion.ts';
import {
  type Choice,
  type Edge,
  edgesOf,
  litreCost,
  mixProgramme,
  pull,
  stepCost,
  stepVariable,
  volumeSlack_share,
  WATER_VARIABLE,
  type Wanted,
} from './programme.ts';

/** How many steps of each choice, and how much water. */
export interface Found {
  readonly steps: readonly number[];
  readonly water_L: number;
  readonly cost: number;
}

/** Solves one mix; `whole` false gives the relaxed one. Problem: `solver-failed`. */
export function search(choices: readonly Choice[], wanted: Wanted, solver: MilpSolver, whole = true): Outcome<Found> {
  const result = solver(mixProgramme(choices, wanted, whole));
  if (result.status === 'infeasible') return failed(result.status);
  return foundIn(result, choices);
}

/** Another answer, leaning towards an aim; `undefined` where none is far enough from the others. */
export function searchLeaning(
  choices: readonly Choice[],
  wanted: Wanted,
  leaning: Leaning,
  solver: MilpSolver,
): Outcome<Found | undefined> {
  const result = solver(leaningProgramme(choices, wanted, leaning));
  return result.status === 'infeasible' ? good(undefined) : foundIn(result, choices);
}

function foundIn(
  result: Exclude<MilpResult, { readonly status: 'infeasible' }>,
  choices: readonly Choice[],
): Outcome<Found> {
  if (result.status === 'failed') return failed(result.reason);
  return good({
    steps: choices.map((_, i) => result.values[stepVariable(i)] ?? 0),
    water_L: result.values[WATER_VARIABLE] ?? 0,
    cost: result.cost,
  });
}

/** Nobody pours tenths of a litre, nor more than there is. */
export function roundWater(found: Found, { mostWater_L }: Pick<Wanted, 'mostWater_L'>): Found {
  const litres = Math.round(found.water_L);
  return { ...found, water_L: litres > mostWater_L ? Math.floor(mostWater_L) : litres };
}

function failed(found: string): Outcome<never> {
  return bad({ code: 'solver-failed', path: '', found, wanted: 'an optimum' });
}

/**
 * The nearest mix where the best is to build nothing: the same programme with the volume that the stock
 * allows, up to the wanted one, as a floor. `undefined` when there is nothing to build with.
 */
export function searchNearest(
  choices: readonly Choice[],
  wanted: Wanted,
  solver: MilpSolver,
): Outcome<Found | undefined> {
  const available_m3 = choices.reduce((sum, { step, highest }) => sum + highest * step.volume_m3, 0);
  const least_m3 = wanted.volume_m3 * (1 - volumeSlack_share(choices, wanted));
  const floor_m3 = Math.min(least_m3, available_m3 * wanted.packing_share) * (1 - ROUNDING);
  return floor_m3 > 0 ? search(choices, { ...wanted, floor_m3 }, solver) : good(undefined);
}

/** The floor must not fail by the last digit of the programme's text. */
const ROUNDING = 1e-9;

/** Everything that was found, together. */
export function portionOf(choices: readonly Choice[], { steps, water_L }: Omit<Found, 'cost'>): Portion {
  return together([...choices.map(({ step }, i) => scaled(step, steps[i] ?? 0)), poured(water_L)]);
}

/** The parts of the objective, each by what it holds against a mix. */
export const chargeIds = [
  'too-much-nitrogen',
  'too-much-carbon',
  'too-dry',
  'too-wet',
  'too-little-air',
  'too-open',
  'too-light',
  'too-heavy',
  'too-little',
  'bay-full',
  'not-needed',
] as const;
export type ChargeId = (typeof chargeIds)[number];

const chargeOfEdge: Readonly<Record<JudgedQuantity, Readonly<Record<Edge['side'], ChargeId>>>> = {
  carbonToNitrogen_ratio: { low: 'too-much-nitrogen', high: 'too-much-carbon' },
  moisture_pctWet: { low: 'too-dry', high: 'too-wet' },
  freeAirSpace_pctVolume: { low: 'too-little-air', high: 'too-open' },
  density_kgPerM3AsIs: { low: 'too-light', high: 'too-heavy' },
};

/** The objective of a mix in its parts: the same sum that the programme minimises. */
function charges(
  choices: readonly Choice[],
  found: Omit<Found, 'cost'>,
  wanted: Wanted,
): ReadonlyMap<ChargeId, number> {
  const total = portionOf(choices, found);
  const slack = volumeSlack_share(choices, wanted);
  const { volumeWeight, overfullWeight } = mixParameters.solver;
  const filled_share = (wanted.packing_share * total.volume_m3) / wanted.volume_m3;
  const materials = choices.reduce((sum, choice, i) => sum + stepCost(choice, wanted) * (found.steps[i] ?? 0), 0);
  const parts = new Map<ChargeId, number>([
    ['too-little', wanted.fills ? volumeWeight.value * Math.max(0, 1 - slack - filled_share) : 0],
    ['bay-full', overfullWeight.value * Math.max(0, filled_share - 1 - slack)],
    ['not-needed', materials + litreCost(wanted) * found.water_L],
  ]);
  for (const edge of edgesOf(wanted.goals)) {
    const id = chargeOfEdge[edge.quantity][edge.side];
    parts.set(id, (parts.get(id) ?? 0) + edge.weight * Math.max(0, pull(edge, total, wanted)));
  }
  return parts;
}

/** The whole objective of a mix. */
export function costOf(choices: readonly Choice[], found: Omit<Found, 'cost'>, wanted: Wanted): number {
  return [...charges(choices, found, wanted).values()].reduce((sum, cost) => sum + cost, 0);
}

/** Why one more step of a choice does not go in: the part of the objective that would grow most. */
export function whyNoMore(choices: readonly Choice[], found: Found, wanted: Wanted, index: number): ChargeId {
  const before = charges(choices, found, wanted);
  const more = { ...found, steps: found.steps.map((steps, i) => (i === index ? steps + 1 : steps)) };
  const growth = [...charges(choices, more, wanted)].map(([id, cost]) => ({ id, grown: cost - (before.get(id) ?? 0) }));
  return growth.reduce((most, one) => (one.grown > most.grown ? one : most)).id;
}
