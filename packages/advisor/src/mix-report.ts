import type { Holding } from '@loamwright/daybook';
import {
  type CautionId,
  heapLimits_degC,
  heapTriggers,
  type Judged,
  type MixBalance,
  type MixSolution,
  type Permit,
} from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { type BeliefSaid, beliefWords } from './belief-words.ts';
import { countedOf } from './measured.ts';
import { materialName } from './names.ts';
import { bulk, density, liquid, mass, say, sayOf, smallMass, temperature } from './saying.ts';

type Standing = MixSolution['standing'];
type Used = MixSolution['use'][number];
type Lack = MixSolution['lacks'][number];
type Mend = MixSolution['mends'][number];
type Warning = MixBalance['warnings'][number];

/** The figures of a mix that are judged against bands. */
export type JudgedQuantity =
  | 'carbonToNitrogen_ratio'
  | 'moisture_pctWet'
  | 'freeAirSpace_pctVolume'
  | 'density_kgPerM3AsIs';

/** Whether a material may go on a heap, in words. */
export interface PermitWords {
  readonly material: string;
  readonly permit: Permit;
  readonly said: Saying;
}

/** One material of the mix in words. */
export interface UsedWords {
  readonly material: string;
  /** Position in the stock that was asked about. */
  readonly stock: number;
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

/** One figure of the mix, judged, with the data behind it. */
export interface JudgedWords {
  readonly quantity: JudgedQuantity;
  readonly judged: Judged;
  readonly said: Saying;
}

/** What to lay, how it stands, what is short, left over, and would mend it. */
export interface MixReport {
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
  readonly judged: readonly JudgedWords[];
  /** What bands and practice say about heating, with the chances: never a promise. */
  readonly heat: readonly Saying[];
  readonly warnings: readonly Saying[];
  /** What is commonly held of such a mix and what has been published of it; two at the most. */
  readonly beliefs: readonly BeliefSaid[];
  readonly cautions: readonly CautionId[];
}

/**
 * The answer of `mix-solve` in sentences.
 *
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 */
export function mixReport(solution: MixSolution, holding: Holding): MixReport {
  const { standing, water_L, balance } = solution;
  const words = solution.use.map((used) => usedWords(used, holding));
  const use = words.filter(({ count }) => count > 0);
  return {
    standing,
    answer: answerOf(standing, use, water_L),
    use,
    unused: words.filter(({ count }) => count === 0),
    water_L,
    lacks: solution.lacks.map(lackWords),
    mends: solution.mends.map((mend) => mendWords(mend, holding)),
    judged: balance === undefined ? [] : judgedWords(balance),
    heat: balance === undefined ? [] : heatWords(standing, balance),
    warnings: balance === undefined ? [] : balance.warnings.map((warning) => warningWords(warning, holding)),
    beliefs: beliefWords({
      materials: use.map(({ material }) => holding.materials.get(material)?.described?.body.like ?? material),
      volume_m3: balance?.volume_m3.p50,
    }),
    cautions: balance?.cautions ?? [],
  };
}

function answerOf(standing: Standing, use: readonly UsedWords[], water_L: number): Saying {
  if (standing === 'nothing' || use.length === 0) return say('advisor.mix.nothing');
  const stuff = use.map(({ said }) => said);
  const verdict = sayOf('advisor.mix.verdict', standing);
  if (water_L === 0) return say('advisor.mix.lay-without-water', { stuff, verdict });
  return say('advisor.mix.lay', { stuff, water: liquid(water_L), verdict });
}

/** Below this share of the draws it is worth saying that the amount was guessed. */
const SURE_ENOUGH = 0.9;

function usedWords(used: Used, holding: Holding): UsedWords {
  const { material, stock, measure, count, left, because, enough } = used;
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
    left: left > 0 && because !== undefined ? sayOf('advisor.mix.left', because, { stuff: amount(left) }) : null,
    doubt:
      count > 0 && enough.met < SURE_ENOUGH * enough.of
        ? say('advisor.mix.enough', { material: name, chance: { chance: enough } })
        : null,
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
  return sayOf('advisor.mix.lack', code, { amount: lackAmount(code, amount_kg ?? 0, amount_L ?? 0) });
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
      return bulk(amount_L / LITRES_PER_M3);
  }
}

function mendWords({ fetch, standing }: Mend, holding: Holding): Saying {
  return say('advisor.mix.mend', {
    stuff: fetch.map((one) => countedOf(holding, one)),
    outcome: sayOf('advisor.mix.then', standing),
  });
}

const judgedQuantities: readonly JudgedQuantity[] = [
  'carbonToNitrogen_ratio',
  'moisture_pctWet',
  'freeAirSpace_pctVolume',
  'density_kgPerM3AsIs',
];

function judgedWords(balance: MixBalance): readonly JudgedWords[] {
  return judgedQuantities.flatMap((quantity): readonly JudgedWords[] => {
    const judged = balance[quantity];
    if (judged === undefined) return [];
    const { p10, p50, p90 } = judged.value;
    const places = {
      likely: sensible(p50),
      low: sensible(p10),
      high: sensible(p90),
      density: density(judged.value),
      verdict: sayOf('advisor.mix.is', sideOf(judged)),
      chance: { chance: judged.chances.in },
    };
    return [{ quantity, judged, said: sayOf('advisor.mix.judged', quantity, places) }];
  });
}

function sideOf({ verdict, lean }: Judged): string {
  if (verdict !== 'in') return verdict;
  if (lean === 'in') return 'in';
  return lean === 'too-low' ? 'edge-low' : 'edge-high';
}

/** Two digits: no figure of a mix is better known. */
function sensible(value: number): number {
  return Number(value.toPrecision(2));
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

function warningWords({ code, materials }: Warning, holding: Holding): Saying {
  return sayOf('advisor.mix.warning', code, { materials: materials.map((id) => materialName(holding, id)) });
}
