import { good, type Outcome } from '../catalogue/index.ts';
import type { Draws } from '../estimate/index.ts';
import type { MilpSolver } from '../solver/index.ts';
import { balanceFor, type Chosen, fetchedOf, kindsOf, usedElsewhere } from './answer.ts';
import { type Aim, aims } from './leaning.ts';
import type { Extra } from './mend.ts';
import type { MixBalance } from './mix-balance.ts';
import { mixParameters } from './parameters.ts';
import { portionOf, roundWater, searchLeaning } from './search.ts';
import type { Alternative, MixSolveInput, TradeOff } from './solution.ts';
import { standingOf } from './standing.ts';

/** What seeking other answers needs besides the first. */
export interface Seeking {
  readonly first: Chosen;
  readonly balance: MixBalance;
  readonly candidates: readonly Extra[];
  readonly input: MixSolveInput;
  readonly draws: Draws;
  readonly solver: MilpSolver;
}

/**
 * Up to two answers beside the first, which fetches nothing: the hottest, and the one that keeps most
 * nitrogen; each of at least a third other stuff than any before it, reasonable, and better at its aim by
 * enough to tell. From what is on hand; where that allows none, with what can be fetched.
 */
export function alternativesTo(seeking: Seeking): Outcome<readonly Alternative[]> {
  const found: Alternative[] = [];
  const apartFrom: (readonly number[])[] = [seeking.first.found.steps];
  for (const aim of aims) {
    for (const extras of [[], seeking.candidates]) {
      const other = seek(aim, extras, apartFrom, seeking);
      if (!other.ok) return other;
      if (other.value === undefined) continue;
      found.push(other.value.alternative);
      apartFrom.push(other.value.chosen.found.steps);
      break;
    }
  }
  return good(found);
}

function seek(
  aim: Aim,
  extras: readonly Extra[],
  apartFrom: readonly (readonly number[])[],
  { first, balance, input, draws, solver }: Seeking,
): Outcome<{ readonly chosen: Chosen; readonly alternative: Alternative } | undefined> {
  const { shelves, wanted } = first;
  const choices = [...shelves, ...extras].map(({ choice }) => choice);
  const leaning = {
    aim,
    first: portionOf(first.choices, first.found),
    kinds: kindsOf({ shelves, extras }),
    apartFrom,
    fetchedFrom: shelves.length,
  };
  const found = searchLeaning(choices, wanted, leaning, solver);
  if (!found.ok) return found;
  if (found.value === undefined) return good(undefined);
  const chosen: Chosen = { shelves, extras, choices, wanted, found: roundWater(found.value, wanted) };
  const other = balanceFor(chosen, input, draws);
  if (!other.ok) return other;
  const standing = standingOf({ ...chosen, balance: other.value });
  if ((standing !== 'good' && standing !== 'fair') || other.value === undefined) return good(undefined);
  const standsLess = standing === 'fair' && standingOf({ ...first, balance }) === 'good';
  const tradeOff = { ...tradeOffOf(other.value, balance), standsLess };
  if (!isWorthTelling(aim, tradeOff)) return good(undefined);
  return good({
    chosen,
    alternative: {
      aim,
      standing,
      use: usedElsewhere(chosen, input, draws),
      fetch: fetchedOf(chosen),
      water_L: chosen.found.water_L,
      balance: other.value,
      tradeOff,
    },
  });
}

/** On likely values; but nitrogen at risk where it comes out badly, one time in ten. */
function tradeOffOf(other: MixBalance, first: MixBalance): Omit<TradeOff, 'standsLess'> {
  const kept = ({ nitrogen_kg, nitrogenAtRisk_kg }: MixBalance): number => nitrogen_kg.p50 - nitrogenAtRisk_kg.p50;
  return {
    heat_times: other.heat_MJPerM3.p50 / first.heat_MJPerM3.p50,
    nitrogenAtRiskMore_pctNitrogen:
      (other.nitrogenAtRisk_pctNitrogen?.p90 ?? 0) - (first.nitrogenAtRisk_pctNitrogen?.p90 ?? 0),
    nitrogenKept_times: kept(first) > 0 ? kept(other) / kept(first) : 1,
    mass_times: other.wet_kg.p50 / first.wet_kg.p50,
    airLess_pctVolume: first.freeAirSpace_pctVolume.value.p50 - other.freeAirSpace_pctVolume.value.p50,
  };
}

function isWorthTelling(aim: Aim, { heat_times, nitrogenAtRiskMore_pctNitrogen }: TradeOff): boolean {
  const { hotter_times, keptMore_pctNitrogen } = mixParameters.alternatives;
  return aim === 'hottest'
    ? heat_times >= hotter_times.value
    : nitrogenAtRiskMore_pctNitrogen <= -keptMore_pctNitrogen.value;
}
