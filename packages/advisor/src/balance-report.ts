import type { Holding } from '@loamwright/daybook';
import { type CautionId, type Estimate, type Judged, type MixBalance, thickestFines_m } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { materialName } from './names.ts';
import { bulk, density, depth, say, sayOf } from './saying.ts';

type Warning = MixBalance['warnings'][number];

/** The figures of a mix that are judged against bands. */
export type JudgedQuantity =
  | 'carbonToNitrogen_ratio'
  | 'moisture_pctWet'
  | 'freeAirSpace_pctVolume'
  | 'density_kgPerM3AsIs';

/** One figure of the mix, judged, with the data behind it. */
export interface JudgedWords {
  readonly quantity: JudgedQuantity;
  readonly judged: Judged;
  readonly said: Saying;
}

/** What a mix is, in sentences. */
export interface BalanceReport {
  readonly judged: readonly JudgedWords[];
  /** Further figures and tendencies, each with what it rests on: second to the judged ones. */
  readonly more: readonly Saying[];
  /** What is in it that is said to start a heap, and what trials bear out. */
  readonly starters: readonly Saying[];
  readonly warnings: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/**
 * The answer of `mix-balance` in sentences.
 *
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 */
export function balanceReport(balance: MixBalance, holding: Holding): BalanceReport {
  return {
    judged: judgedWords(balance),
    more: moreWords(balance, holding),
    starters: balance.starters.map(({ id, materials, evidence }) =>
      sayOf('advisor.mix.starter', id, {
        materials: namesOf(materials, holding),
        evidence: sayOf('advisor.mix.evidence', evidence),
      }),
    ),
    warnings: balance.warnings.map((warning) => warningWords(warning, holding)),
    cautions: balance.cautions,
  };
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
    const places = {
      ...ranged(judged.value),
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

/** An estimate as plain figures of two digits: no figure of a mix is better known. */
function ranged({ p10, p50, p90 }: Estimate): Readonly<Record<'likely' | 'low' | 'high', number>> {
  return { likely: sensible(p50), low: sensible(p10), high: sensible(p90) };
}

export function sensible(value: number): number {
  return Number(value.toPrecision(2));
}

/** Volume that a heap may lose before its air is too little, below which it is told that it has none to lose, %. */
const NO_ROOM_PCT = 1;

function moreWords(balance: MixBalance, holding: Holding): readonly Saying[] {
  const { degradableCarbonToNitrogen_ratio: ratio, nitrogenAtRisk_pctNitrogen: atRisk, salts, pH } = balance;
  const room = balance.settlingRoom_pctVolume;
  const about = (
    key: 'advisor.mix.more.salty' | 'advisor.mix.more.acid' | 'advisor.mix.more.alkaline',
    ids: readonly string[],
  ) => (ids.length > 0 ? [say(key, { materials: namesOf(ids, holding) })] : []);
  return [
    ...(ratio === undefined ? [] : [say('advisor.mix.more.degradable', ranged(ratio))]),
    ...(atRisk === undefined ? [] : [say('advisor.mix.more.nitrogen', ranged(atRisk))]),
    room.p50 < NO_ROOM_PCT ? say('advisor.mix.more.no-room') : say('advisor.mix.more.settling', ranged(room)),
    say('advisor.mix.more.ready', { volume: { ...bulk(balance.ready_m3), asRange: true } }),
    sayOf('advisor.mix.more.salts', salts.class, ranged(salts.fromPotassium_dSPerM)),
    ...about('advisor.mix.more.salty', salts.salty),
    ...about('advisor.mix.more.acid', pH.acid),
    ...about('advisor.mix.more.alkaline', pH.alkaline),
  ];
}

function namesOf(ids: readonly string[], holding: Holding): readonly Saying[] {
  return ids.map((id) => materialName(holding, id));
}

/** Fresh grass in thicker layers mats: common practice, `reference/mix.json`, layers. */
const thinLayer: Place = depth(thickestFines_m);

function warningWords({ code, materials }: Warning, holding: Holding): Saying {
  return sayOf('advisor.mix.warning', code, { materials: namesOf(materials, holding), depth: thinLayer });
}
