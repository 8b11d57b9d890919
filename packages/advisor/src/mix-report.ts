import type { Holding } from '@loamwright/daybook';
import {
  type Aim,
  type Fetch,
  heapLimits_degC,
  heapTriggers,
  type Judged,
  type MixBalance,
  type MixSolution,
  materialById,
  type Permit,
  type Season,
} from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { type BalanceReport, balanceReport } from './balance-report.ts';
import { type BeliefSaid, beliefWords } from './belief-words.ts';
import { countedOf } from './measured.ts';
import { materialName } from './names.ts';
import { bulk, liquid, mass, say, sayOf, smallMass, temperature } from './saying.ts';
import { tradeOffWords } from './trade-off-words.ts';

type Standing = MixSolution['standing'];
type Used = MixSolution['use'][number];
type Lack = MixSolution['lacks'][number];
type Mend = MixSolution['mends'][number];

/** Whether a material may go on a heap, in words. */
export interface PermitWords {
  readonly material: string;
  readonly permit: Permit;
  readonly said: Saying;
}

/** One material of the mix in words. */
export interface UsedWords {
  readonly material: string;
  /** Position in the stock that was asked about; null for what is to be fetched. */
  readonly stock: number | null;
  readonly measure: string;
  readonly count: number;
  readonly name: Saying;
  /** "9 buckets of straw". */
  readonly said: Saying;
  readonly permit: PermitWords;
  /** What stays behind and why; null when nothing does. */
  readonly left: Saying | null;
  /** Said where it is doubtful that there is as much of it. */
  readonly doubt: Saying | null;
}

/** What to lay, how it stands, what is short, left over, and would mend it. */
export interface MixReport extends BalanceReport {
  readonly standing: Standing;
  /** The answer as a sentence; its amounts stand in the places `stuff[i].amount` and `water`. */
  readonly answer: Saying;
  /** What goes in, in the order of the answer's `stuff`. */
  readonly use: readonly UsedWords[];
  /** What stays behind of materials that do not go in at all. */
  readonly unused: readonly UsedWords[];
  readonly water_L: number;
  readonly lacks: readonly Saying[];
  readonly mends: readonly Saying[];
  /** Common materials not proposed because they are not in season; null where nothing was passed over. */
  readonly passedOver: Saying | null;
  /** What bands and practice say about heating, with the chances: never a promise. */
  readonly heat: readonly Saying[];
  /** What is commonly held of such a mix and what has been published of it; two at the most. */
  readonly beliefs: readonly BeliefSaid[];
  /** Other mixes that are as reasonable, each with its trade-off against the first. */
  readonly others: readonly OtherWords[];
}

/** Another answer in words. */
export interface OtherWords {
  readonly aim: Aim;
  /** What it gains and what it costs, in one sentence. */
  readonly tradeOff: Saying;
  readonly answer: Saying;
}

/** Where nothing goes in there is nothing to say of it. */
const nothingLaid: BalanceReport = { judged: [], more: [], starters: [], warnings: [], cautions: [] };

/**
 * The answer of `mix-solve` in sentences.
 *
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 * @param season the one that was asked with, if any.
 */
export function mixReport(solution: MixSolution, holding: Holding, season?: Season): MixReport {
  const { standing, water_L, balance, outOfSeason } = solution;
  const words = layingWords(solution, holding);
  const use = words.filter(({ count }) => count > 0);
  return {
    standing,
    answer: answerOf(solution, use, holding),
    use,
    unused: words.filter(({ count }) => count === 0),
    water_L,
    lacks: solution.lacks.map(lackWords),
    mends: solution.mends.map((mend) => mendWords(mend, solution, holding)),
    passedOver:
      outOfSeason.length > 0 && season !== undefined
        ? sayOf('advisor.mix.passed-over', season.hemisphere, {
            materials: outOfSeason.map((id) => materialName(holding, id)),
          })
        : null,
    heat: balance === undefined ? [] : heatWords(standing, balance),
    beliefs: beliefWords({
      materials: use.map(({ material }) => holding.materials.get(material)?.described?.body.like ?? material),
      volume_m3: balance?.volume_m3.p50,
    }),
    others: solution.alternatives.map((other) => ({
      aim: other.aim,
      tradeOff: tradeOffWords(other, holding),
      answer: answerOf(
        { ...other, sizeSaid: solution.sizeSaid },
        layingWords(other, holding).filter(({ count }) => count > 0),
        holding,
      ),
    })),
    ...(balance === undefined ? nothingLaid : balanceReport(balance, holding)),
  };
}

function layingWords({ use, fetch }: Pick<MixSolution, 'use' | 'fetch'>, holding: Holding): readonly UsedWords[] {
  return [...use.map((used) => usedWords(used, holding)), ...fetch.map((fetched) => fetchedWords(fetched, holding))];
}

/** Where nobody said a size there is no place to fill. */
function stands(standing: Standing, { sizeSaid }: Pick<MixSolution, 'sizeSaid'>): string {
  return standing === 'good' && !sizeSaid ? 'good-anywhere' : standing;
}

function answerOf(
  laid: Pick<MixSolution, 'standing' | 'use' | 'water_L' | 'sizeSaid'>,
  use: readonly UsedWords[],
  holding: Holding,
): Saying {
  const { standing, water_L } = laid;
  const liquids = laid.use.filter(({ material }) => isLiquid(material, holding));
  if (standing === 'nothing' && liquids.length > 0 && liquids.length === laid.use.length) {
    return say('advisor.mix.nothing-solid', {
      materials: liquids.map(({ material }) => materialName(holding, material)),
    });
  }
  if (standing === 'nothing' || use.length === 0) return say('advisor.mix.nothing');
  const stuff = use.map(({ said }) => said);
  const verdict = sayOf('advisor.mix.verdict', stands(standing, laid));
  if (water_L === 0) return say('advisor.mix.lay-without-water', { stuff, verdict });
  return say('advisor.mix.lay', { stuff, water: liquid(water_L), verdict });
}

function isLiquid(material: string, holding: Holding): boolean {
  const published = holding.materials.get(material)?.described?.body.like ?? material;
  return materialById(published)?.particle === 'liquid';
}

/** Below this share of the draws it is worth saying that the amount was guessed. */
const SURE_ENOUGH = 0.9;

/** Less of a measure than this nobody misses. */
const LEAST_LEFT = 0.05;

function leftWords(used: Used, holding: Holding): Saying | null {
  const { material, count, left, because = 'bit' } = used;
  if (left < LEAST_LEFT || (count === 0 && isLiquid(material, holding))) return null;
  return sayOf('advisor.mix.left', because, { stuff: countedOf(holding, { ...used, count: left }) });
}

function usedWords(used: Used, holding: Holding): UsedWords {
  const { material, stock, measure, count, enough } = used;
  const amount = (of: number): Saying => countedOf(holding, { ...used, count: of });
  const name = materialName(holding, material);
  return {
    material,
    stock,
    measure,
    count,
    name,
    said: amount(count),
    permit: permitWords(used, holding),
    left: leftWords(used, holding),
    doubt:
      count > 0 && enough.met < SURE_ENOUGH * enough.of
        ? say('advisor.mix.enough', { material: name, chance: { chance: enough } })
        : null,
  };
}

function fetchedWords(fetched: Fetch, holding: Holding): UsedWords {
  const { material, measure, count } = fetched;
  return {
    material,
    stock: null,
    measure,
    count,
    name: materialName(holding, material),
    said: countedOf(holding, fetched),
    permit: permitWords(fetched, holding),
    left: null,
    doubt: null,
  };
}

/** Whether a material may go on a heap, and why. */
export function permitWords(
  { material, permit, reason }: { readonly material: string; readonly permit: Permit; readonly reason: string },
  holding: Holding,
): PermitWords {
  const said = say('advisor.mix.permit', {
    material: materialName(holding, material),
    permit: sayOf('permit', permit),
    reason: sayOf('permit.reason', reason),
  });
  return { material, permit, said };
}

function lackWords({ code, amount_kg, amount_L }: Lack): Saying {
  return sayOf('advisor.mix.lack', code, {
    amount: lackAmount(code, amount_kg ?? 0, amount_L ?? 0),
    smallest: bulk(heapTriggers.smallestHeap_m3),
  });
}

const LITRES_PER_M3 = 1000;

function lackAmount(code: Lack['code'], amount_kg: number, amount_L: number): Place {
  switch (code) {
    case 'nitrogen':
      return smallMass(amount_kg);
    case 'carbon':
      return mass(amount_kg);
    case 'water':
    case 'too-much-water':
      return liquid(amount_L);
    case 'air':
    case 'volume':
    case 'volume-to-heat':
      return bulk(amount_L / LITRES_PER_M3);
  }
}

function mendWords({ fetch, standing }: Mend, solution: MixSolution, holding: Holding): Saying {
  const onNothing = solution.use.every(({ count }) => count === 0);
  return say(onNothing ? 'advisor.mix.mend-nothing' : 'advisor.mix.mend', {
    stuff: fetch.map((one) => countedOf(holding, one)),
    outcome: sayOf('advisor.mix.then', stands(standing, solution)),
  });
}

function heatWords(standing: Standing, balance: MixBalance): readonly Saying[] {
  const ratio = balance.carbonToNitrogen_ratio;
  if (ratio === undefined) return [say('advisor.mix.heat-unknown-ratio')];
  if (standing === 'poor') return [say('advisor.mix.heat-poor')];
  const smallest = bulk(heapTriggers.smallestHeap_m3);
  const volume = bulk(balance.volume_m3);
  if (standing === 'small') return [say('advisor.mix.heat-small', { volume, smallest })];
  const chanceIn = ({ chances }: Judged): Place => ({ chance: chances.in });
  return [
    say('advisor.mix.heat', {
      smallest,
      limit: temperature(heapLimits_degC.sanitisingDay),
      days: heapTriggers.reachedWithin_days,
      ratio: chanceIn(ratio),
      moisture: chanceIn(balance.moisture_pctWet),
      air: chanceIn(balance.freeAirSpace_pctVolume),
    }),
    say('advisor.mix.heat-size', { volume }),
  ];
}
