import type { Cites } from '../catalogue/index.ts';
import { limitOf } from '../curing/rating.ts';
import { homeLimits } from './compost.ts';
import { blendParameters } from './parameters.ts';

const { bed, maturity, ...table } = blendParameters;

const compost: readonly Cites[] = [
  ...table.conductivityMethods,
  ...table.madeOf.map((row) => row.conductivity_dSPerM),
  ...table.parts.map((row) => row.waterHeld_pctVolume),
  ...table.parts.map((row) => row.conductivity_dSPerM),
];

/** What the two calculations rest on, besides the sources of the materials. */
export const blendSources: { readonly potting: readonly Cites[]; readonly bed: readonly Cites[] } = {
  potting: [
    ...table.recipes,
    table.mostCompost_pctVolume,
    ...table.uses.map((row) => row.mostConductivity_dSPerM),
    ...compost,
    ...homeLimits,
    limitOf('minnesota-seedlings'),
    maturity.age_months,
    maturity.smell,
    table.mixedVolume_share,
    table.mixedVolume_share.rests,
    table.poreSpace,
    table.leastAir_pctVolume,
    ...table.pHWanted,
    table.leaching_volumes,
    { source: 'rhs-home-compost-trial', place: 'home compost as a potting soil', mark: 'memory' },
  ],
  bed: [
    bed.compost_pctVolume,
    bed.usualCompost_pctVolume,
    bed.settled_share,
    bed.firstYearLoss_pctVolume.organic,
    bed.firstYearLoss_pctVolume.wood,
    bed.leastOverWood_m,
    bed.sensitiveConductivity_dSPerM,
    bed.hardyConductivity_dSPerM,
    bed.phosphorusRemoval_kgPerM2PerYear,
    bed.deckDesignLoad_kgPerM2,
    { source: 'cornell-market-label', place: 'cubic yards = square feet × inches × 0.0031', mark: 'seen' },
    {
      source: 'osu-nelson-urban-gardens',
      place: '27 gardens: 13 % organic matter where 3 to 5 would do',
      mark: 'seen',
    },
    { source: 'sssa-rooftop-crops', place: '80 to 150 lb/ft2', mark: 'seen' },
    ...compost,
    table.poreSpace,
  ],
};
