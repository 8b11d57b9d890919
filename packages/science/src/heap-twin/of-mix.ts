import type { WeighedMix } from '../mix/mix-input.ts';
import { mixParameters } from '../mix/parameters.ts';
import { twinParameters } from './parameters.ts';
import type { Stuff } from './stuff.ts';

type Weighed = WeighedMix['ingredients'][number];
type Portion = WeighedMix['total'][number];
type Start = 'manure' | 'starter' | 'acid' | 'alkaline' | 'plain';

const SPLITS = twinParameters.splits;
const START = twinParameters.start;
const BY_PARTICLE = twinParameters.permeabilityByParticle;
const MANURE = 'manure-is-raw-until-proved';
const CHARCOAL = 'charcoal';

/** What is known of the stuff of a mix besides the mix. */
export interface StuffOptions {
  readonly temp_degC: number;
  /** How far the fast share lies from the rule, in each draw; 1 where it is left out. */
  readonly fastShare_ratio?: Float64Array | undefined;
  /** How far the microbes at the start lie from the start figures, in each draw; 1 where it is left out. */
  readonly startActivity_ratio?: Float64Array | undefined;
}

function startOf({ published }: Weighed): Start {
  if (published.permitReason === MANURE) return 'manure';
  if (published.class === 'starter') return 'starter';
  const tendency = mixParameters.pH.find(({ material }) => material === published.id)?.tendency;
  return tendency ?? 'plain';
}

/** Share of the volatile matter that rots fast, of that which rots in one composting. */
function fastOfRotting_share(rotting_share: number, isPaper: boolean): number {
  return isPaper ? SPLITS.fastOfPaper : SPLITS.fastAtNone + SPLITS.fastRises * rotting_share * rotting_share;
}

/** The pools of one ingredient, as shares of its volatile matter. */
interface PoolShares {
  readonly fast: number;
  readonly hemicellulose: number;
  readonly cellulose: number;
  readonly lignin: number;
  readonly inert: number;
}

/** Parts volatile matter by how much of it rots in one composting. */
function poolsOf(rotting_share: number, isPaper: boolean, fastShare_ratio = 1): PoolShares {
  const rotting = Math.min(1, Math.max(0, rotting_share));
  const fast = Math.min(rotting, fastShare_ratio * rotting * fastOfRotting_share(rotting, isPaper));
  const slow = rotting - fast;
  const rest = 1 - rotting;
  return {
    fast,
    hemicellulose: SPLITS.hemicelluloseOfSlow * slow,
    cellulose: (1 - SPLITS.hemicelluloseOfSlow) * slow,
    lignin: SPLITS.ligninOfRest * rest,
    inert: (1 - SPLITS.ligninOfRest) * rest,
  };
}

/** The stuff of a mix in each of its draws. */
export function stuffOfMix(
  mix: WeighedMix,
  { temp_degC, fastShare_ratio, startActivity_ratio }: StuffOptions,
): readonly Stuff[] {
  const starts = mix.ingredients.map(startOf);
  return mix.total.map((total, i) => {
    let fast_kg = 0;
    let hemicellulose_kg = 0;
    let cellulose_kg = 0;
    let lignin_kg = 0;
    let inert_kg = 0;
    let ash_kg = 0;
    let char_kg = 0;
    let ammoniacalN_kg = 0;
    let nitrogen_kg = 0;
    let lively_kg = 0;
    let sour = 0;
    mix.ingredients.forEach((ingredient, k) => {
      const portion = ingredient.portions[i] as Portion;
      const start = START[starts[k] as Start];
      nitrogen_kg += portion.nitrogen_kg;
      ammoniacalN_kg += start.ammoniacal_shareOfNitrogen * portion.nitrogen_kg;
      lively_kg += start.activity_share * portion.dry_kg;
      sour += start.pH * portion.dry_kg;
      if (ingredient.published.id === CHARCOAL) {
        char_kg += portion.dry_kg;
        return;
      }
      const volatile_kg = portion.volatileSolids_kg;
      const rotting = portion.carbon_kg > 0 ? portion.degradableCarbon_kg / portion.carbon_kg : 0;
      const pools = poolsOf(rotting, ingredient.published.particle === 'sheet', fastShare_ratio?.[i]);
      fast_kg += pools.fast * volatile_kg;
      hemicellulose_kg += pools.hemicellulose * volatile_kg;
      cellulose_kg += pools.cellulose * volatile_kg;
      lignin_kg += pools.lignin * volatile_kg;
      inert_kg += pools.inert * volatile_kg;
      ash_kg += portion.dry_kg - volatile_kg;
    });
    return {
      water_kg: total.wet_kg - total.dry_kg,
      fast_kg,
      hemicellulose_kg,
      cellulose_kg,
      lignin_kg,
      inert_kg,
      ash_kg,
      char_kg,
      organicN_kg: nitrogen_kg - ammoniacalN_kg,
      ammoniacalN_kg,
      nitrateN_kg: 0,
      volume_m3: total.volume_m3 * (mix.packing_share[i] as number),
      temp_degC,
      pH: sour / total.dry_kg,
      activity_share: Math.min(1, (startActivity_ratio?.[i] ?? 1) * (lively_kg / total.dry_kg)),
    };
  });
}

/**
 * How freely air passes the stuff of a mix, over the usual of its air space, in each draw: what mats or closes up holds
 * it, what is coarse lets it through; a mean in logarithms by volume.
 */
export function permeabilityOfMix_ratio(mix: WeighedMix): Float64Array {
  return Float64Array.from(mix.total, ({ volume_m3 }, i) => {
    const sum = mix.ingredients.reduce(
      (total, { published, portions }) =>
        total + ((portions[i]?.volume_m3 ?? 0) / volume_m3) * Math.log(BY_PARTICLE[published.particle]),
      0,
    );
    return Math.exp(sum);
  });
}
