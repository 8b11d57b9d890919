import { type Draws, drawsOf, fraction, free, fromPublished, positive, type Scale } from '../estimate/index.ts';
import type { WeighedMix } from '../mix/mix-input.ts';
import { permeabilityOfMix_ratio, stuffOfMix } from './of-mix.ts';
import { type Figures, type Traits, traitsOf, twinParameters, type UncertainId, uncertainIds } from './parameters.ts';
import type { Stuff } from './stuff.ts';

/** The scale of each uncertain figure: shares between 0 and 1, temperatures as they stand, the rest above 0. */
const scales: Readonly<Partial<Record<UncertainId, Scale>>> = {
  coldest_degC: free,
  best_degC: free,
  hottest_degC: free,
  plumeContact_share: fraction,
  settling_share: fraction,
  carbonKept_share: fraction,
  ammoniaGas_share: fraction,
};

/** One heap that a mix may turn out to be. */
export interface Member {
  readonly stuff: Stuff;
  readonly traits: Traits;
}

/** How many heaps, how warm their stuff is when built, and whether all of it was chopped. */
export interface MembersWanted {
  readonly count: number;
  readonly temp_degC: number;
  readonly chopped?: boolean | undefined;
}

const { rate_ratio, permeability_ratio: closer_ratio } = twinParameters.chopping;

/** Finer pieces: what rots at their surface rots faster, and air passes less easily. */
function choppedUp(figures: Figures): Figures {
  return {
    ...figures,
    hemicelluloseRate_perDay: rate_ratio * figures.hemicelluloseRate_perDay,
    celluloseRate_perDay: rate_ratio * figures.celluloseRate_perDay,
    ligninRate_perDay: rate_ratio * figures.ligninRate_perDay,
    permeability_m2: closer_ratio * figures.permeability_m2,
  };
}

/**
 * So many of the heaps that a mix may turn out to be: its materials and the figures of the model as their ranges have
 * them, each draw one heap, spread evenly over the draws there are.
 */
export function membersOf(
  mix: WeighedMix,
  draws: Draws,
  { count, temp_degC, chopped = false }: MembersWanted,
): readonly Member[] {
  const figures = Object.fromEntries(
    uncertainIds.map((id) => {
      const scale = scales[id] ?? positive;
      return [id, drawsOf(draws, `heap/${id}`, fromPublished(twinParameters[id], scale), scale)] as const;
    }),
  ) as Record<UncertainId, Float64Array>;
  const permeability_ratio = permeabilityOfMix_ratio(mix);
  const stuffs = stuffOfMix(mix, {
    temp_degC,
    fastShare_ratio: figures.fastShare_ratio,
    startActivity_ratio: figures.startActivity_ratio,
  });
  const every = Math.max(1, draws.count / count);
  return Array.from({ length: Math.min(count, draws.count) }, (_, member) => {
    const draw = Math.floor(member * every);
    const own = Object.fromEntries(uncertainIds.map((id) => [id, figures[id][draw] ?? Number.NaN])) as Record<
      UncertainId,
      number
    >;
    const laid = { ...own, permeability_m2: own.permeability_m2 * (permeability_ratio[draw] ?? Number.NaN) };
    const drawn = chopped ? choppedUp(laid) : laid;
    const stuff = stuffs[draw];
    if (stuff === undefined) throw new RangeError(`no draw ${draw}`);
    return { stuff, traits: traitsOf(drawn) };
  });
}
